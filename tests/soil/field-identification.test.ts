import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GROUP_SIGNS } from '../../src/soil/field-terms.data.js';
import {
  DILATANCIES,
  DRY_STRENGTHS,
  FIELD_CONSEQUENCES,
  fieldObservationShape,
  identifyInField,
  moistureWord,
  MOISTURE_WORDS,
  ORGANIC_SIGNS,
  PLASTICITIES,
  TOUGHNESSES,
  type FieldObservation,
} from '../../src/soil/index.js';
import { massPercent, ratio, type Ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const SCALES = { dryStrength: DRY_STRENGTHS, dilatancy: DILATANCIES, toughness: TOUGHNESSES, plasticity: PLASTICITIES } as const;

/** All that is usual of a group, by one sign. */
const usual = <Sign extends string>(scale: readonly Sign[], [from, to]: readonly [Sign, Sign]): readonly Sign[] =>
  scale.slice(scale.indexOf(from), scale.indexOf(to) + 1);

const signs = fc.record(
  {
    dryStrength: fc.constantFrom(...DRY_STRENGTHS),
    dilatancy: fc.constantFrom(...DILATANCIES),
    toughness: fc.constantFrom(...TOUGHNESSES),
    plasticity: fc.constantFrom(...PLASTICITIES),
  },
  { requiredKeys: [] },
);
const with_ = (more: Omit<FieldObservation, 'moistureWord'>): ReturnType<typeof identifyInField> =>
  identifyInField({ moistureWord: 'moist', ...more });

describe('words of moisture', () => {
  it('tile the saturation from empty to full pores', () => {
    const ranges = MOISTURE_WORDS.map((moistureWord) => identifyInField({ moistureWord }));
    expect(ranges.map(({ saturationFrom, saturationTo }) => [saturationFrom, saturationTo])).toEqual([
      [0, 0.2],
      [0.2, 0.85],
      [0.85, 1],
    ]);
  });
});

describe('moistureWord', () => {
  it('is the word whose range holds the saturation', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (saturation) => {
        const { saturationFrom, saturationTo } = identifyInField({ moistureWord: moistureWord(ratio(saturation)) });
        expect(saturation).toBeGreaterThanOrEqual(saturationFrom);
        expect(saturation).toBeLessThanOrEqual(saturationTo);
      }),
    );
    expect([0, 0.19, 0.2, 0.84, 0.85, 1.05].map((each) => moistureWord(ratio(each)))).toEqual(['dry', 'dry', 'moist', 'moist', 'wet', 'wet']);
  });

  it('refuses more water than pores, and what is no number', () => {
    refuses<{ readonly saturation: Ratio }>(({ saturation }) => moistureWord(saturation), { saturation: 'ratio' }, { saturation: ratio(0.5) });
    expect(() => moistureWord(ratio(1.1))).toThrow('saturation: 1.1');
  });
});

describe('groups by the signs of the fines', () => {
  it.each(['ML', 'CL', 'MH', 'CH'] as const)('have %s among them for all that is usual of it', (group) => {
    const of = GROUP_SIGNS[group];
    for (const dryStrength of usual(DRY_STRENGTHS, of.dryStrength)) {
      for (const dilatancy of usual(DILATANCIES, of.dilatancy)) {
        for (const toughness of usual(TOUGHNESSES, of.toughness)) {
          for (const plasticity of usual(PLASTICITIES, of.plasticity)) {
            const { candidates, findings } = with_({ dryStrength, dilatancy, toughness, plasticity });
            expect(candidates).toContainEqual({ group, signsAgainst: 0 });
            expect(findings).toEqual([]);
          }
        }
      }
    }
  });

  it('are as many as the signs leave open', () => {
    const groups = (more: Omit<FieldObservation, 'moistureWord'>): readonly string[] => with_(more).candidates.map(({ group }) => group);
    expect(groups({})).toEqual([]);
    expect(groups({ dryStrength: 'medium' })).toEqual(['CL', 'MH']);
    expect(groups({ dryStrength: 'medium', dilatancy: 'slow', toughness: 'low' })).toEqual(['MH']);
    expect(groups({ dilatancy: 'rapid' })).toEqual(['ML']);
    expect(groups({ toughness: 'no thread', plasticity: 'nonplastic' })).toEqual(['ML']);
  });

  it('are the nearest where the signs disagree, which is told', () => {
    const { candidates, findings } = with_({ dryStrength: 'very high', dilatancy: 'rapid', toughness: 'high', plasticity: 'high' });
    expect(candidates).toEqual([{ group: 'CH', signsAgainst: 1 }]);
    expect(findings).toEqual([expect.objectContaining({ code: 'field-signs-disagree', values: { signsAgainst: 1 } })]);
  });

  it('grow no fewer in signs against them by one more sign', () => {
    fc.assert(
      fc.property(signs, fc.constantFrom(...(['dryStrength', 'dilatancy', 'toughness', 'plasticity'] as const)), (given, left) => {
        const { [left]: _, ...fewer } = given;
        const against = (some: typeof fewer): number => with_(some).candidates[0]?.signsAgainst ?? 0;
        expect(against(fewer)).toBeLessThanOrEqual(against(given));
        expect(with_(given).candidates.length).toBeGreaterThanOrEqual(Object.keys(given).length === 0 ? 0 : 1);
      }),
    );
    expect(Object.keys(SCALES)).toHaveLength(4);
  });
});

describe('gravel and organic matter', () => {
  const of = (more: Omit<FieldObservation, 'moistureWord'>): readonly string[] => with_(more).consequences;

  it('change nothing where there is little or none', () => {
    expect(of({})).toEqual([]);
    expect(of({ gravel: massPercent(14), organicSigns: [] })).toEqual([]);
  });

  it('change the sample, the drying and what can be computed', () => {
    expect(of({ gravel: massPercent(15) })).toEqual(['texture of the fine earth only', 'larger sample']);
    expect(of({ gravel: massPercent(60) })).toContain('take as gravel');
    expect(of({ organicSigns: ['dark'] })).toEqual(['dry at low temperature', 'measure organic matter']);
    expect(of({ organicSigns: ['dark', 'dark', 'dark'] })).not.toContain('take as peat');
    expect(of({ organicSigns: ORGANIC_SIGNS })).toContain('take as peat');
    expect(of({ gravel: massPercent(60), organicSigns: ORGANIC_SIGNS })).toEqual([...FIELD_CONSEQUENCES]);
  });
});

describe('identifyInField', () => {
  it('refuses bad input by name', () => {
    const all: FieldObservation = {
      moistureWord: 'wet',
      dryStrength: 'low',
      dilatancy: 'slow',
      toughness: 'low',
      plasticity: 'low',
      gravel: massPercent(10),
      organicSigns: ['smell'],
    };
    // No signs of organic matter are as good as none mentioned.
    const unused = { organicSigns: 'an empty list has no signs' };
    refuses(identifyInField, fieldObservationShape, all, { unused });
  });
});
