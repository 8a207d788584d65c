import { describe, expect, it } from 'vitest';
import { exponentialResponse, onePipe, periodicResponse } from '../../src/ground/index.js';
import { performanceMap, type PerformanceMap } from '../../src/heat-pump/index.js';
import { riseBeyondMean } from '../../src/operation/end-of-run.js';
import { type Course, simulate, type SimulatedYear, type SimulationInput } from '../../src/operation/index.js';
import {
  celsius,
  type Conductance,
  dayOfYear,
  diameterMillimetres,
  electricWatts,
  fraction,
  hours,
  joulesPerCubicMetreKelvin,
  metres,
  minutes,
  type PipeLength,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  ratio,
  squareMetresPerSecond,
  type Temperature,
  type Time,
  watts,
  wattsPerKelvin,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { cooling, heating, HOURS, house, loads, resistanceAt, response, wave } from './support/plant.js';

const courseOf = (year: SimulatedYear): Course => {
  if (year.course === undefined) throw new Error('no course');
  return year.course;
};
const coldest = (year: SimulatedYear): number => year.coldestEntering?.temperature ?? Number.NaN;
const warmest = (year: SimulatedYear): number => year.warmestEntering?.temperature ?? Number.NaN;
const sum = (series: Float64Array): number => series.reduce((total, each) => total + each, 0);
/** Only heat from the ground, a constant film, no fluid range to speak of. */
const direct = (heat: Float64Array, more: Partial<SimulationInput> = {}): SimulationInput => ({
  step: hours(1),
  duty: { from: 'ground', loads: heat },
  ground: new Float64Array(heat.length).fill(10),
  response,
  pipeLength: pipeMetres(1),
  resistanceAt: () => pipeMetreKelvinPerWatt(0),
  heatCapacityRate: wattsPerKelvin(1e9),
  ...more,
});

describe('a simulated house', () => {
  const { yearOne, lastYear, repeats, drift } = simulate({ ...house, withCourse: true });
  const course = courseOf(lastYear);

  it('settles to a year that repeats, colder than the first where more heat is taken than given', () => {
    expect(repeats).toBe(true);
    expect(lastYear.year).toBeLessThanOrEqual(3);
    expect(Math.abs(drift)).toBeLessThan(0.001);
    expect(coldest(lastYear)).toBeLessThan(coldest(yearOne));
    expect(lastYear.coldestEntering?.day).toBeGreaterThan(30);
    expect(lastYear.coldestEntering?.day).toBeLessThan(75);
  });

  it('solves load, unit, film and wall together in every hour', () => {
    const { pipeLength, heatCapacityRate } = house;
    const left: number[] = [];
    course.enteringFluids.forEach((entering, hour) => {
      const load = loads[hour] ?? 0;
      if (load === 0) return;
      const state = (load > 0 ? heating : cooling).continuedAt(entering as Temperature);
      const heat = load > 0 ? state.groundHeat : -state.groundHeat;
      const mean = entering - heat / (2 * heatCapacityRate);
      left.push(Math.abs(mean + (heat / pipeLength) * resistanceAt(mean as Temperature) - (course.walls[hour] ?? 0)));
      expect(course.runShares[hour]).toBeCloseTo(Math.min(1, Math.abs(load) / state.capacity), 4);
    });
    left.sort((one, other) => one - other);
    // Half of all hours to a microkelvin: one step of Newton's way, whose error is about its square. In the few in which the film's regime just changes, its table is 1 % off: 0.3 K · 1 %, and more heat.
    expect(left[Math.floor(left.length / 2)]).toBeLessThan(1e-6);
    expect(left[Math.floor(0.95 * left.length)]).toBeLessThan(1e-3);
    expect(left.at(-1)).toBeLessThan(0.04);
  });

  it('balances energy to 1e-9 in either mode and for every month', () => {
    const books = [lastYear, yearOne].flatMap((year) => [year, ...(year.months ?? [])]);
    expect(books).toHaveLength(26);
    for (const { heating: heat, cooling: cold } of books) {
      expect(Math.abs(heat.metEnergy - heat.groundEnergy - heat.unitElectricity)).toBeLessThanOrEqual(1e-9 * heat.energy);
      expect(Math.abs(cold.metEnergy - cold.groundEnergy + cold.unitElectricity)).toBeLessThanOrEqual(1e-9 * cold.energy);
      expect(Math.abs(heat.metEnergy + heat.unmetEnergy - heat.energy)).toBeLessThanOrEqual(1e-9 * heat.energy);
    }
    const months = lastYear.months ?? [];
    const inMonths = months.reduce((total, { heating: { groundEnergy } }) => total + groundEnergy, 0);
    expect(inMonths / lastYear.heating.groundEnergy).toBeCloseTo(1, 12);
    expect((sum(course.groundHeats) * 3600) / (lastYear.heating.groundEnergy - lastYear.cooling.groundEnergy)).toBeCloseTo(1, 12);
  });

  it('counts the heat of the pump in the fluid, and its share outside', () => {
    const pump = (share: number): SimulatedYear =>
      simulate({ ...house, pump: { powerAt: () => electricWatts(150), heatShare: fraction(share) } }).lastYear;
    for (const share of [1, 0.6, 0]) {
      const { heating: heat, cooling: cold } = pump(share);
      const intoFluid = share * heat.circulatorElectricity;
      expect((heat.groundEnergy + heat.unitElectricity + intoFluid) / heat.metEnergy).toBeCloseTo(1, 9);
      expect((cold.groundEnergy - cold.unitElectricity - share * cold.circulatorElectricity) / cold.metEnergy).toBeCloseTo(1, 9);
      expect(heat.circulatorElectricity / (150 * heat.runTime)).toBeCloseTo(1, 9);
    }
    expect(coldest(pump(1))).toBeGreaterThan(coldest(pump(0)));
  });

  it('leaves what the unit cannot meet to auxiliary heat', () => {
    const short = simulate({ ...house, duty: { from: 'building', loads: loads.map((load) => 2 * load), heating, cooling } }).lastYear.heating;
    expect(short.unmetEnergy).toBeGreaterThan(0.05 * short.energy);
    expect(short.coveredShare).toBeCloseTo(1 - short.unmetEnergy / short.energy, 12);
    const none = simulate({ ...house, duty: { from: 'building', loads, cooling } }).lastYear.heating;
    expect([none.coveredShare, none.groundEnergy, none.runTime]).toEqual([0, 0, 0]);
  });

  it('beyond the rating points is told once in a mode, at the farther of the first and the last year', () => {
    const points = [12, 20].map((entering) => {
      const { enteringFluid, capacity, power } = heating.continuedAt(celsius(entering));
      return { enteringFluid, capacity, power };
    });
    const run = simulate({ ...house, duty: { from: 'building', loads, heating: performanceMap({ mode: 'heating', points }), cooling } });
    const told = run.findings.flatMap(({ code, values }) => (code === 'map-extrapolated' && values.mode === 'heating' ? [values.enteringFluid] : []));
    const [first, last] = [run.yearOne, run.lastYear].map((year) => year.heating.coldestFluid ?? Number.NaN);
    expect(first).not.toBe(last);
    expect(told).toEqual([Math.min(first ?? Number.NaN, last ?? Number.NaN)]);
  });

  it('gives the same with twice the lengths and four times the times', () => {
    const bigger = exponentialResponse({
      layout: response2.layout(2),
      pipe: { outsideDiameter: diameterMillimetres(64) },
      soil: response2.soil,
    });
    const smaller = exponentialResponse({ layout: response2.layout(1), pipe: { outsideDiameter: diameterMillimetres(32) }, soil: response2.soil });
    const heat = wave(10, 12, 20);
    const one = simulate(direct(heat, { response: smaller, step: minutes(15), withCourse: true }));
    const two = simulate(direct(heat, { response: bigger, step: hours(1), withCourse: true }));
    const [a, b] = [courseOf(one.lastYear).walls, courseOf(two.lastYear).walls];
    // Both are fitted to the same minutes to years, so the sums of exponentials differ by their errors.
    a.forEach((wall, step) => {
      expect(Math.abs(wall - (b[step] ?? 0))).toBeLessThan(0.004);
    });
  });
});

const response2 = {
  soil: {
    conductivity: wattsPerMetreKelvin(1.5),
    heatCapacity: joulesPerCubicMetreKelvin(2.5e6),
    diffusivity: squareMetresPerSecond(6e-7),
  },
  layout: (scale: number) => onePipe({ depth: metres(1.5 * scale), trenches: 3, trenchSpacing: metres(3 * scale) }),
};

describe('the year that repeats', () => {
  const single = exponentialResponse({
    layout: response2.layout(1),
    pipe: { outsideDiameter: diameterMillimetres(32) },
    soil: response2.soil,
  });

  it.each([1, 3, 8])(
    'is what plain stepping of %i trenches comes to in the end: after twenty years only the tail of the response is missing',
    (trenches) => {
      const layout = onePipe({ depth: metres(1.5), trenches, trenchSpacing: metres(3) });
      const row = exponentialResponse({ layout, pipe: { outsideDiameter: diameterMillimetres(32) }, soil: response2.soil });
      const loop = { ...house, response: row, withCourse: true };
      const repeating = simulate(loop).lastYear;
      const stepped = simulate({ ...loop, years: 20 }).lastYear;
      expect(repeating.year).toBeLessThanOrEqual(4);
      const netHeat = (repeating.heating.groundEnergy - repeating.cooling.groundEnergy) / (HOURS * 3600) / house.pipeLength;
      const tail = netHeat * ((row.steadyRise ?? Number.NaN) - row.riseAfter((20 * HOURS * 3600) as Time));
      const settled = courseOf(repeating).walls;
      courseOf(stepped).walls.forEach((wall, hour) => {
        expect(Math.abs(wall - (settled[hour] ?? 0) - tail)).toBeLessThan(0.001);
      });
    },
  );

  it('is the same in a year of 365 and of 366 days with the same courses, each with its own length', () => {
    const days = (count: number): SimulatedYear => {
      const steps = 24 * count;
      const heat = Float64Array.from({ length: steps }, (_, step) => 8 - 10 * Math.cos((2 * Math.PI * (step + 1)) / steps));
      const ground = Float64Array.from({ length: steps }, (_, step) => 10 - 5 * Math.cos((2 * Math.PI * (step + 1)) / steps - 0.6));
      return simulate(direct(heat, { ground, response: single })).lastYear;
    };
    // A slower year reaches 0.3 % further down: half of that is 0.14 % of the swing of 10 W/m.
    expect(Math.abs(coldest(days(365)) - coldest(days(366)))).toBeLessThan(0.02);
    for (const count of [365, 366]) expect(days(count).months).toHaveLength(12);
  });

  it.each([365, 366].flatMap((count) => [3, 20].map((years) => ({ count, years }))))(
    'of $count days is what $years years of plain stepping come to, but for the tail of the response',
    ({ count, years }) => {
      const steps = 24 * count;
      const year = steps * 3600;
      const course = (mean: number, amplitude: number, phase: number): Float64Array =>
        Float64Array.from({ length: steps }, (_, step) => mean - amplitude * Math.cos((2 * Math.PI * (step + 1)) / steps - phase));
      const heat = course(4, 10, 0);
      const loop = direct(heat, { ground: course(10, 5, 0.6), response, withCourse: true });
      const repeating = simulate(loop).lastYear;
      const stepped = simulate({ ...loop, years }).lastYear;
      const settled = courseOf(repeating).walls;
      expect(settled).toHaveLength(steps);
      // What each term would still hold of the heat of all years before those that were stepped.
      const tail = new Float64Array(steps);
      for (const { timeConstant, rise } of response.terms) {
        const decay = Math.exp(-3600 / timeConstant);
        const oneYear = heat.reduce((state, each) => decay * state + (1 - decay) * rise * each, 0);
        const held = (oneYear / -Math.expm1(-year / timeConstant)) * Math.exp((-(years - 1) * year) / timeConstant);
        for (let step = 0; step < steps; step += 1) tail[step] = (tail[step] ?? 0) + held * decay ** (step + 1);
      }
      const off = courseOf(stepped).walls.map((wall, step) => Math.abs(wall - (settled[step] ?? 0) - (tail[step] ?? 0)));
      expect(Math.max(...off)).toBeLessThan(0.001);
    },
  );

  it('is refused below a sealed surface, where a number of years shows how the ground warms or cools for ever', () => {
    const sealed = exponentialResponse({
      layout: response2.layout(1),
      pipe: { outsideDiameter: diameterMillimetres(32) },
      soil: response2.soil,
      surface: { type: 'adiabatic' },
    });
    expect(() => simulate({ ...house, response: sealed })).toThrow(expect.objectContaining({ code: 'missing', argument: 'years' }));
    const { drift, repeats } = simulate({ ...house, response: sealed, years: 5 });
    expect(repeats).toBe(false);
    expect(drift).toBeLessThan(-0.1);
  });

  it('starts on any day and comes to the same year; the first differs', () => {
    const [january, october] = [house, { ...house, start: dayOfYear(274) }].map((input) => simulate(input));
    if (january === undefined || october === undefined) throw new Error('two years');
    expect(Math.abs(coldest(january.lastYear) - coldest(october.lastYear))).toBeLessThan(0.001);
    expect(coldest(october.yearOne)).toBeLessThan(coldest(january.yearOne));
  });
});

describe('a course of given heat', () => {
  it('swings by the amplitude and lag of the yearly response (LS-23), a second way to the same answer', () => {
    const input = { layout: response2.layout(1), pipe: { outsideDiameter: diameterMillimetres(32) }, soil: response2.soil };
    const year = (365 * 86_400) as Time;
    const { amplitude, lag } = periodicResponse({ ...input, period: year });
    const heat = wave(0, -10, 1);
    const walls = courseOf(simulate(direct(heat, { response: exponentialResponse(input), withCourse: true })).lastYear).walls;
    // Steps hold the heat of their end, which leads the course by half an hour.
    const half = 1800;
    let worst = 0;
    walls.forEach((wall, hour) => {
      const angle = (2 * Math.PI * ((hour + 1) * 3600 + half - lag)) / year;
      worst = Math.max(worst, Math.abs(wall - (10 - 10 * amplitude * Math.cos(angle))));
    });
    expect(10 * amplitude).toBeGreaterThan(3);
    expect(worst).toBeLessThan(0.003);
  });

  it('leaves the ground as it is without load', () => {
    const ground = wave(9.4, 5, 60);
    const { lastYear } = simulate({ ...house, duty: { from: 'building', loads: new Float64Array(HOURS), heating, cooling }, withCourse: true });
    expect(courseOf(lastYear).walls).toEqual(ground);
    expect(lastYear.coldestEntering).toBeUndefined();
    expect([lastYear.heating.energy, lastYear.cooling.energy]).toEqual([0, 0]);
  });

  it('is mirrored by the mirrored loads, ground and unit', () => {
    // 8 kW from 2 kW against 5 kW with 1 kW: 6 kW from the ground and 6 kW to it, with mirrored slopes.
    const unit = (mode: 'heating' | 'cooling', capacity: number, power: number): PerformanceMap =>
      performanceMap({
        mode,
        points: [-30, 0, 30].map((entering) => {
          const grown = 1 + (mode === 'heating' ? 0.01 : -0.01) * entering;
          return { enteringFluid: celsius(entering), capacity: watts(capacity * grown), power: electricWatts(power * grown) };
        }),
      });
    const winter = wave(2000, 4000, 183).map((each) => Math.max(0, each));
    const base = { ...house, resistanceAt: () => pipeMetreKelvinPerWatt(0.1) };
    const heat = simulate({
      ...base,
      duty: { from: 'building', loads: winter, heating: unit('heating', 8000, 2000) },
      ground: wave(0, 5, 60),
    }).lastYear;
    const cold = simulate({
      ...base,
      duty: { from: 'building', loads: winter.map((each) => (-5 / 8) * each), cooling: unit('cooling', 5000, 1000) },
      ground: wave(0, -5, 60),
    }).lastYear;
    expect(warmest(cold)).toBeCloseTo(-coldest(heat), 6);
    expect(cold.cooling.groundEnergy / heat.heating.groundEnergy).toBeCloseTo(1, 6);
  });

  it('takes any step from a minute to a day; a finer step changes a smooth course by little', () => {
    const smooth = (perDay: number): number => {
      const steps = 365 * perDay;
      const heat = Float64Array.from({ length: steps }, (_, step) => 10 - 10 * Math.cos((2 * Math.PI * (step + 0.5)) / steps));
      const { lastYear } = simulate(direct(heat, { step: (86_400 / perDay) as Time, ground: new Float64Array(steps).fill(10) }));
      return coldest(lastYear);
    };
    expect(Math.abs(smooth(1) - smooth(24))).toBeLessThan(0.01);
    expect(Math.abs(smooth(24) - smooth(96))).toBeLessThan(0.001);
  });
});

describe('cycling inside the hour', () => {
  it('is in closed form what minutes of running and pausing come to, to 0.02 K', () => {
    // Four starts an hour, running for 6 of 15 minutes at 20 W/m, day and night for 40 days.
    const minute = Float64Array.from({ length: 40 * 1440 }, (_, step) => (step % 15 < 6 ? 20 : 0));
    const stepped = simulate(direct(minute, { step: minutes(1), ground: new Float64Array(minute.length).fill(10), years: 1, withCourse: true }));
    const hourly = new Float64Array(40 * 24).fill(8);
    const even = simulate(direct(hourly, { ground: new Float64Array(hourly.length).fill(10), years: 1, withCourse: true }));
    const beyond = 20 * riseBeyondMean(response.terms, 900, 0.4);
    const [lastRun] = [courseOf(stepped.lastYear).walls[39 * 1440 + 5]];
    const mean = courseOf(even.lastYear).walls[39 * 24];
    expect(beyond).toBeGreaterThan(0.4);
    expect(Math.abs((mean ?? 0) - beyond - (lastRun ?? 0))).toBeLessThan(0.02);
  });

  it('makes the coldest fluid that of the end of a run where asked for, and nothing colder in hours of unbroken running', () => {
    const even = simulate({ ...house, withCourse: true });
    const cycled = simulate({ ...house, withCourse: true, cyclesPerHour: ratio(3) });
    expect([even.conventions.partLoad, cycled.conventions.partLoad]).toEqual(['even running', 'end of run']);
    const [a, b] = [courseOf(even.lastYear), courseOf(cycled.lastYear)];
    a.enteringFluids.forEach((entering, hour) => {
      const run = a.runShares[hour] ?? 0;
      if (run === 0) return;
      const colder = entering - (b.enteringFluids[hour] ?? 0);
      if (run >= 1) expect(colder).toBeCloseTo(0, 9);
      else if ((loads[hour] ?? 0) > 0) expect(colder).toBeGreaterThan(0);
      else expect(colder).toBeLessThan(0);
    });
  });
});

describe('film and temperature that feed on each other', () => {
  // Wall at 6.6 °C, 15 W/m: the fluid may be at 2.98, 3.31 or 3.85 °C. A film that falls steeply between them stands for the real one.
  const steep = (meanFluid: Temperature): ReturnType<typeof pipeMetreKelvinPerWatt> => {
    const share = Math.min(1, Math.max(0, (meanFluid - 2.98) / (3.85 - 2.98)));
    const low = (6.6 - 2.98) / 15;
    const high = (6.6 - 3.85) / 15;
    const bend = 0.5 + 1.9 * (share - 0.5) - 3.6 * (share - 0.5) ** 3;
    return pipeMetreKelvinPerWatt(low + (high - low) * Math.min(1, Math.max(0, bend)));
  };
  const flat = { terms: [{ timeConstant: hours(1e6), rise: pipeMetreKelvinPerWatt(1e-9) }], steadyRise: pipeMetreKelvinPerWatt(1e-9) };
  const run = (heat: readonly number[]): Float64Array =>
    courseOf(
      simulate({
        step: hours(1),
        duty: { from: 'ground', loads: heat },
        ground: heat.map(() => 6.6),
        response: flat,
        pipeLength: 1 as PipeLength,
        resistanceAt: steep,
        heatCapacityRate: 1e9 as Conductance,
        years: 1,
        withCourse: true,
      }).lastYear,
    ).enteringFluids;

  it('come to the state next to the hour before: the warm one from rest or little heat, the cold one from much heat', () => {
    const course = run([0, 15, 15, 24, 15, 15, 3, 15]);
    expect(course[1]).toBeCloseTo(3.85, 2);
    expect(course[2]).toBeCloseTo(3.85, 2);
    expect(course[4]).toBeCloseTo(2.98, 2);
    expect(course[5]).toBeCloseTo(2.98, 2);
    expect(course[7]).toBeCloseTo(3.85, 2);
  });

  it('are told as a finding', () => {
    const { findings } = simulate({
      step: hours(1),
      duty: { from: 'ground', loads: [0, 15, 24, 15] },
      ground: [6.6, 6.6, 6.6, 6.6],
      response: flat,
      pipeLength: 1 as PipeLength,
      resistanceAt: steep,
      heatCapacityRate: 1e9 as Conductance,
      years: 1,
    });
    expect(findings.map(({ code }) => code)).toEqual(['film-states']);
  });
});
