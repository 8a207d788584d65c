import type { HeatPumpFindingValues } from '../../findings/heat-pump.js';
import type { FindingTexts } from './finding-texts.js';

/** Limits of the fluid, in words. */
const LIMIT_WORDS = {
  lowestEntering: 'lowest entering fluid temperature',
  lowestLeaving: 'lowest leaving fluid temperature',
  highestEntering: 'highest entering fluid temperature',
} as const;

/** Texts of the findings of the heat-pump room. */
export const heatPumpFindingTexts: FindingTexts<HeatPumpFindingValues> = {
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
    `${show('time', expected)}. The printed time was kept; with the other the seasonal COP would be ${show('ratio', factor)} times what it is.`,
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
    `ground and ${show('electric energy', extraElectricEnergy)} more electricity, and leaves ${show('energy', extraUnmetEnergy)} of the heating to auxiliary heat. ` +
    `The loop is to be sized with it.`,
  'rating-points-derived': ({ mode, derivedBy }) =>
    `The rating points for ${mode} were computed (${derivedBy}); nobody rated the unit at them. Say so wherever they are shown.`,
  'rating-points-generic': ({ supplyTemperature, disagreement, installedShare, capacityRise }, show) =>
    `The rating points are those of an average unit at ${show('temperature', supplyTemperature)} of supply: the mean of two published regressions, which differ by up to ` +
    `${show('fraction', disagreement)}, times ${show('fraction', installedShare)} for installed performance. The capacity is a straight line, ` +
    `${show('ratio', capacityRise)} of itself per degree Celsius of entering fluid. No loop may be built by them; ask the maker for the unit’s own points.`,
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
  'correction-typical': ({ cause, capacityFactor, powerFactor }, show) =>
    `The correction for ${cause} is of usual size (capacity times ${show('ratio', capacityFactor)}, electric input times ${show('ratio', powerFactor)}), a judgement. ` +
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
    `Running all at once adds ${show('electric current', addedCurrent)} to a service with ${show('electric current', spareCurrent)} to spare: ` +
    `${show('electric current', shortBy)} too much. A larger service, a smaller auxiliary heater or one that is locked out may help; ask the electrician.`,
  'start-may-flicker': ({ startingCurrent, serviceCurrent, startShare }, show) =>
    `The compressor starts with ${show('electric current', startingCurrent)}, ${show('fraction', startShare)} of the ${show('electric current', serviceCurrent)} service: lights ` +
    `may be seen to dip, the more the weaker the supply. A soft starter or an inverter helps, and the utility may limit starting currents.`,
  'power-factor-assumed': ({ part, powerFactor }, show) =>
    `A power factor of ${show('fraction', powerFactor)} was assumed for the ${part}. The plate or data sheet has the current itself.`,
};
