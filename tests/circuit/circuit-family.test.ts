import { describe, expect, it } from 'vitest';
import {
  circuitFamily,
  type CircuitFamilyInput,
  circuitFamilyInputShape,
  equipmentDrop,
  type EquipmentDropInput,
  pumpShare,
  type PumpShareInput,
  pumpShareInputShape,
  ratedDropShape,
  ratedWaterSideShape,
  USUAL_CIRCUITS,
  valveDrop,
  type ValveDropInput,
} from '../../src/circuit/index.js';
import { ETHANOL, type FluidCondition, fluidProperties, METHANOL, type OfAnyFluid } from '../../src/fluid/index.js';
import type { PipeChoice } from '../../src/pipe/index.js';
import {
  bars,
  celsius,
  cubicMetresPerHour,
  electricKilowattHours,
  electricWatts,
  gallonsPerMinute,
  gallonsPerMinuteTon,
  hours,
  kilogramsPerCubicMetre,
  kilopascals,
  litresPerSecond,
  massPercent,
  metresPerKilowatt,
  millipascalSeconds,
  percent,
  psi,
  type Shape,
  tons,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const state = (label: string, condition: OfAnyFluid<FluidCondition>): CircuitFamilyInput['fluids'][number] => ({
  label,
  fluid: fluidProperties(condition),
});
const PIPES: readonly PipeChoice[] = [
  { series: 'IPS', size: '3/4', dimensionRatio: '11' },
  { series: 'IPS', size: '1', dimensionRatio: '11' },
  { series: 'IPS', size: '1-1/4', dimensionRatio: '11' },
  { series: 'metric', size: '25', dimensionRatio: '11' },
  { series: 'metric', size: '32', dimensionRatio: '11' },
  { series: 'metric', size: '40', dimensionRatio: '11' },
];
const family: CircuitFamilyInput = {
  capacities: [2, 2.5, 3, 4, 5, 6].map((size) => tons(size)),
  pipes: PIPES,
  fluids: [
    state('water', { fluid: 'water', massFraction: massPercent(0), temperature: celsius(5) }),
    state('propylene glycol', { fluid: 'propylene-glycol', massFraction: massPercent(22), temperature: celsius(-1) }),
    state('ethanol', { fluid: ETHANOL, massFraction: massPercent(18), temperature: celsius(-1) }),
    state('methanol', { fluid: METHANOL, massFraction: massPercent(14), temperature: celsius(-1) }),
  ],
  flowPerPower: gallonsPerMinuteTon(3),
  pipePerCapacity: metresPerKilowatt(43),
  waterSide: {
    ratedFlow: gallonsPerMinute(6),
    ratedDrop: kilopascals(20),
    ratedFluid: { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.306) },
  },
  pumpEfficiency: percent(30),
};

describe('circuitFamily', () => {
  const rows = circuitFamily(family);

  it('has a row for each capacity, pipe and fluid', () => {
    expect(rows).toHaveLength(6 * 6 * 4);
    expect(new Set(rows.map(({ capacity, series, size, label }) => [capacity, series, size, label].join())).size).toBe(144);
  });

  it('lays the pipe asked for, at the flow asked for', () => {
    for (const { capacity, circuits, circuitLength, circuitFlow } of rows) {
      expect(circuits * circuitLength).toBeCloseTo(capacity * 0.043, 6);
      expect(circuits * circuitFlow).toBeCloseTo(capacity * family.flowPerPower, 12);
    }
  });

  it('keeps 2 to 6 tons in six pipes with four fluids within every class', () => {
    for (const { size, velocity, head, perHeat, circuitLength, label, capacity, findings } of rows) {
      const where = `${String(capacity)} W, ${size}, ${label}`;
      const { shortest, longest } = USUAL_CIRCUITS[size] ?? { shortest: NaN, longest: NaN };
      expect(velocity, where).toBeGreaterThan(0.2);
      expect(velocity, where).toBeLessThan(1.5);
      expect(circuitLength, where).toBeGreaterThanOrEqual(shortest);
      expect(circuitLength, where).toBeLessThanOrEqual(longest);
      expect(head, where).toBeGreaterThan(2);
      expect(head, where).toBeLessThan(9.144);
      expect(perHeat, where).toBeGreaterThan(0.005);
      expect(perHeat, where).toBeLessThan(0.03);
      expect(findings, where).toEqual([]);
    }
  });

  it('gives a ton to a circuit of 3/4 in at 3 gpm', () => {
    const inch = rows.filter(({ size, capacity }) => size === '3/4' && Number.isInteger(Number(tons.of(capacity).toFixed(9))));
    expect(inch.map(({ circuits, capacity }) => circuits - tons.of(capacity)).every((off) => Math.abs(off) < 1e-9)).toBe(true);
    expect(inch.length).toBe(20);
  });

  it('says of every row what it leaves its class in', () => {
    const codes = (change: Partial<CircuitFamilyInput>): readonly string[] => [
      ...new Set(circuitFamily({ ...family, ...change }).flatMap(({ findings }) => findings.map(({ code }) => code))),
    ];
    expect(codes({ flowPerPower: gallonsPerMinuteTon(1) })).toContain('fluid-slow');
    expect(codes({ pipePerCapacity: metresPerKilowatt(8) })).toContain('circuit-length-unusual');
    expect(codes({})).toEqual([]);
    expect(codes({ pumpEfficiency: percent(10) })).toEqual(['pump-power-high']);
    expect(codes({ pipePerCapacity: metresPerKilowatt(8), flowPerPower: gallonsPerMinuteTon(11) })).toContain('fluid-fast');
    expect(codes({ flowPerPower: gallonsPerMinuteTon(6) })).toContain('pump-head-high');
  });

  it('refuses a header’s pipe, and bad input by name', () => {
    expect(() => circuitFamily({ ...family, pipes: [{ series: 'IPS', size: '4', dimensionRatio: '11' }] })).toThrow(
      expect.objectContaining({ argument: 'pipes.0.size' }),
    );
    const { fluid } = family.fluids[0] ?? state('water', { fluid: 'water', massFraction: massPercent(0), temperature: celsius(5) });
    refuses(circuitFamily, circuitFamilyInputShape, {
      ...family,
      capacities: family.capacities.slice(0, 2),
      pipes: [{ series: 'IPS', size: '1', dimensionRatio: '11', bore: 'average wall', wallConductivity: wattsPerMetreKelvin(0.4) }],
      fluids: [{ label: 'water', fluid: { density: fluid.density, viscosity: fluid.viscosity } }],
    });
  });
});

