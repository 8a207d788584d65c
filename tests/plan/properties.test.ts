import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { InputError } from '../../src/errors/index.js';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import type { LayoutInput } from '../../src/ground/index.js';
import { celsius, kilowatts, metres, pipeMetres, trenchMetres, wattsPerMetreKelvin } from '../../src/units/index.js';
import { notFinite } from '../support/finite.js';
import { cellDocument } from './grid.js';
import { CLIMATES, SOILS } from './grid.data.js';

const reader = inputDocument();
const demo: LoopInput = reader.read(demoDocument);
const needs = ({ heating, cooling }: LoopPlan): readonly (number | undefined)[] => [heating?.needed.monthly.pipe, cooling?.needed.monthly.pipe];
const codes = ({ findings }: LoopPlan): readonly string[] => findings.map(({ code }) => code);

/** One coil and a field of so few trenches that they are never enough: the number of trenches and the flow of a circuit stay as they are. */
const frozen = (input: LoopInput, trenches = 3): LoopInput => ({
  ...input,
  circuits: { ...input.circuits, coilLengths: [pipeMetres(20)] },
  field: { ...input.field, mostTrenches: trenches },
});

const soilOf = (conductivity: number): LoopInput['soil'] => ({
  layers: [
    {
      top: metres(0),
      bottom: metres(2.5),
      sample: { from: 'laboratory', conductivity: wattsPerMetreKelvin(conductivity), heatCapacity: 2.4e6 as never },
    },
  ],
});

const withLoads = (heating: number, cooling: number): LoopInput => {
  const { building } = demo;
  if (building.heating === undefined || building.cooling === undefined) throw new Error('the demo both heats and cools');
  return {
    ...demo,
    building: {
      ...building,
      heating: { ...building.heating, designLoad: kilowatts(heating) },
      cooling: { ...building.cooling, designLoad: kilowatts(cooling) },
    },
  };
};

function expectNotLess(more: LoopPlan, less: LoopPlan): void {
  expect(more.loop.circuits.trenches).toBe(less.loop.circuits.trenches);
  // The search by the hour ends within 0.04 % above the length it looks for.
  expect(more.loop.needed.estimate).toBeGreaterThanOrEqual(less.loop.needed.estimate * (1 - 5e-4));
  needs(more).forEach((need, index) => {
    expect(need).toBeGreaterThanOrEqual((needs(less)[index] ?? 0) * (1 - 1e-12));
  });
}

const FEW = { numRuns: 12 } as const;
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('at a frozen number of trenches', () => {
  it('more design load never shortens the need of either mode', () => {
    fc.assert(
      fc.property(number(4, 10), number(2, 7), number(0, 3), (heating, cooling, more) => {
        expectNotLess(planLoop(frozen(withLoads(heating + more, cooling + more))), planLoop(frozen(withLoads(heating, cooling))));
      }),
      FEW,
    );
  });

  it('poorer soil never shortens the need of either mode', () => {
    fc.assert(
      fc.property(number(0.5, 2.2), number(0, 0.8), (conductivity, more) => {
        const at = (k: number): LoopPlan => planLoop(frozen({ ...demo, soil: soilOf(k) }));
        expectNotLess(at(conductivity), at(conductivity + more));
      }),
      FEW,
    );
  });

  it('closer trenches never shorten the need of either mode', () => {
    fc.assert(
      fc.property(number(1.5, 5), number(0, 3), (spacing, wider) => {
        const at = (apart: number): LoopPlan => {
          const { upperDepth, lowerDepth } = { upperDepth: metres(1.2), lowerDepth: metres(1.8) };
          const layout: LayoutInput = { type: 'two-pipe-stacked', upperDepth, lowerDepth, trenchSpacing: metres(apart) };
          return planLoop(frozen({ ...demo, field: { ...demo.field, layout } }));
        };
        expectNotLess(at(spacing), at(spacing + wider));
      }),
      FEW,
    );
  });

  it('a longer spell never shortens the need', () => {
    fc.assert(
      fc.property(number(12, 120), number(0, 60), (spell, longer) => {
        const at = (hours: number): LoopPlan =>
          planLoop(frozen({ ...demo, peakTimes: { heating: (hours * 3600) as never, cooling: (hours * 3600) as never } }));
        expectNotLess(at(spell + longer), at(spell));
      }),
      FEW,
    );
  });
});

