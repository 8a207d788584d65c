import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bindingLimit,
  fluidLimitsShape,
  simulate,
  type SimulationInput,
  sizeLoop,
  type SizeLoopInput,
  sizeOverTopologies,
} from '../../src/operation/index.js';
import {
  celsius,
  dayOfYear,
  hours,
  type PipeLength,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  ratio,
  type Temperature,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { cooling, house, loads, wave } from './support/plant.js';

const { pipeLength: _, ...loop } = house;
const limits = { lowestEntering: celsius(-5), lowestLeaving: celsius(-8), highestEntering: celsius(30) };
const sizing: SizeLoopInput = { ...loop, limits };

describe('sizeLoop', () => {
  const sized = sizeLoop(sizing);

  it('gives the shortest pipe that keeps the limits: 0.1 % less does not', () => {
    const { exactLength, binding, simulation } = sized;
    expect(bindingLimit(simulation, limits)).toEqual(binding);
    expect(binding.limitMargin).toBeGreaterThanOrEqual(0);
    expect(binding.limitMargin).toBeLessThanOrEqual(0.005);
    const shorter = simulate({ ...loop, pipeLength: pipeMetres(0.999 * exactLength) });
    expect(bindingLimit(shorter, limits)?.limitMargin).toBeLessThan(0);
  });

  it('comes to the same length from anywhere', () => {
    for (const guess of [50, 400, 3000]) {
      expect(Math.abs(sizeLoop({ ...sizing, guess: pipeMetres(guess) }).exactLength / sized.exactLength - 1)).toBeLessThan(4e-4);
    }
  });

  it('names the limit that binds and its hour', () => {
    expect(sized.binding).toMatchObject({ limit: 'lowestEntering', year: 'last' });
    expect(sized.binding.day).toBeGreaterThan(30);
    expect(sized.binding.day).toBeLessThan(75);
    const leaving = sizeLoop({ ...sizing, limits: { ...limits, lowestLeaving: celsius(-6) } });
    expect(leaving.binding.limit).toBe('lowestLeaving');
    expect(leaving.exactLength).toBeGreaterThan(sized.exactLength);
    const summer = loads.map((load) => 2 * Math.min(0, load));
    const hot = sizeLoop({ ...sizing, duty: { from: 'building', loads: summer, cooling } });
    expect(hot.binding.limit).toBe('highestEntering');
    expect(hot.binding.day).toBeGreaterThan(180);
  });

  it('binds in the first year where the other season builds up a reserve', () => {
    // From September on 3 kW are taken in winter, and 6 kW given in summer.
    const heat = wave(1500, 4500, 20).map((each) => -each);
    const { binding } = sizeLoop({ ...sizing, duty: { from: 'ground', loads: heat }, start: dayOfYear(244), limits: { lowestEntering: celsius(0) } });
    expect(binding.year).toBe('first');
  });

  it('is never shorter for more load or drier soil', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.02, max: 1.6, noNaN: true }), (more) => {
        const heat = loads.map((load) => 0.4 * Math.max(0, load));
        const direct: SizeLoopInput = { ...sizing, duty: { from: 'ground', loads: heat } };
        const base = sizeLoop(direct).exactLength;
        expect(sizeLoop({ ...direct, duty: { from: 'ground', loads: heat.map((each) => more * each) } }).exactLength).toBeGreaterThan(base);
        const drier = house.response.terms.map(({ timeConstant, rise }) => ({ timeConstant, rise: pipeMetreKelvinPerWatt(more * rise) }));
        const steadyRise = pipeMetreKelvinPerWatt(more * (house.response.steadyRise ?? 0));
        expect(sizeLoop({ ...direct, response: { terms: drier, steadyRise } }).exactLength).toBeGreaterThan(base);
      }),
      { numRuns: 8 },
    );
  });

  it('says why no pipe is enough', () => {
    expect(() => sizeLoop({ ...sizing, limits: { lowestEntering: celsius(8) } })).toThrow(
      expect.objectContaining({ code: 'unreachable', argument: 'limits.lowestEntering' }),
    );
    expect(() => sizeLoop({ ...sizing, longest: pipeMetres(300) })).toThrow(expect.objectContaining({ code: 'unreachable', argument: 'longest' }));
    expect(() => sizeLoop({ ...sizing, limits: {} })).toThrow(expect.objectContaining({ code: 'missing', argument: 'limits' }));
    expect(() => sizeLoop({ ...sizing, duty: { from: 'ground', loads: loads.map(() => 0) } })).toThrow(
      expect.objectContaining({ code: 'impossible', argument: 'duty.loads' }),
    );
  });

  it('stops at the shortest length allowed where that is enough', () => {
    const { exactLength, lengthsTried } = sizeLoop({ ...sizing, shortest: pipeMetres(700), guess: pipeMetres(500) });
    expect([exactLength, lengthsTried]).toEqual([700, 1]);
  });
});

