import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import type { Finding } from '../../src/findings/index.js';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import { describeFinding } from '../../src/report/index.js';
import { celsius, dayOfYear, hours, kelvinDifference, kilowatts, litresPerSecond, metres, pipeMetres, trenchMetres } from '../../src/units/index.js';

const demo: LoopInput = inputDocument().read(demoDocument);
const { building, heatPump, field, circuits, climate } = demo;
const loads = (heating: number, cooling: number): LoopInput => {
  const [heat, cold] = [building.heating, building.cooling];
  if (heat === undefined || cold === undefined) throw new Error('the demo heats and cools');
  return {
    ...demo,
    building: { ...building, heating: { ...heat, designLoad: kilowatts(heating) }, cooling: { ...cold, designLoad: kilowatts(cooling) } },
  };
};
const found = ({ findings }: LoopPlan, code: Finding['code']): Finding | undefined => findings.find((each) => each.code === code);
const roomy: LoopInput['field'] = { ...field, mostTrenches: 100 };

describe('a mode in which the unit hardly runs', () => {
  it('is left out and told; the other mode alone sizes the loop', () => {
    const plan = planLoop(loads(9, 0.1));
    expect(plan.cooling).toBeUndefined();
    expect(found(plan, 'mode-hardly-runs')).toMatchObject({ level: 'note', values: { mode: 'cooling' } });
    expect(plan.heating?.needed.monthly.pipe).toBeCloseTo(planLoop(demo).heating?.needed.monthly.pipe ?? Number.NaN, 6);
    expect(plan.byHours.cooling.energy).toBe(0);
  });

  it('may be heating, where it is warm all year', () => {
    const monthlyMeans = Array.from({ length: 12 }, (_, month) => celsius(26 + (month % 6) / 5));
    const plan = planLoop({ ...loads(9, 8), climate: { ...climate, from: 'monthly-air', monthlyMeans, cover: 'grass' } as never });
    expect([plan.heating, plan.governing]).toEqual([undefined, 'cooling']);
  });

  it('is refused when there is no other', () => {
    expect(() => planLoop(loads(0.01, 0.01))).toThrow(expect.objectContaining({ code: 'impossible', argument: 'building' }));
  });
});

describe('a unit larger than the house asks for', () => {
  it('is told, and its spells take less of the ground than those of a house that needs all of it', () => {
    const lengths = [0.5, 1, 5, 9].map((heating) => planLoop(loads(heating, 5)).heating?.needed.monthly.pipe ?? Number.NaN);
    lengths.slice(1).forEach((length, index) => expect(length).toBeGreaterThan(1.1 * (lengths[index] ?? 0)));
    expect(found(planLoop(loads(3, 5)), 'unit-oversized')).toMatchObject({ level: 'note', values: { mode: 'heating' } });
    expect(planLoop(demo).findings.filter(({ code, values }) => code === 'unit-oversized' && values.mode === 'heating')).toEqual([]);
  });

  it('is stopped where it carries less than half of the heat', () => {
    expect(found(planLoop(loads(50, 5)), 'capacity-short')?.level).toBe('stop');
    expect(found(planLoop(loads(9, 5)), 'capacity-short')?.level).toBe('note');
  });
});

describe('water', () => {
  const { lowestLeaving: _, ...unstopped } = heatPump;
  const warm = (entering: number): LoopInput => ({
    ...demo,
    fluid: 'water',
    field: { ...roomy, layout: { ...field.layout, upperDepth: metres(2), lowerDepth: metres(2.4) } as never },
    soil: { layers: demo.soil.layers.map((layer, index) => (index === 2 ? { ...layer, bottom: metres(4) } : layer)) },
    heatPump: { ...unstopped, lowestEntering: celsius(entering) },
    climate: { ...climate, meanOffset: 6 } as never,
  });

  it('that leaves the unit below freezing, or near it, is a stop: ice bursts the unit', () => {
    expect(found(planLoop(warm(2)), 'freeze-protection-short')?.level).toBe('stop');
    expect(found(planLoop(warm(6)), 'freeze-margin-small')?.level).toBe('stop');
  });

  it('that would be ice at the unit’s own limit is refused there', () => {
    expect(() => planLoop({ ...demo, fluid: 'water' })).toThrow(/^heatPump\.lowestEntering: .*choose an antifreeze/u);
  });
});

