import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors/index.js';
import { describeFeelAnswer, describeFeelQuestion, describeFieldConsequence, describeSoilGroup, samplingSheet } from '../../src/report/index.js';
import { FEEL_ANSWER_WORDS, FEEL_QUESTION_WORDS } from '../../src/report/text/feel-words.js';
import {
  CONSEQUENCE_WORDS,
  DRYING_RULE_WORDS,
  PIT_NOTE_WORDS,
  PURPOSE_WORDS,
  SAMPLING_RULE_WORDS,
  TOOL_WORDS,
} from '../../src/report/text/soil-words.js';
import { noticesFor } from '../../src/safety/index.js';
import { FEEL_ANSWERS, FIELD_CONSEQUENCES, samplingPlan, UNIFIED_GROUPS, type FeelQuestion } from '../../src/soil/index.js';
import { metres, trenchMetres } from '../../src/units/index.js';

const plan = samplingPlan({ pipeDepths: [metres(1.2), metres(1.8)], trenches: 4, trenchLength: trenchMetres(60) });
const oneLine = (text: string): string => text.replace(/\s+/gu, ' ');

describe('samplingSheet', () => {
  it.each(['metric', 'us'] as const)('has every pit, depth, note, rule and notice, in %s units only', (system) => {
    const sheet = samplingSheet(plan, system);
    const text = oneLine(sheet);
    for (const words of [...Object.values(PIT_NOTE_WORDS), ...Object.values(SAMPLING_RULE_WORDS), ...Object.values(DRYING_RULE_WORDS)])
      expect(text).toContain(words);
    for (const notice of noticesFor(plan.situations)) expect(text).toContain(notice.text);
    expect(sheet.match(/Pit \d/gu)).toHaveLength(plan.pits.length);
    expect(text).toContain('18 bags');
    expect(text).toContain(system === 'us' ? 'Pit 1 33 ft along' : 'Pit 1 10.0 m along');
    expect(text).not.toMatch(/NaN|undefined|\[object/u);
    expect(Math.max(...sheet.split('\n').map((line) => line.length))).toBeLessThanOrEqual(96);
  });

  it('warns before it tells where to dig', () => {
    const sheet = samplingSheet(plan, 'metric');
    expect(sheet.indexOf('Never climb into')).toBeLessThan(sheet.indexOf('Where to dig'));
    expect(sheet.indexOf('Never climb into')).toBeGreaterThan(0);
  });
});

describe('words', () => {
  it('are sentences', () => {
    const sentences = [PIT_NOTE_WORDS, SAMPLING_RULE_WORDS, DRYING_RULE_WORDS, CONSEQUENCE_WORDS].flatMap((table) => Object.values<string>(table));
    for (const sentence of sentences) expect(sentence).toMatch(/^\p{Lu}.{10,}\.$/su);
    for (const words of [PURPOSE_WORDS, TOOL_WORDS].flatMap((table) => Object.values<string>(table))) expect(words).toMatch(/^\p{Ll}.*[^.]$/u);
  });

  it('ask at every step of the path by hand and explain every answer, in the units of the reader', () => {
    const questions = Object.keys(FEEL_QUESTION_WORDS) as FeelQuestion[];
    for (const system of ['metric', 'us'] as const) {
      for (const question of questions) expect(describeFeelQuestion(question, system)).toMatch(/\?$/u);
      for (const answer of FEEL_ANSWERS) expect(describeFeelAnswer(answer, system)).toMatch(/\.$/u);
    }
    expect(Object.keys(FEEL_ANSWER_WORDS).sort()).toEqual([...FEEL_ANSWERS].sort());
    expect(describeFeelAnswer('ribbon of 25 to 50 mm', 'us')).not.toContain('mm');
    expect(describeFeelAnswer('ribbon of 25 to 50 mm', 'metric')).not.toContain('inch');
    for (const consequence of FIELD_CONSEQUENCES) expect(describeFieldConsequence(consequence)).toBe(CONSEQUENCE_WORDS[consequence]);
  });

  it('name each group by its letters', () => {
    const names = UNIFIED_GROUPS.map(describeSoilGroup);
    expect(new Set(names).size).toBe(UNIFIED_GROUPS.length);
    for (const group of UNIFIED_GROUPS) {
      const name = describeSoilGroup(group);
      expect(/gravel/u.test(name)).toBe(group.startsWith('G'));
      expect(/sand/u.test(name)).toBe(group.startsWith('S'));
      expect(/organic/u.test(name)).toBe(group.startsWith('O'));
      if (/^[GS]/u.test(group)) {
        expect(/well-graded/u.test(name)).toBe(group.includes('W'));
        expect(/poorly/u.test(name)).toBe(group.includes('P'));
        expect(/silt/u.test(name)).toBe(group.includes('M'));
        expect(/clay/u.test(name)).toBe(group.slice(1).includes('C'));
      }
    }
  });

  it('are refused for what is not known', () => {
    for (const run of [
      () => describeFeelQuestion('none' as never, 'us'),
      () => describeFeelAnswer('none' as never, 'us'),
      () => describeFeelAnswer('ball', 'imperial' as never),
      () => describeFeelQuestion('ball', 'imperial' as never),
      () => describeFieldConsequence('none' as never),
      () => describeSoilGroup('XX' as never),
      () => samplingSheet(plan, 'imperial' as never),
    ]) {
      expect(run).toThrow(InputError);
    }
  });
});