describe('sizeOverTopologies', () => {
  // One circuit for every 130 m of pipe, the flow shared: turbulent with up to three, laminar with more.
  const film = (circuits: number): SimulationInput['resistanceAt'] => {
    const resistance = pipeMetreKelvinPerWatt(circuits <= 3 ? 0.1 : 0.22);
    return () => resistance;
  };
  const heat = wave(0, 5000, 20).map((each) => Math.max(0, -each));
  const input = {
    step: hours(1),
    duty: { from: 'ground', loads: heat },
    ground: wave(10, 5, 60),
    response: house.response,
    heatCapacityRate: wattsPerKelvin(1e8),
  } as const;
  const topologies = Array.from({ length: 8 }, (_, index) => ({
    resistanceAt: film(index + 1),
    shortest: pipeMetres(Math.max(1, 130 * index + 1e-6)),
    longest: pipeMetres(130 * (index + 1)),
  }));
  const keep = (lowest: number) => sizeOverTopologies({ ...input, limits: { lowestEntering: celsius(lowest) }, topologies });

  it('finds both parts of a feasible set with a hole, and the shortest length of all', () => {
    // A limit that three turbulent circuits just reach and four laminar ones do not.
    const threeNeed = sizeLoop({ ...input, limits: { lowestEntering: celsius(-2) }, resistanceAt: film(3) }).exactLength;
    const fourNeed = sizeLoop({ ...input, limits: { lowestEntering: celsius(-2) }, resistanceAt: film(4) }).exactLength;
    expect(fourNeed).toBeGreaterThan(1.1 * threeNeed);
    const share = 390 / (1.01 * threeNeed);
    const scaled = sizeOverTopologies({
      ...input,
      duty: { from: 'ground', loads: heat.map((each) => share * each) },
      limits: { lowestEntering: celsius(-2) },
      topologies,
    });
    const [first, second, ...rest] = scaled.ranges;
    expect(first?.topology).toBe(2);
    expect(first?.shortest).toBeCloseTo(390 / 1.01, 0);
    expect(first?.longest).toBe(390);
    expect(second?.topology).toBe(3);
    expect(second?.shortest).toBeCloseTo(share * fourNeed, 0);
    expect(second?.shortest).toBeGreaterThan(1.1 * 390);
    expect(rest.length).toBe(4);
    expect(scaled.best.exactLength).toBe(first?.shortest);
  });

  it('refuses when no topology keeps the limit, and topologies that are none', () => {
    expect(() => keep(4.9)).toThrow(expect.objectContaining({ code: 'unreachable' }));
    expect(() => sizeOverTopologies({ ...input, limits, topologies: [] })).toThrow(expect.objectContaining({ argument: 'topologies' }));
  });
});

describe('what simulations and sizing refuse', () => {
  const seriesOf = (length: number): number[] => Array.from({ length }, (_, index) => 3000 + index);
  const numbers = {
    step: 'time',
    response: {
      terms: { list: { timeConstant: 'time', rise: 'pipe resistance' } },
      steadyRise: { optional: 'pipe resistance' },
      wallCondition: { optional: ['equal flux', 'equal temperature'] },
    },
    heatCapacityRate: 'conductance',
    cyclesPerHour: { optional: 'ratio' },
    start: { optional: 'day of year' },
    years: { optional: 'count' },
  } as const;
  const terms = [{ timeConstant: hours(100), rise: pipeMetreKelvinPerWatt(0.5) }];
  type Numbers = Pick<SimulationInput, 'step' | 'response' | 'heatCapacityRate' | 'cyclesPerHour' | 'start' | 'years'>;
  const base: Numbers = {
    step: hours(1),
    response: { terms, steadyRise: pipeMetreKelvinPerWatt(0.5), wallCondition: 'equal temperature' },
    heatCapacityRate: wattsPerKelvin(2000),
    cyclesPerHour: ratio(3),
    start: dayOfYear(40),
    years: 2,
  };
  const rest = {
    duty: { from: 'ground', loads: seriesOf(48) },
    ground: seriesOf(48).map(() => 10),
    resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
  } as const;

  it('is every impossible number, by its name', () => {
    const simulated: Numbers & Pick<SimulationInput, 'pipeLength'> = { ...base, pipeLength: pipeMetres(500) };
    refuses((input) => simulate({ ...rest, ...input }).lastYear.coldestEntering, { ...numbers, pipeLength: 'pipe length' }, simulated);
    const sizingShape = {
      ...numbers,
      limits: fluidLimitsShape,
      shortest: { optional: 'pipe length' },
      longest: { optional: 'pipe length' },
    } as const;
    const wanted: Numbers & Pick<SizeLoopInput, 'limits' | 'shortest' | 'longest'> = {
      ...base,
      limits,
      shortest: pipeMetres(2),
      longest: pipeMetres(2000),
    };
    refuses((input) => sizeLoop({ ...rest, ...input }).exactLength, sizingShape, wanted);
  });

  it.each([
    ['duty', { duty: undefined }],
    ['duty.from', { duty: { from: 'nowhere', loads: [1, 2] } }],
    ['duty.loads.1', { duty: { from: 'ground', loads: [1, Number.NaN] }, ground: [1, 1] }],
    ['duty.loads.0', { duty: { from: 'ground', loads: [2e9, 1] }, ground: [1, 1] }],
    ['duty.loads.length', { duty: { from: 'ground', loads: [] }, ground: [] }],
    ['ground.2', { duty: { from: 'ground', loads: [1, 1, 1] }, ground: [5, 5, 200] }],
    ['ground', { ground: [5, 5] }],
    ['pump.heatShare', { pump: { powerAt: () => 50, heatShare: 2 } }],
  ])('is %s where it is impossible', (argument, change) => {
    expect(() => simulate({ ...base, ...rest, pipeLength: pipeMetres(500), ...change } as never)).toThrow(expect.objectContaining({ argument }));
  });

  it('is a film that is none', () => {
    const film = (value: number): SimulationInput => ({ ...house, resistanceAt: (_: Temperature) => pipeMetreKelvinPerWatt(value) });
    for (const value of [Number.NaN, -1, Infinity])
      expect(() => simulate(film(value))).toThrow(expect.objectContaining({ argument: 'resistanceAt' }));
    expect(() => simulate({ ...house, pipeLength: 0.5 as PipeLength })).toThrow(expect.objectContaining({ argument: 'pipeLength' }));
  });
});