describe('ground that freezes by itself', () => {
  const months = (colder: number): LoopInput => {
    const monthlyMeans = [-12, -11, -6, 1, 8, 14, 16.5, 14.5, 9, 3, -4, -9].map((mean) => celsius(mean - colder));
    return { ...demo, field: roomy, climate: { from: 'monthly-air', monthlyMeans, cover: 'grass' } };
  };

  it('is told with its temperature and the snow that is left out; snow that is counted keeps it warmer', () => {
    const plan = planLoop(months(0));
    const finding = found(plan, 'ground-freezes-at-pipes');
    expect(finding).toMatchObject({ level: 'warning', values: { lowest: plan.ground.pipes.lowest, snow: 'left out' } });
    expect(plan.ground.pipes.lowest).toBeLessThan(0);
    expect(finding && describeFinding(finding, 'metric')).toContain('climate.cover is lasting snow');
    const covered = planLoop({ ...months(0), climate: { ...months(0).climate, cover: 'lasting snow' } as never });
    expect(covered.ground.pipes.lowest).toBeGreaterThan(plan.ground.pipes.lowest);
    expect(found(planLoop(demo), 'ground-freezes-at-pipes')).toBeUndefined();
  });

  it('is refused at the limit of the unit where it is too cold for it, with what helps', () => {
    const refused = { code: 'unreachable', argument: 'heatPump.lowestEntering' };
    expect(() => planLoop(months(6))).toThrow(expect.objectContaining(refused));
    expect(() => planLoop(months(6))).toThrow(/the ground itself is too cold for this fluid at any length and load; bury deeper, .*lasting snow/u);
  });
});

describe('pipes near the surface', () => {
  const upper = (depth: number): LoopPlan =>
    planLoop({ ...demo, field: { ...roomy, layout: { ...field.layout, upperDepth: metres(depth) } as never } });

  it('are told where tools and frost reach them', () => {
    expect(found(upper(0.5), 'pipes-shallow')).toMatchObject({ level: 'warning', values: { cover: 0.5, usual: 0.6 } });
    expect(found(upper(0.6), 'pipes-shallow')).toBeUndefined();
  });
});

describe('a frozen state of a handbook', () => {
  it('is refused at its layer: no loop is sized by ice', () => {
    const layers = demo.soil.layers.map((layer, index) =>
      index === 1 ? { ...layer, sample: { from: 'handbook', material: 'peat', state: 'saturated, frozen' } as const } : layer,
    );
    const refused = { code: 'impossible', argument: 'soil.layers.1.sample.state', value: 'saturated, frozen' };
    expect(() => planLoop({ ...demo, soil: { layers } })).toThrow(expect.objectContaining(refused));
  });
});

describe('a limit near the ground’s own temperature', () => {
  const limit = (entering: number): LoopPlan => planLoop({ ...demo, field: roomy, heatPump: { ...heatPump, lowestEntering: celsius(entering) } });

  it('lets the soil that conducts best ask for the most, and the finding says so', () => {
    const plan = limit(4);
    expect(found(plan, 'short-if-soil-is-poor')?.values).toMatchObject({ end: 'high' });
    expect(found(planLoop(demo), 'short-if-soil-is-poor')?.values).toMatchObject({ end: 'low' });
  });

  it('leaves a plan that the estimate reaches, though an end of the band does not', () => {
    const plan = limit(6);
    expect(found(plan, 'band-end-unreachable')?.values).toMatchObject({ end: 'high' });
    expect(plan.loop.needed.high).toBeGreaterThanOrEqual(plan.loop.needed.estimate);
  });
});

