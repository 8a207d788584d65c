import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import type { LoopInput } from '../../src/plan/index.js';
import { celsius, dayOfYear, electricWatts, kelvinDifference, kilowatts, litresPerDay, watts } from '../../src/units/index.js';

/** The demo, whose house, soil and unit are invented. */
export const DEMO: LoopInput = inputDocument().read(demoDocument);

/** An invented unit over entering fluid and supply temperature: near the demo's at 35 °C, with less capacity and a worse COP at hotter water. */
const points = [35, 45, 55].flatMap((supply) =>
  [-5, 0, 5, 10, 20].map((entering) => ({
    enteringFluid: celsius(entering),
    supplyTemperature: celsius(supply),
    capacity: kilowatts(8.5 + 0.23 * entering - 0.02 * (supply - 35)),
    power: electricWatts(2050 + 10 * entering + 45 * (supply - 35)),
  })),
);

/** The demo with that unit on radiators of a curve that sends so hot water at design. */
export function withCurve(designSupply: number, control: 'by outdoor temperature' | 'fixed' = 'by outdoor temperature'): LoopInput {
  const supply = celsius(designSupply);
  return {
    ...DEMO,
    heatPump: {
      ...DEMO.heatPump,
      heating: points,
      supplyControl:
        control === 'fixed'
          ? { control, supplyTemperature: supply }
          : { control, designOutdoor: celsius(-14), designSupply: supply, balancePoint: celsius(15), indoor: celsius(20) },
    },
  };
}

/** Hot water of four people. */
export const HOT_WATER: NonNullable<LoopInput['hotWater']> = {
  draw: { by: 'household', dailyDraw: litresPerDay(180) },
  hotTemperature: celsius(50),
  coldWater: { from: 'wave', mean: celsius(9), amplitude: kelvinDifference(4), coldestDay: dayOfYear(50) },
  tankLoss: watts(60),
  circulationLoss: watts(0),
  supplyTemperature: celsius(55),
};

/** The unit of the demo while it makes hot water, invented. */
export const HOT_POINTS: NonNullable<NonNullable<LoopInput['hotWater']>['points']> = [-5, 0, 10, 20].map((entering) => ({
  enteringFluid: celsius(entering),
  capacity: kilowatts(8.1 + 0.23 * entering),
  power: electricWatts(3000 + 10 * entering),
}));
