import { describe, expect, it } from 'vitest';
import { assumptionsOf, sourcesOf } from '../../src/plan/remarks.js';
import { usedSources } from '../../src/plan/used-sources.js';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { type LoopInput, planLoop } from '../../src/plan/index.js';
import { REFERENCES } from '../../src/references/index.js';
import { hours, metres, pipeMetres } from '../../src/units/index.js';

const demo: LoopInput = inputDocument().read(demoDocument);
const plan = planLoop(demo);
const used = (changes: Partial<Parameters<typeof usedSources>[0]> = {}): readonly string[] =>
  usedSources({
    climate: demo.climate,
    response: { sources: ['ingersoll1954'] },
    modes: plan,
    pipe: plan.pipe,
    header: plan.pipe,
    fluid: plan.fluid,
    ...changes,
  });

describe('sources of a plan', () => {
  it('are those of every room used, of findings and of assumptions, each once', () => {
    const [finding] = plan.findings;
    if (finding === undefined) throw new Error('the demo has findings');
    const assumption = { code: 'freeze-margin', assumed: { kind: 'temperature difference', value: 5 }, source: 'freezeMarginPractice' } as const;
    expect(sourcesOf([finding, finding], [assumption], ['erbs1983', 'bose1985'], ['erbs1983'])).toEqual([
      'erbs1983',
      'bose1985',
      finding.source,
      'freezeMarginPractice',
    ]);
    expect(sourcesOf([], [], ['erbs1983'])).toEqual(['erbs1983']);
  });

  it('follow what was used: response, film, pipe and fluid', () => {
    const keys = used();
    for (const key of keys) expect(REFERENCES).toHaveProperty(key);
    expect(keys).toEqual(
      expect.arrayContaining([
        'ingersoll1954',
        'bose1985',
        'kavanaughRafferty1997',
        'erbs1983',
        'churchill1977',
        'iso4427',
        'melinder2010',
        'leastSquares',
      ]),
    );
    expect(keys).not.toContain('astmPolyethylenePipe');
    expect(used({ pipe: { series: 'IPS' } })).toContain('astmPolyethylenePipe');
    expect(used({ fluid: { fluid: 'water', governedBy: 'water' } })).toContain('iapwsWater');
    expect(used({ fluid: { fluid: 'water', governedBy: 'water' } })).not.toContain('melinder2010');
    const { heating } = plan;
    if (heating === undefined) throw new Error('the demo heats');
    const flowing = (regime: 'laminar' | 'turbulent'): readonly string[] =>
      used({ modes: { heating: { resistance: { ...heating.resistance, regime } } } });
    expect(flowing('turbulent')).toContain('gnielinski1976');
    expect(flowing('laminar')).not.toContain('gnielinski1976');
  });
});

describe('the distance to the house', () => {
  it('is an assumption where none is given', () => {
    const facts = {
      peakTimes: { heating: hours(72), cooling: hours(6) },
      cools: true,
      leadLength: pipeMetres(6),
      fluid: plan.fluid,
      circulates: true,
    };
    const codes = (distance?: number): readonly string[] =>
      assumptionsOf({ ...facts, ...(distance === undefined ? {} : { distanceTaken: metres(distance) }) }).map(({ code }) => code);
    expect(codes(0)).toContain('distance-to-house');
    expect(codes()).not.toContain('distance-to-house');
  });
});
