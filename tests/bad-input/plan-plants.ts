import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import type { LoopInput } from '../../src/plan/index.js';

const { heatPump, building, circuits } = demoDocument;
const { lowestLeaving: _, heating: plainHeating, ...unit } = heatPump;
const read = (change: object): LoopInput => inputDocument().read({ ...demoDocument, ...change });

/** An invented unit over two supply temperatures. */
const heating = ['35 degC', '55 degC'].flatMap((supplyTemperature, side) =>
  ['-5 degC', '20 degC'].map((enteringFluid, end) => ({
    enteringFluid,
    supplyTemperature,
    capacity: `${String(7.4 + 5.8 * end - 0.4 * side)} kW`,
    power: `${String(2 + 0.2 * end + 0.9 * side)} kW`,
    flowRatio: '1',
  })),
);
const coldWater = { from: 'wave', mean: '9 degC', amplitude: '4 K', coldestDay: '50 d' };
const monthlyMeans = Array.from({ length: 12 }, (_each, month) => `${String(7 + Math.abs(6 - month))} degC`);
const hotWater = {
  draw: { by: 'household', dailyDraw: '180 L/d' },
  hotTemperature: '50 degC',
  coldWater,
  tankLoss: '60 W',
  circulationLoss: '10 W',
};
const points = heating.slice(0, 2).map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: '2.6' }));
const power = points.map(({ cop: _cop, ...point }) => ({ ...point, power: '3 kW' }));
const few = { ...circuits, longestCircuit: '400 m' };

/** The same points at a lower level: 0.55 of the capacity for half of the electricity. */
function half<T extends { readonly capacity: string; readonly power: string }>(points: readonly T[]): readonly T[] {
  const times = (text: string, by: number): string => `${String(by * parseFloat(text))} kW`;
  return points.map((point) => ({ ...point, capacity: times(point.capacity, 0.55), power: times(point.power, 0.5) }));
}

/** Inputs that between them give every option of the plant and every way of saying it. */
export const PLANTS: readonly LoopInput[] = [
  read({
    circuits: few,
    heatPump: {
      ...unit,
      heating,
      highestSupply: '58 degC',
      supplyControl: {
        control: 'by outdoor temperature',
        designOutdoor: '-14 degC',
        designSupply: '45 degC',
        balancePoint: '15 degC',
        indoor: '20 degC',
        exponent: '1.3',
        waterSpread: '8 K',
        lowestSupply: '25 degC',
        highestSupply: '50 degC',
      },
    },
    pump: { power: '120 W', heatShare: '90 %' },
    trenchFill: { width: '0.6 m', firstWinterShare: '80 %', settledShare: '95 %' },
    followIce: { rootDepth: '0.2 m', structureDistance: '3 m' },
    lowerLevels: { between: 'speeds', levels: [{ points: half(heating) }] },
    seasonOptions: { loadSidePower: '60 W', auxiliaryEfficiency: '98 %', gridEfficiency: '40 %' },
    hotWater: {
      ...hotWater,
      hourShares: Array.from({ length: 24 }, (_each, hour) => (hour % 12 === 7 ? '50 %' : '0 %')),
      absences: [{ firstDay: '200 d', lastDay: '214 d' }],
      storageTemperature: '55 degC',
      highestSupply: '58 degC',
      supplyTemperature: '55 degC',
    },
    emitters: {
      emitter: 'radiator',
      exponent: '1.3',
      ratedOutput: '22 kW',
      ratedWater: { supplyTemperature: '75 degC', returnTemperature: '65 degC', indoor: '20 degC', excessMean: 'arithmetic' },
      waterSpread: '8 K',
    },
  }),
  read({
    heatPump: {
      ...unit,
      heating: heating.slice(0, 2),
      supplyControl: { control: 'fixed', supplyTemperature: '35 degC' },
    },
    hotWater: { ...hotWater, draw: { by: 'persons', persons: 4, perPerson: '45 L/d' }, coldWater: { from: 'months', monthlyMeans }, points },
  }),
  read({
    building: { heating: building.heating },
    heatPump: { ...unit, heating: plainHeating.map((point) => ({ ...point, enteringAir: '20 degC' })) },
    hotWater: { ...hotWater, points: power },
    lowerLevels: {
      between: 'stages',
      levels: [{ points: half(plainHeating).map(({ power: _power, ...point }) => ({ ...point, cop: '3.9', enteringAir: '20 degC' })) }],
    },
  }),
];