describe('any plan', () => {
  it('has its estimate inside its band, the loop over the need or a stop, and only finite numbers', () => {
    fc.assert(
      fc.property(number(3, 14), number(1, 9), number(0.5, 2.5), fc.integer({ min: 1, max: 14 }), (heating, cooling, conductivity, mostTrenches) => {
        const input = withLoads(heating, cooling);
        const plan = planLoop({ ...input, soil: soilOf(conductivity), field: { ...input.field, mostTrenches } });
        const { needed, circuits, nextSmaller } = plan.loop;
        expect(needed.low).toBeLessThanOrEqual(needed.estimate);
        expect(needed.estimate).toBeLessThanOrEqual(needed.high);
        expect(codes(plan).includes('field-too-small')).toBe(circuits.activePipe < needed.estimate);
        expect(nextSmaller?.enough ?? false).toBe(false);
        expect(notFinite(plan)).toBeUndefined();
      }),
      FEW,
    );
  });

  it('is the same from the same input', () => {
    expect(JSON.stringify(planLoop(demo))).toBe(JSON.stringify(planLoop(demo)));
  });

  it.each(['metric', 'us'] as const)('is the same when every quantity of its document is rewritten in %s units', (system) => {
    const again = reader.read(reader.write(reader.read(demoDocument), system));
    expect(planLoop(again)).toEqual(planLoop(demo));
  });

  it('is the same to a millionth when the job is written by hand in US units', () => {
    const metric = reader.read(cellDocument(SOILS[0], CLIMATES[0]));
    const document = Object(cellDocument(SOILS[0], CLIMATES[0]));
    const us = reader.read({
      ...document,
      // The trench gets a little room: where coil and trench are equal, a rounded foot would decide whether the coil fits.
      field: {
        layout: { type: 'two-pipe-stacked', upperDepth: '3.937007874 ft', lowerDepth: '70.866141732 in', trenchSpacing: '9.842519685 ft' },
        longestTrench: '196.9 ft',
        mostTrenches: 40,
      },
      heatPump: {
        ...document.heatPump,
        sourceFlow: '7.925161571 gpm',
        lowestEntering: '28.4 degF',
        lowestLeaving: '21.2 degF',
        highestEntering: '89.6 degF',
      },
      circuits: { coilLengths: ['328.083989501 ft', '492.125984252 ft', '656.167979003 ft'], distanceToHouse: '32.808398950 ft' },
      building: {
        heating: { designLoad: '30709.274696 Btu/h', designOutdoor: '-4 degF', indoor: '68 degF', balancePoint: '60.8 degF' },
        cooling: { designLoad: '1.990413972 ton', designOutdoor: '91.4 degF', indoor: '77 degF', balancePoint: '68 degF' },
      },
    });
    const [ours, theirs] = [planLoop(metric), planLoop(us)];
    expect(theirs.loop.circuits.trenches).toBe(ours.loop.circuits.trenches);
    needs(theirs).forEach((need, index) => {
      expect(Math.abs((need ?? 0) / (needs(ours)[index] ?? 0) - 1)).toBeLessThan(1e-6);
    });
    expect(theirs.loop.circuits.activePipe / ours.loop.circuits.activePipe).toBeCloseTo(1, 6);
  });
});

