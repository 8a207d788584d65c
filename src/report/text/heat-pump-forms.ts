import type { HeatPumpFormValues } from '../../findings/heat-pump-forms.js';
import type { FindingTexts } from './finding-texts.js';
import { LIMIT_WORDS } from './limit-words.js';

/** Texts of the findings about fitted and corrected rating points, limits and electric service. */
export const heatPumpFormTexts: FindingTexts<HeatPumpFormValues> = {
  'rating-points-derived': ({ mode, derivedBy }) =>
    `The rating points for ${mode} were computed (${derivedBy}); nobody rated the unit at them. Say so wherever they are shown.`,
  'rating-points-generic': ({ supplyTemperature, disagreement, installedShare }, show) =>
    `The rating points are those of an average unit at ${show('temperature', supplyTemperature)} of supply: the mean of two published regressions, which differ by up to ` +
    `${show('fraction', disagreement)}, times ${show('fraction', installedShare)} for installed performance. The capacity is a straight line by a rule of ` +
    `thumb. No loop may be built by them; ask the maker for the unit’s own points.`,
  'fit-poor': ({ mode, worstError, usual }, show) =>
    `The fitted form misses one of its points for ${mode} by ${show('fraction', worstError)}; ${show('fraction', usual)} is as much as a form that suits misses by. ` +
    `Look for a slip in the table, or put the points into a map as they are.`,
  'fit-without-spare': ({ mode, points }) =>
    `The fit for ${mode} has as many coefficients as its ${String(points)} points: it goes through all of them, and nothing tells how far it is off between them.`,
  'fit-turns': ({ mode, enteringFluid }, show) =>
    `The fitted capacity in ${mode} turns at ${show('temperature', enteringFluid)} of entering fluid, as no unit’s does. Take the straight form, or more points.`,
  'carnot-share-unusual': ({ share, least, most }, show) =>
    `The unit reaches ${show('fraction', share)} of Carnot’s COP; ${show('fraction', least)} to ${show('fraction', most)} is what units have between such temperatures. ` +
    `See whether they are those of the fluids or of the refrigerant; units that heat air reach less.`,
  'carnot-share-extrapolated': ({ cold, warm }, show) =>
    `The share of Carnot’s COP was led on to ${show('temperature', cold)} and ${show('temperature', warm)}, outside the temperatures of its points. It drifts with the ` +
    `lift, and the band does not hold that drift.`,
  'correction-typical': ({ cause, capacityFactor, inputFactor }, show) =>
    `The correction for ${cause} is of usual size (capacity times ${show('ratio', capacityFactor)}, electric input times ${show('ratio', inputFactor)}), a judgement. ` +
    `The table of the unit’s maker goes before it.`,
  'limit-unconfirmed': ({ limit, temperature, reason }, show) =>
    `The ${LIMIT_WORDS[limit]} of ${show('temperature', temperature)} is a suggestion (${reason}). Compare it with the data sheet and the fluid really filled, then confirm it.`,
  'limit-beyond-unit': ({ limit, temperature, unitLimit }, show) =>
    `The ${LIMIT_WORDS[limit]} was set to ${show('temperature', temperature)}, but the unit’s maker allows ${show('temperature', unitLimit)}. Stay within what the maker allows.`,
  'limit-near-ground': ({ limit, temperature, groundTemperature, needed }, show) =>
    `With a ${LIMIT_WORDS[limit]} of ${show('temperature', temperature)} and ground at ${show('temperature', groundTemperature)} there is less than ` +
    `${show('temperature difference', needed)} to drive the heat: the loop gets absurdly long. Move the limit, lay deeper, or take another unit.`,
  'limit-freezes': ({ limit, temperature, freezingPoint, needed }, show) =>
    `The fluid freezes at ${show('temperature', freezingPoint)}. A ${LIMIT_WORDS[limit]} of ${show('temperature', temperature)} asks for a freezing point ` +
    `${show('temperature difference', needed)} below it: the evaporator is colder than the fluid. Fill more antifreeze or raise the limit.`,
  'unit-stops-before-limit': ({ designLeaving, lowestLeaving }, show) =>
    `At the lowest entering fluid it leaves with ${show('temperature', designLeaving)}, and the freeze protection stops the unit at ` +
    `${show('temperature', lowestLeaving)}: the unit trips before the entering fluid is at its limit. More flow makes the fall smaller.`,
  'plain-water-possible': ({ designLeaving, least }, show) =>
    `The fluid never leaves colder than ${show('temperature', designLeaving)}, and above ${show('temperature', least)} water needs no antifreeze. It moves with less pump power ` +
    `and harms nobody; ask the unit’s maker.`,
  'electrician-decides': () =>
    `These currents are a first look, not a service calculation. A licensed electrician decides by the local code what the service, its cables and its protection may carry.`,
  'service-short': ({ addedCurrent, spareCurrent, shortBy }, show) =>
    `Running all at once adds ${show('electric current', addedCurrent)} to a service ` +
    `${spareCurrent < 0 ? `that is ${show('electric current', -spareCurrent)} over already` : `with ${show('electric current', spareCurrent)} to spare`}: ` +
    `${show('electric current', shortBy)} too much. A larger service, a smaller auxiliary heater or one that is locked out may help; ask the electrician.`,
  'start-may-flicker': ({ startingCurrent, serviceCurrent, startShare }, show) =>
    `The compressor starts with ${show('electric current', startingCurrent)}, ${show('fraction', startShare)} of the ${show('electric current', serviceCurrent)} service: lights ` +
    `may be seen to dip, the more the weaker the supply. A soft starter or an inverter helps, and the utility may limit starting currents.`,
  'power-factor-assumed': ({ part, powerFactor }, show) =>
    `A power factor of ${show('fraction', powerFactor)} was assumed for the ${part}. The plate or data sheet has the current itself.`,
};