describe('pumpShare', () => {
  const house: PumpShareInput = {
    electricPower: electricWatts(400),
    capacity: tons(3),
    runningTime: hours(2000),
    unitElectricity: electricKilowattHours(6000),
    nominalCooling: tons(3),
  };

  it('marks an ordinary house with two circulators of 200 W with a D, and finds their share high', () => {
    const { perCooling, grade, electricityShare, perHeat, findings } = pumpShare(house);
    expect(grade).toBe('D');
    expect((perCooling ?? NaN) * 3516.85).toBeCloseTo(133.3, 1);
    expect(electricityShare).toBeCloseTo(800 / 6800, 12);
    expect(perHeat).toBeCloseTo(400 / 10550.6, 6);
    expect(findings.map(({ code }) => code)).toEqual(['pump-share-high']);
  });

  it('ends A where 5 hp for 100 tons at a motor efficiency of 0.75 end it, and falls from A to F', () => {
    const gradeAt = (watts: number): string | undefined => pumpShare({ ...house, electricPower: electricWatts(3 * watts) }).grade;
    expect(gradeAt((5 * 745.7) / 0.75 / 100)).toBe('A');
    expect(gradeAt((5.1 * 745.7) / 0.75 / 100)).toBe('B');
    expect([40, 60, 90, 140, 200].map(gradeAt)).toEqual(['A', 'B', 'C', 'D', 'F']);
  });

  it('is nothing without a pump, and refuses bad input by name', () => {
    expect(pumpShare({ ...house, electricPower: electricWatts(0), unitElectricity: electricKilowattHours(0) }).electricityShare).toBe(0);
    refuses(pumpShare, pumpShareInputShape, house);
  });
});

describe('rated drops', () => {
  const valve: ValveDropInput = {
    valve: { ratedFlow: cubicMetresPerHour(2.5), ratedDrop: bars(1) },
    density: kilogramsPerCubicMetre(1022),
    flow: litresPerSecond(0.19),
  };
  const water = { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.306) };
  const unit: EquipmentDropInput = {
    waterSide: { ratedFlow: litresPerSecond(0.76), ratedDrop: kilopascals(25), ratedFluid: water },
    fluid: water,
    flow: litresPerSecond(0.76),
  };

  it('make a Cv of 1 a Kv of 0.865, and four times the drop of twice the flow', () => {
    const kv = valveDrop({ ...valve, valve: { ratedFlow: cubicMetresPerHour(0.86497), ratedDrop: bars(1) } });
    const cv = valveDrop({ ...valve, valve: { ratedFlow: gallonsPerMinute(1), ratedDrop: psi(1) } });
    expect(cv / kv).toBeCloseTo(1, 4);
    expect(valveDrop({ ...valve, flow: litresPerSecond(0.38) }) / valveDrop(valve)).toBeCloseTo(4, 12);
  });

  it('give the rated drop at the rated flow of the rated fluid, and go with its powers', () => {
    expect(equipmentDrop(unit)).toBeCloseTo(25_000, 9);
    expect(equipmentDrop({ ...unit, flow: litresPerSecond(1.52) })).toBeCloseTo(25_000 * 2 ** 1.75, 6);
    const thick = { density: kilogramsPerCubicMetre(1.02 * 999.7), viscosity: millipascalSeconds(3 * 1.306) };
    expect(equipmentDrop({ ...unit, fluid: thick })).toBeCloseTo(25_000 * 1.02 ** 0.75 * 3 ** 0.25, 6);
  });

  it('refuse bad input by name', () => {
    const valveShape: Shape<ValveDropInput> = { valve: ratedDropShape, density: 'density', flow: 'flow' };
    const unitShape: Shape<EquipmentDropInput> = {
      waterSide: ratedWaterSideShape,
      fluid: { density: 'density', viscosity: 'dynamic viscosity' },
      flow: 'flow',
    };
    refuses(valveDrop, valveShape, valve);
    refuses(equipmentDrop, unitShape, unit);
  });
});
