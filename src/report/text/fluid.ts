import type { FluidFindingValues } from '../../findings/fluid.js';
import type { FindingTexts } from './finding-texts.js';

/** Texts of the findings of the fluid room. */
export const fluidFindingTexts: FindingTexts<FluidFindingValues> = {
  'viscosity-uncertain-in-cold': ({ temperature, viscosity, uncertainty }, show) =>
    `At ${show('temperature', temperature)} the viscosity of the fluid, ${show('dynamic viscosity', viscosity)}, is known to about ` +
    `${show('fraction', uncertainty)} only; so are the Reynolds number and the pressure drop in laminar flow.`,
  'antifreeze-below-inhibitor-floor': ({ volumeFraction, floor }, show) =>
    `${show('volume fraction', volumeFraction)} of antifreeze by volume is below the ${show('volume fraction', floor)} at which its inhibitors ` +
    `protect metal and bacteria do not grow. Fill more, or ask the supplier for a product made for this dilution.`,
  'protection-short-by-a-source': ({ protectTo, warmestFreezingPoint, above }, show) =>
    `The mixture is to stay free of ice down to ${show('temperature', protectTo)}. Sources differ: by the warmest it freezes at ` +
    `${show('temperature', warmestFreezingPoint)}, ${show('temperature difference', above)} above. To be safe by all of them ask for the rule of the warmest source.`,
  'antifreeze-needs-permission': ({ massFraction, permission }, show) =>
    permission === 'written consent'
      ? `This solution, ${show('mass fraction', massFraction)} by mass, may harm metals, seals and warranty of a heat pump made for houses. ` +
        'Fill it only with the written consent of the unit’s maker.'
      : `This solution, ${show('mass fraction', massFraction)} by mass, is poisonous and forbidden in many places. Ask the authority in charge before ` +
        'ordering it.',
};
