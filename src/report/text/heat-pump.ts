import type { HeatPumpFindingValues } from '../../findings/heat-pump.js';
import type { FindingTexts } from './finding-texts.js';

/** Texts of the findings of the heat-pump room. */
export const heatPumpFindingTexts: FindingTexts<HeatPumpFindingValues> = {
  'unit-invented': () =>
    `The heat pump is an invented example, no product. Put in the rating points of the real unit before anything is bought or dug.`,
  'map-extrapolated': ({ mode, enteringFluid, lowest, highest }, show) =>
    `The unit was taken at ${show('temperature', enteringFluid)} of entering fluid in ${mode}, outside its rating points from ${show('temperature', lowest)} to ` +
    `${show('temperature', highest)}; the slope at the end was led on. Ask the maker for a point there.`,
  'few-rating-points': ({ mode, points }) =>
    `Only ${String(points)} rating points are given for ${mode}: between them the unit is a straight line. Four or more show its curve.`,
  'rating-points-odd': ({ mode, quantity, enteringFluid }, show) =>
    `The ${quantity} in ${mode} moves the wrong way at ${show('temperature', enteringFluid)} of entering fluid. A warmer loop helps heating and hinders cooling; ` +
    `look for a slip in the rating points.`,
  'cop-unusual': ({ mode, enteringFluid, cop, lowest, highest }, show) =>
    `A COP of ${show('ratio', cop)} in ${mode} at ${show('temperature', enteringFluid)} of entering fluid is unusual (${show('ratio', lowest)} to ` +
    `${show('ratio', highest)} is what units have). Look for mixed units, and whether capacity and power belong together.`,
  'source-flow-unusual': ({ flowPerPower, lowest, highest }, show) =>
    `The loop flow is ${show('flow per power', flowPerPower)} of heating capacity; ${show('flow per power', lowest)} to ${show('flow per power', highest)} is usual. ` +
    `Too little trips the freeze protection, too much is paid for in pump electricity.`,
};