describe('a field that is too small', () => {
  it.each([1, 2])('of %d trenches stops the plan and lays all it holds', (mostTrenches) => {
    const plan = planLoop({ ...demo, field: { ...demo.field, mostTrenches } });
    const stop = plan.findings.find(({ code }) => code === 'field-too-small');
    expect(stop?.level).toBe('stop');
    expect(stop?.values).toEqual({ trenches: mostTrenches, laid: plan.loop.circuits.activePipe, needed: plan.loop.needed.estimate });
    expect(plan.loop.circuits.trenches).toBe(mostTrenches);
    expect(plan.loop.circuits.activePipe).toBeLessThan(plan.loop.needed.estimate);
    expect(plan.loop.spare).toBeLessThan(0);
  });

  it('for the shortest coil is refused with the trench that would do', () => {
    const { coilLengths, leadLength = 0 } = demo.circuits;
    const least = (Math.min(...coilLengths) - leadLength) / 2;
    const at = (longest: number): LoopInput => ({ ...demo, field: { ...demo.field, longestTrench: trenchMetres(longest) } });
    expect(() => planLoop(at(least - 1))).toThrow(InputError);
    expect(() => planLoop(at(least - 1))).toThrow(new RegExp(`^field\\.longestTrench.*at least ${String(least)} m`));
    expect(() => planLoop(at(least))).not.toThrow();
  });
});

describe('water', () => {
  it('under a unit that lets it leave below its freezing point is stopped', () => {
    const plan = planLoop({ ...demo, fluid: 'water', heatPump: { ...demo.heatPump, lowestEntering: celsius(4), lowestLeaving: celsius(-1) } });
    expect(plan.findings.find(({ code }) => code === 'freeze-protection-short')?.level).toBe('stop');
  });

  it('that enters below its freezing point is refused or stopped, never planned in silence', () => {
    const input: LoopInput = { ...demo, fluid: 'water' };
    let outcome: string;
    try {
      outcome = codes(planLoop(input)).includes('freeze-protection-short') ? 'stopped' : 'planned in silence';
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      outcome = 'refused';
    }
    expect(outcome).not.toBe('planned in silence');
  });

  it('is planned without a word in a warm climate with a unit that stops above freezing', () => {
    const plan = planLoop({ ...warm, fluid: 'water', heatPump: { ...warm.heatPump, lowestEntering: celsius(6), lowestLeaving: celsius(2) } });
    expect(codes(plan)).not.toContain('freeze-protection-short');
    expect(plan.fluid.massFraction).toBe(0);
    expect(plan.notices.map(({ situation }) => situation)).not.toContain('antifreeze');
  });
});

const warmMonths = [12, 14, 17, 20, 24, 27, 28, 28, 26, 22, 17, 13].map((mean) => celsius(mean));
const warm: LoopInput = {
  ...withLoads(3, 8),
  heatPump: { ...demo.heatPump, highestEntering: celsius(38) },
  climate: { from: 'monthly-air', monthlyMeans: warmMonths, cover: 'grass' },
};

describe('a warm climate', () => {
  it('lets cooling govern', () => {
    const plan = planLoop(warm);
    expect(plan.governing).toBe('cooling');
    expect(plan.byHours.binding.limit).toBe('highestEntering');
    // The closed form takes the unit at its limit through all months; by the hour it runs better than that but sees the hot days as they are.
    expect(Math.abs(plan.loop.needed.estimate / (plan.cooling?.needed.monthly.pipe ?? Number.NaN) - 1)).toBeLessThan(0.1);
    expect(plan.loop.circuits.activePipe).toBeGreaterThanOrEqual(plan.loop.needed.estimate);
    expect(plan.cooling?.needed.monthly.bindingMonth).toBeGreaterThanOrEqual(7);
    expect(plan.cooling?.needed.monthly.bindingMonth).toBeLessThanOrEqual(9);
  });

  it('is refused by name where the ground is as warm as the unit lets the fluid be', () => {
    const input: LoopInput = { ...warm, heatPump: { ...warm.heatPump, highestEntering: celsius(20) } };
    expect(() => planLoop(input)).toThrow(InputError);
    expect(() => planLoop(input)).toThrow(/^heatPump\.highestEntering/);
  });
});

