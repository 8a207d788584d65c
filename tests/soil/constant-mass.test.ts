import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { constantMass, dryingCourseShape, type ConstantMassResult, type DryingCourse } from '../../src/soil/index.js';
import { grams, hours, kilograms, pounds } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const course = (
  weighings: readonly (readonly [hour: number, gram: number])[],
  tare = 0,
  dryingRule?: DryingCourse['dryingRule'],
): ConstantMassResult =>
  constantMass({
    weighings: weighings.map(([hour, gram]) => ({ ovenTime: hours(hour), dryMass: grams(gram) })),
    tareMass: grams(tare),
    ...(dryingRule === undefined ? {} : { dryingRule }),
  });
const codes = ({ findings }: ConstantMassResult): readonly string[] => findings.map(({ code }) => code);

describe('constantMass', () => {
  it.each([
    [
      'overnight and an hour more',
      [
        [15, 431.9],
        [16, 431.7],
      ],
      102.3,
      true,
      [],
    ],
    [
      'still losing',
      [
        [14, 433],
        [16, 431.7],
      ],
      102.3,
      false,
      ['mass-not-constant'],
    ],
    [
      'constant by its container only',
      [
        [15, 1000.5],
        [17, 1000],
      ],
      900,
      false,
      ['mass-not-constant'],
    ],
    [
      'weighed again after ten minutes',
      [
        [15, 431.75],
        [15.15, 431.7],
      ],
      102.3,
      false,
      ['mass-not-constant'],
    ],
    [
      'weighed hot, then cold',
      [
        [15, 431],
        [17, 431.7],
      ],
      102.3,
      false,
      ['mass-gained-in-drying'],
    ],
    [
      'a gain within the limit',
      [
        [15, 431.6],
        [17, 431.7],
      ],
      102.3,
      true,
      [],
    ],
    [
      'small and soon dry',
      [
        [3, 120.05],
        [4.5, 120],
      ],
      0,
      true,
      ['drying-time-short'],
    ],
  ] as const)('judges %s', (_, weighings, tare, constant, expected) => {
    const verdict = course(weighings, tare);
    expect(verdict.constant).toBe(constant);
    expect(codes(verdict)).toEqual(expected);
  });

  it('knows the longer time of the other rule', () => {
    const weighings = [
      [13, 120.05],
      [14, 120],
    ] as const;
    expect(codes(course(weighings))).toEqual([]);
    expect(codes(course(weighings, 0, 'ISO 17892-1'))).toEqual(['drying-time-short']);
  });

  it('does not care for the unit of mass, and looks at the last two weighings', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 5, noNaN: true }), fc.double({ min: -0.01, max: 0.01, noNaN: true }), (dry, share) => {
        const verdicts = [kilograms, pounds].map((unit) =>
          constantMass({
            weighings: [
              { ovenTime: hours(1), dryMass: unit(2 * dry) },
              { ovenTime: hours(15), dryMass: unit(dry * (1 + share)) },
              { ovenTime: hours(17), dryMass: unit(dry) },
            ],
          }),
        );
        for (const { lostShare } of verdicts) expect(lostShare).toBeCloseTo(share, 12);
      }),
    );
  });

  it('refuses bad input, times out of order and a container that outweighs all', () => {
    refuses<DryingCourse>(constantMass, dryingCourseShape, {
      weighings: [
        { ovenTime: hours(14), dryMass: grams(431.9) },
        { ovenTime: hours(16), dryMass: grams(431.7) },
      ],
      tareMass: grams(102.3),
      dryingRule: 'ISO 17892-1',
    });
    expect(() =>
      course([
        [16, 431],
        [14, 432],
      ]),
    ).toThrow('in order of time');
    expect(() =>
      course(
        [
          [14, 432],
          [16, 431],
        ],
        431.5,
      ),
    ).toThrow('weighings.1.dryMass');
  });
});
