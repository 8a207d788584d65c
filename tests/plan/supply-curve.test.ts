import { describe, expect, it } from 'vitest';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import { kelvinDifference, kilowatts, celsius } from '../../src/units/index.js';
import { DEMO, withCurve } from './water-unit.js';

const [cool, warm] = [planLoop(withCurve(40)), planLoop(withCurve(55))] as const;
const fixed = planLoop(withCurve(55, 'fixed'));
const codes = ({ findings }: LoopPlan): readonly string[] => findings.map(({ code }) => code);

describe('a heating curve followed by the hour', () => {
  it('that is hotter takes more electricity and less from the ground', () => {
    expect(warm.season.heating?.unitElectricity).toBeGreaterThan(cool.season.heating?.unitElectricity ?? Infinity);
    expect(warm.season.heating?.groundEnergy).toBeLessThan(cool.season.heating?.groundEnergy ?? 0);
  });

  it('takes less than its design supply all year, and is said to be followed', () => {
    expect(warm.season.heating?.unitElectricity).toBeLessThan((fixed.season.heating?.unitElectricity ?? 0) * 0.95);
    expect(codes(warm)).not.toContain('supply-taken-as-fixed');
    expect(codes(fixed)).not.toContain('supply-taken-as-fixed');
  });

  it('rests on the water at design where pipe is proposed', () => {
    expect(warm.heating?.unit.performance).toEqual(fixed.heating?.unit.performance);
    expect(Math.abs(warm.byHours.exactLength / fixed.byHours.exactLength - 1)).toBeLessThan(0.1);
  });
});

describe('emitters', () => {
  const emitters = (ratedOutput: number): NonNullable<LoopInput['emitters']> => ({
    emitter: 'radiator',
    ratedOutput: kilowatts(ratedOutput),
    ratedWater: { supplyTemperature: celsius(75), returnTemperature: celsius(65), indoor: celsius(20) },
    waterSpread: kelvinDifference(8),
  });

  it('too small for the water are found, with what would help', () => {
    const short = planLoop({ ...withCurve(45), emitters: emitters(16) });
    expect(codes(short)).toContain('emitter-short');
    expect(short.emitters?.metShare).toBeLessThan(1);
    expect(short.emitters?.availableSupply).toBe(45);
    expect(short.emitters?.alternatives[3]?.requiredSupply).toBeLessThan(short.emitters?.requiredSupply ?? 0);
  });

  it('large enough are not, and change nothing else', () => {
    const { emitters: found, findings, sources: _s, ...enough } = planLoop({ ...withCurve(55), emitters: emitters(30) });
    expect(found?.metShare).toBe(1);
    const { findings: without, sources: _w, ...same } = warm;
    expect(findings).toEqual(without);
    expect(enough).toEqual(same);
  });

  it('want to know the water and the room', () => {
    expect(() => planLoop({ ...DEMO, emitters: emitters(16) })).toThrow(/^heatPump\.supplyControl: nothing is not allowed/u);
    const { indoor: _, ...heating } = DEMO.building.heating;
    expect(() => planLoop({ ...withCurve(45), building: { heating }, emitters: emitters(16) })).toThrow(/^building\.heating\.indoor: nothing/u);
  });
});