describe('a cold climate', () => {
  it('is refused by name where the ground is as cold as the unit lets the fluid be', () => {
    const months = [-24, -22, -14, -4, 5, 11, 14, 12, 6, -3, -14, -21].map((mean) => celsius(mean));
    const input: LoopInput = { ...demo, climate: { from: 'monthly-air', monthlyMeans: months, cover: 'grass' } };
    expect(() => planLoop(input)).toThrow(/^heatPump\.lowestEntering/);
  });
});

describe('other layouts', () => {
  const apart = { trenchSpacing: metres(3) };
  const stacked = { upperDepth: metres(1.2), lowerDepth: metres(1.8), ...apart };
  const cases: readonly { readonly layout: LayoutInput; readonly per: Partial<LoopInput['circuits']>; readonly pipes: number }[] = [
    { layout: { type: 'one-pipe', depth: metres(1.5), ...apart }, per: { trenchesPerCircuit: 2 }, pipes: 1 },
    { layout: { type: 'one-pipe', depth: metres(1.5), ...apart }, per: { trenchesPerCircuit: 3 }, pipes: 1 },
    { layout: { type: 'two-pipe-side-by-side', depth: metres(1.5), spacing: metres(0.6), ...apart }, per: {}, pipes: 2 },
    { layout: { type: 'two-pipe-side-by-side', depth: metres(1.5), spacing: metres(0.6), ...apart }, per: { trenchesPerCircuit: 2 }, pipes: 2 },
    { layout: { type: 'four-pipe', spacing: metres(0.6), ...stacked }, per: { circuitsPerTrench: 2 }, pipes: 4 },
    { layout: { type: 'four-pipe', spacing: metres(0.6), ...stacked }, per: { circuitsPerTrench: 1 }, pipes: 4 },
    { layout: { type: 'six-pipe', middleDepth: metres(1.5), spacing: metres(0.6), ...stacked }, per: { circuitsPerTrench: 3 }, pipes: 6 },
  ];

  it.each(cases)('$layout.type with $per', ({ layout, per, pipes }) => {
    const field = { layout, longestTrench: trenchMetres(160), mostTrenches: 60 };
    const { loop, findings } = planLoop({ ...demo, field, circuits: { ...demo.circuits, ...per } });
    const { circuitsPerTrench = 1, trenchesPerCircuit = 1 } = per;
    expect(loop.layout.pipesPerTrench).toBe(pipes);
    expect(loop.circuits.circuits * trenchesPerCircuit).toBe(loop.circuits.trenches * circuitsPerTrench);
    expect(Number.isInteger(loop.circuits.circuits) && Number.isInteger(loop.circuits.trenches)).toBe(true);
    expect(loop.circuits.trenchLength).toBeLessThanOrEqual(160);
    expect(loop.trench * pipes).toBeCloseTo(loop.circuits.activePipe, 9);
    expect(loop.circuits.activePipe).toBeGreaterThanOrEqual(loop.needed.estimate);
    expect(findings.map(({ code }) => code)).not.toContain('field-too-small');
    expect(loop.layout.trenches).toBe(loop.circuits.trenches);
  });

  it('more pipes in a trench ask for more pipe and less trench', () => {
    const at = (layout: LayoutInput): LoopPlan['loop'] =>
      planLoop({ ...demo, field: { layout, longestTrench: trenchMetres(160), mostTrenches: 60 } }).loop;
    const [two, four] = [at({ type: 'two-pipe-stacked', ...stacked }), at({ type: 'four-pipe', spacing: metres(0.6), ...stacked })];
    expect(four.needed.estimate).toBeGreaterThan(two.needed.estimate);
    expect(four.trench).toBeLessThan(two.trench);
  });
});

describe('trenches too close for their pipes', () => {
  it.each([1e-300, 1e-6, 0.01])('%d m apart are refused at the layout', (apart) => {
    const layout: LayoutInput = { type: 'two-pipe-stacked', upperDepth: metres(1.2), lowerDepth: metres(1.8), trenchSpacing: metres(apart) };
    expect(() => planLoop({ ...demo, field: { ...demo.field, layout } })).toThrow(/^field\.layout/);
  });
});
