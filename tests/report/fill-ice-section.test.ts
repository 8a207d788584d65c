import { describe, expect, it } from 'vitest';
import { type LoopPlan, planLoop } from '../../src/plan/index.js';
import { planPage, type UnitSystem } from '../../src/report/index.js';
import { dayOfYear, kelvinDifference, metres, pipeMetreKelvinPerWatt, seconds } from '../../src/units/index.js';
import { DEMO } from '../plan/water-unit.js';

const plan = planLoop({ ...DEMO, trenchFill: { width: metres(0.6) }, followIce: { structureDistance: metres(3) } });
const { settling, iceAround } = plan;
if (settling === undefined || iceAround === undefined) throw new Error('neither fill nor ice');
const page = (of: LoopPlan, system: UnitSystem = 'metric'): string => planPage(of, system).replaceAll(/\s+/g, ' ');

describe('the page', () => {
  it('has no word of either where they were not asked for', () => {
    const text = page(planLoop(DEMO));
    expect(text).not.toContain('While the trench fill settles');
    expect(text).not.toContain('Ice around the pipes');
  });

  it('has fill and ice between the hours and the year, in either unit system', () => {
    for (const system of ['metric', 'us'] as const) {
      const text = page(plan, system);
      const places = ['hour by hour', 'While the trench fill settles', 'Ice around the pipes', 'What the year takes'].map((title) =>
        text.indexOf(title),
      );
      expect(places).toEqual([...places].sort((one, other) => one - other));
      expect(places[0]).toBeGreaterThan(0);
    }
    expect(page(plan, 'us').split('While the trench fill')[1]?.split('What the year takes')[0]).not.toMatch(/\d (?:m|mm|K|°C|kg)\b/u);
  });

  it('tells both states of the fill with their limits and lengths', () => {
    const text = page(plan);
    expect(text).toMatch(/First winter, loose 1326 kg\/m³ dry, .* more between pipe and ground/u);
    expect(text).toMatch(/beyond its limits; 446 m of pipe would just keep them Settled, every year 1482/u);
    const { binding: _b, exactLength: _e, ...loose } = settling.firstWinter;
    const better = { ...settling.settled, addedResistance: pipeMetreKelvinPerWatt(-0.02) };
    const other = page({ ...plan, settling: { ...settling, firstWinter: loose, settled: better } });
    expect(other).toContain('0.020 m·K/W less between pipe and ground');
    expect(other).not.toContain('446 m of pipe would just');
  });

  it('tells ice by month, heave, structure and roots', () => {
    const text = page(plan);
    expect(text).toMatch(/without ice, the reserve −\d\.\d °C on \d+ February with ice Ice \d+\.\d mm thick on the pipe/u);
    expect(text).toMatch(/Thickness by month January \d+\.\d mm, February/u);
    expect(text).toMatch(/thawed by \d+ March/u);
    expect(text).toMatch(/lift severely; 2\.94 m from frozen soil to the structure/u);
    expect(text).toMatch(/Roots over the loop 0\.\d K colder at most, .*; spring comes \d days later/u);
  });

  it('tells ice that does not count, does not thaw, or is none', () => {
    const { thawDay: _t, months: _m, ...lasting } = iceAround.iceYear;
    const { structureClearance: _c, ...heave } = iceAround.heave;
    const { roots: _r, ...rootless } = iceAround;
    const text = page({ ...plan, iceAround: { ...rootless, credited: false, heave, iceYear: lasting } });
    expect(text).toContain('with ice, which does not count here');
    expect(text).toContain('it does not thaw within the year');
    expect(text).not.toContain('Thickness by month');
    expect(text).not.toContain('to the structure');
    expect(text).not.toContain('Roots over the loop');
    const { mostIceDay: _d, ...none } = lasting;
    expect(page({ ...plan, iceAround: { ...iceAround, iceYear: none } })).toContain('Ice none');
  });

  it('tells roots without a spring, and a spring that comes earlier', () => {
    const roots = {
      largestCooling: kelvinDifference(1),
      largestCoolingDay: dayOfYear(40),
      coldestWithout: plan.ground.pipes.lowest,
      coldestWith: plan.ground.pipes.lowest,
    };
    expect(page({ ...plan, iceAround: { ...iceAround, roots } })).toContain('1.0 K colder at most, on 9 February -');
    expect(page({ ...plan, iceAround: { ...iceAround, roots: { ...roots, springDelay: seconds(-86_400) } } })).toContain(
      'spring comes 1 day earlier',
    );
  });
});
