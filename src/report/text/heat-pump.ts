import type { HeatPumpFindingValues } from '../../findings/heat-pump.js';
import type { FindingTexts } from './finding-texts.js';
import { heatPumpFormTexts } from './heat-pump-forms.js';

/** Texts of the findings of the heat-pump room. */
export const heatPumpFindingTexts: FindingTexts<HeatPumpFindingValues> = {
  ...heatPumpFormTexts,
  'unit-invented': () =>
    `The heat pump is an invented example, no product. Put in the rating points of the real unit before anything is bought or dug.`,
  'map-extrapolated': ({ mode, enteringFluid, lowest, highest }, show) =>
    `The unit was taken at ${show('temperature', enteringFluid)} of entering fluid in ${mode}, outside its rating points from ${show('temperature', lowest)} to ` +
    `${show('temperature', highest)}; the slope at the end was led on. Ask the maker for a point there.`,
  'load-side-extrapolated': ({ mode, loadSide, lowest, highest }, show) =>
    `The unit was taken at ${show('temperature', loadSide)} on its load side in ${mode}, outside its rating points from ${show('temperature', lowest)} to ` +
    `${show('temperature', highest)}; the slope at the end was led on. Ask the maker for a point there, and whether the unit runs there at all.`,
  'rating-flows-mixed': ({ mode, leastFlowRatio, greatestFlowRatio }, show) =>
    `The rating points for ${mode} are at loop flows from ${show('ratio', leastFlowRatio)} to ${show('ratio', greatestFlowRatio)} of the rated one, each condition at its ` +
    `own. They were taken as one flow; what the flow changes is hidden in the rest.`,
  'load-side-odd': ({ mode, enteringFluid, loadSide }, show) =>
    `At ${show('temperature', enteringFluid)} of entering fluid the COP in ${mode} gets ${mode === 'heating' ? 'better' : 'worse'} towards ` +
    `${show('temperature', loadSide)} on the load side. Units do the opposite; look for a slip in the rating points.`,
  'map-turns-between': ({ mode, enteringFluid, loadSide }, show) =>
    `Next to ${show('temperature', loadSide)} on the load side the capacity in ${mode} turns near ${show('temperature', enteringFluid)} of entering fluid, between rows ` +
    `that do not. The rows change at very unlike rates; look for a slip in them.`,
  'rating-supply-unstated': ({ designSupply }, show) =>
    `The design supply temperature is ${show('temperature', designSupply)}, and the rating points do not say which they are for. They were taken as they are; ` +
    `a unit rated for floor heating and run with radiators draws half as much electricity again. State the supply temperature of each.`,
  'supply-not-rated': ({ designSupply, lowestSupply, highestSupply, takenSupply }, show) =>
    `The design supply temperature of ${show('temperature', designSupply)} lies outside the rating points, which are for ${show('temperature', lowestSupply)} to ` +
    `${show('temperature', highestSupply)}. The unit was taken at ${show('temperature', takenSupply)}. Ask the maker for points there.`,
  'supply-taken-as-fixed': ({ designSupply, designCop, mildOutdoor, mildSupply, mildCop }, show) =>
    `The unit is taken at its design supply temperature of ${show('temperature', designSupply)} all year, with a COP of ${show('ratio', designCop)} at the lowest entering fluid. ` +
    `At ${show('temperature', mildOutdoor)} outdoors the curve asks for ${show('temperature', mildSupply)}, and the COP would be ${show('ratio', mildCop)}: the electricity of the ` +
    `year comes out too high, the heat drawn from the ground too low.`,
  'supply-above-unit': ({ designSupply, highestSupply }, show) =>
    `The design supply temperature is ${show('temperature', designSupply)}, and no more than ${show('temperature', highestSupply)} is to be had. On the coldest days the house stays ` +
    `short unless emitters are enlarged, the heat loss is lowered, or something else makes up.`,
  'emitter-short': ({ requiredSupply, availableSupply, metShare }, show) =>
    `At design the emitters need water of ${show('temperature', requiredSupply)}, and ${show('temperature', availableSupply)} is to be had: they give ` +
    `${show('fraction', metShare)} of the load. Larger emitters or a lower heat loss mend it, and better the COP; warmer water costs it with every degree.`,
  'few-rating-points': ({ mode, points }) =>
    `Only ${String(points)} rating points are given for ${mode}: between them the unit is a straight line. Four or more show its curve.`,
  'rating-points-odd': ({ mode, quantity, enteringFluid }, show) =>
    `The ${quantity} in ${mode} moves the wrong way at ${show('temperature', enteringFluid)} of entering fluid. A warmer loop helps heating and hinders cooling; ` +
    `look for a slip in the rating points.`,
  'cop-unusual': ({ mode, enteringFluid, cop, lowest, highest }, show) =>
    `A COP of ${show('ratio', cop)} in ${mode} at ${show('temperature', enteringFluid)} of entering fluid is unusual (${show('ratio', lowest)} to ` +
    `${show('ratio', highest)} is what units have). Look for mixed units, and whether capacity and power belong together.`,
  'level-cop-odd': ({ mode, levelInUse, enteringFluid, cop, lowerCop }, show) =>
    `Level ${String(levelInUse + 1)} of the unit in ${mode} has a COP of ${show('ratio', cop)} at ${show('temperature', enteringFluid)} of entering fluid, the level ` +
    `below it ${show('ratio', lowerCop)}. Units do better at less output; see whether levels are interchanged or the lowest speed is one that the maker advises against.`,
  'level-ranges-differ': ({ mode, levelInUse, lowest, highest }, show) =>
    `Level ${String(levelInUse + 1)} of the unit in ${mode} is rated further than the others. All levels together are rated from ${show('temperature', lowest)} to ` +
    `${show('temperature', highest)} of entering fluid; ask the maker for the missing points.`,
  'source-flow-unusual': ({ flowPerPower, lowest, highest }, show) =>
    `The loop flow is ${show('flow per power', flowPerPower)} of heating capacity; ${show('flow per power', lowest)} to ${show('flow per power', highest)} is usual. ` +
    `Too little trips the freeze protection, too much is paid for in pump electricity.`,
  'season-hours-doubtful': ({ climate, crankcaseTime, expected, factor }, show) =>
    `The crankcase time of the ${climate} climate is printed as ${show('time', crankcaseTime)}, but thermostat and off time together are ` +
    `${show('time', expected)}. The printed time was kept; with the other the seasonal COP would be ${Math.abs(100 * (factor - 1)).toFixed(2)} % ${factor < 1 ? 'lower' : 'higher'}.`,
  'performance-factor-unusual': ({ boundary, performanceFactor, low, high }, show) =>
    `A seasonal performance factor of ${show('ratio', performanceFactor)} at boundary ${boundary} is outside what ground-source plants have, ` +
    `${show('ratio', low)} to ${show('ratio', high)}. Look for mixed units, a missing consumer, or a unit that is too small.`,
  'installed-performance-lower': ({ boundary, performanceFactor, low, high }, show) =>
    `The factor of ${show('ratio', performanceFactor)} at boundary ${boundary} rests on rating points. Installed plants reach 10 to 20 % less: ` +
    `${show('ratio', low)} to ${show('ratio', high)} is what to expect. Plan with the lower one.`,
  'desuperheater-share-unusual': ({ desuperheaterShare, lowest, highest }, show) =>
    `The desuperheater is said to take ${show('fraction', desuperheaterShare)} of the condenser heat; ${show('fraction', lowest)} to ${show('fraction', highest)} is usual. ` +
    `Ask the maker for the figure at the temperatures of the tank.`,
  'desuperheater-not-free': ({ winterEnergy, extraFromGround, extraElectricEnergy, extraUnmetEnergy }, show) =>
    `In the heating season the desuperheater’s ${show('energy', winterEnergy)} of hot water is not free: it takes ${show('energy', extraFromGround)} more from the ` +
    `ground and ${show('electric energy', extraElectricEnergy)} more electricity${extraUnmetEnergy > 0 ? `, and leaves ${show('energy', extraUnmetEnergy)} of the heating to auxiliary heat` : ''}. ` +
    `The loop is to be sized with it.`,
};
