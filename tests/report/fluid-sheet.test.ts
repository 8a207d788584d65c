import { describe, expect, it } from 'vitest';
import { ETHANOL, fluidHazards, FLUID_NAMES, fluidSituations, METHANOL, POTASSIUM_FORMATE } from '../../src/fluid/index.js';
import { fluidSheet } from '../../src/report/index.js';
import { FLUID_USE_WORDS, FLUID_WORDS, HANDLING_WORDS, HAZARD_WORDS } from '../../src/report/text/fluid-words.js';
import { noticesFor } from '../../src/safety/index.js';
import { massPercent } from '../../src/units/index.js';
import { LIQUIDS } from '../fluid/all-fluids.js';
import { SOLUTIONS } from '../published/fluid.checks.js';
import { refuses } from '../support/bad-input.js';

const oneLine = (text: string): string => text.replace(/\s+/gu, ' ');

describe('fluidSheet', () => {
  it.each(SOLUTIONS.flatMap((fluid) => (['metric', 'us'] as const).map((system) => ({ name: fluid.name, fluid, system }))))(
    'of $name in $system units has its notices first, its dangers in words, and what to write on the loop',
    ({ name, fluid, system }) => {
      const sheet = fluidSheet({ fluid, massFraction: massPercent(20) }, system);
      const text = oneLine(sheet);
      for (const notice of noticesFor(fluidSituations(fluid))) expect(text).toContain(notice.text);
      for (const code of fluidHazards(fluid).hazardStatements) expect(text).toContain(`${HAZARD_WORDS[code] ?? 'no words'} (${code})`);
      expect(text).toContain(FLUID_USE_WORDS[fluid.use]);
      expect(HANDLING_WORDS[name].length).toBeGreaterThan(0);
      for (const words of HANDLING_WORDS[name]) expect(text).toContain(words);
      expect(text).toContain(`${FLUID_WORDS[name]}, 20`);
      expect(sheet.indexOf('Before anything else')).toBe(0);
      expect(text).not.toMatch(/NaN|undefined|\[object/u);
      const own = text.slice(text.indexOf('What it is'));
      expect(own).toMatch(system === 'us' ? /°F/u : /°C/u);
      expect(own).not.toMatch(system === 'us' ? /°C/u : /°F/u);
      expect(Math.max(...sheet.split('\n').map((line) => line.length))).toBeLessThanOrEqual(96);
    },
  );

  it('tells the flash point of a mixture of alcohol, where there is a table of it, and of nothing else', () => {
    expect(fluidSheet({ fluid: ETHANOL, massFraction: massPercent(20) }, 'metric')).toContain('class IC');
    expect(fluidSheet({ fluid: METHANOL, massFraction: massPercent(8) }, 'metric')).not.toContain('NFPA');
    for (const fluid of [...LIQUIDS.filter(({ name }) => !name.endsWith('anol')), POTASSIUM_FORMATE]) {
      expect(fluidSheet({ fluid, massFraction: massPercent(20) }, 'metric')).not.toContain('NFPA');
    }
  });

  it('has words for every statement', () => {
    const codes = SOLUTIONS.flatMap((fluid) => fluidHazards(fluid).hazardStatements);
    expect([...new Set(codes)].sort()).toEqual(Object.keys(HAZARD_WORDS).sort());
  });

  it('refuses bad input', () => {
    refuses<{ readonly fluid: 'water' | 'propylene-glycol'; readonly massFraction: ReturnType<typeof massPercent> }>(
      (mixture) => fluidSheet(mixture, 'metric'),
      { fluid: FLUID_NAMES, massFraction: 'mass fraction' },
      { fluid: 'propylene-glycol', massFraction: massPercent(25) },
    );
    expect(() => fluidSheet({ fluid: ETHANOL, massFraction: massPercent(20) }, 'imperial' as never)).toThrow('system');
    expect(() => fluidSheet({ fluid: 'water', massFraction: massPercent(0) }, 'metric')).toThrow('an antifreeze');
  });
});