describe('a surface that is not below the air it is given with', () => {
  const { airMonths: _, ...bare } = demo;
  const monthlyMeans = climate.from === 'monthly-air' ? climate.monthlyMeans : [];
  const surface = (mean: number, coldestDay: number, amplitude = 10): LoopPlan =>
    planLoop({
      ...bare,
      field: roomy,
      climate: { from: 'wave', mean: celsius(mean), amplitude: kelvinDifference(amplitude), coldestDay: dayOfYear(coldestDay) },
      airMonths: monthlyMeans,
    });
  const codes = ({ findings }: LoopPlan): readonly string[] => findings.map(({ code }) => code).filter((code) => code.endsWith('-off-air'));

  it('is told where its winter is not that of the air', () => {
    const plan = surface(9.4, 200);
    expect(codes(plan)).toEqual(['surface-season-off-air']);
    // The loads meet the ground of the wrong season: whatever length follows would be dug for nothing.
    expect(found(plan, 'surface-season-off-air')?.level).toBe('stop');
    // Coldest day of the air by fit: near 17 January, so 200 is half a year and a little less behind.
    expect(found(plan, 'surface-season-off-air')?.values).toMatchObject({ lag: expect.closeTo((200 - 17) * 86_400 - 365 * 86_400, -6) });
  });

  it('is told where its mean is far from that of the air', () => {
    expect(codes(surface(30, 25))).toEqual(['surface-mean-off-air']);
    expect(found(surface(30, 25), 'surface-mean-off-air')?.values).toMatchObject({ meanOffset: expect.closeTo(30 - 8.43, 1) });
    // Beyond twice the usual one of both is wrong; a little beyond it a strange cover may still explain it.
    expect(found(surface(30, 25), 'surface-mean-off-air')?.level).toBe('stop');
    expect(found(surface(16, 25), 'surface-mean-off-air')?.level).toBe('warning');
  });

  it('is left alone where they agree, and where a surface hardly swings', () => {
    expect(codes(surface(9.4, 25))).toEqual([]);
    expect(codes(surface(13, 60))).toEqual([]);
    expect(codes(surface(9.4, 200, 1))).toEqual([]);
  });
});

describe('a part of the job that cannot be', () => {
  it('names what followed from the place, where the number is not the one that was given', () => {
    const slow = { ...demo, heatPump: { ...heatPump, sourceFlow: litresPerSecond(0.05) } };
    expect(() => planLoop(slow)).toThrow(/^heatPump\.sourceFlow: -17\.\d+ \(temperature\).*\(the temperature that follows from it; /u);
  });

  it('is the house, where no loop of the land could ever carry it', () => {
    expect(() => planLoop(loads(1e6, 5))).toThrow(expect.objectContaining({ code: 'out-of-range', argument: 'building.heating.designLoad' }));
    expect(() => planLoop(loads(9, 1e6))).toThrow(expect.objectContaining({ code: 'out-of-range', argument: 'building.cooling.designLoad' }));
  });

  it('is the trench, for the shortest coil that reaches beyond its leads', () => {
    const short = { ...demo, field: { ...field, longestTrench: trenchMetres(2) }, circuits: { ...circuits, leadLength: pipeMetres(110) } };
    expect(() => planLoop(short)).toThrow(/^field\.longestTrench: .*at least 7\.5 m/u);
  });

  it('is named by its place in the input', () => {
    const flow = (litres: number): LoopInput => ({ ...demo, heatPump: { ...heatPump, sourceFlow: litresPerSecond(litres) } });
    const shallow = { ...field, layout: { ...field.layout, upperDepth: metres(0.01) } as never };
    expect(() => planLoop(flow(0.05))).toThrow(expect.objectContaining({ argument: 'heatPump.sourceFlow' }));
    expect(() => planLoop(flow(1000))).toThrow(expect.objectContaining({ argument: 'heatPump.sourceFlow' }));
    expect(() => planLoop({ ...demo, field: shallow })).toThrow(expect.objectContaining({ argument: 'field.layout' }));
  });

  it('does not take others with it: a coil shorter than its leads is left out', () => {
    const plan = planLoop({ ...demo, field: roomy, circuits: { ...circuits, leadLength: pipeMetres(100) } });
    expect(plan.loop.circuits.coilLength).toBeGreaterThan(pipeMetres(101));
  });

  it('takes its default where a peak time is undefined', () => {
    const plan = planLoop({ ...demo, peakTimes: { heating: undefined as never, cooling: hours(6) } });
    expect(plan.loop.needed.estimate).toBe(planLoop(demo).loop.needed.estimate);
  });
});
