import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { type LoopInput, planLoop } from '../../src/plan/index.js';

const demo: LoopInput = inputDocument().read(demoDocument);

describe('a name', () => {
  it.each(['two\nlines', 'a\ttab', 'bell\u0007', 'escape \u001B[2J', 'line\u2028break', 'turned \u202Eback', 'half \uD800', 'delete \u007F'])(
    '%j is refused without being repeated raw',
    (name) => {
      expect(() => planLoop({ ...demo, name })).toThrow(
        /^name: [^\p{Cc}\p{Cs}\p{Zl}\u202E]+ is not allowed; allowed: .*one line without control characters/u,
      );
    },
  );

  it.each(['Höfchen №7, 東の畑', 'a'.repeat(400)])('%s is kept', (name) => {
    expect(planLoop({ ...demo, name }).name).toBe(name);
  });
});

describe('the length of the year', () => {
  const planned = (from: 'air-wave' | 'wave', period: string | undefined): unknown => {
    const wave = { mean: '8.4 degC', amplitude: '11 K', coldestDay: '17 d', ...(period === undefined ? {} : { period }) };
    const climate = from === 'air-wave' ? { from, ...wave, cover: 'grass' } : { from, ...wave };
    return planLoop(inputDocument().read({ ...demoDocument, climate, ...(from === 'wave' ? { airMonths: demoDocument.climate.monthlyMeans } : {}) }));
  };

  it.each(['air-wave', 'wave'] as const)('of a climate from %s is that of the calendar', (from) => {
    for (const period of ['30 d', '364.9 d', '366.1 d', '3650 d'])
      expect(() => planned(from, period)).toThrow(/^climate\.period: .*months of a calendar year/u);
    for (const period of [undefined, '365 d', '365.25 d', '366 d']) expect(planned(from, period)).toHaveProperty('loop');
  });
});
