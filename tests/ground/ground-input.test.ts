import { describe, expect, it } from 'vitest';
import { groundResponse, groundResponseInputShape, type GroundResponseInput, type GroundSurface } from '../../src/ground/index.js';
import { days, diameterMillimetres, type Length, metres, seconds, type Time, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { layoutOf, responseOf, soilOf } from './support.js';

const example: GroundResponseInput = {
  layout: layoutOf(
    [
      [-0.3, 1.5],
      [0.3, 1.5],
    ],
    3,
    3,
  ),
  pipe: { outsideDiameter: diameterMillimetres(32) },
  soil: soilOf(1.5, 6e-7),
  surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(15) },
  selfTerm: 'line',
};

describe('what a ground response refuses', () => {
  const numbersOf = (input: GroundResponseInput): unknown => {
    const response = groundResponse(input);
    return [response, response.riseAfter(days(30)), response.pipeRisesAfter(days(30)), response.trenchRiseAfter(days(1))];
  };

  it('names every impossible field', () => {
    const more: GroundResponseInput[] = [
      { ...example, surface: { type: 'isothermal' }, selfTerm: 'cylinder' },
      { ...example, surface: { type: 'adiabatic' } },
    ];
    refuses(numbersOf, groundResponseInputShape, example, { more });
  });

  it.each([Number.NaN, -1, Infinity, 1e13, '3600'])('refuses %s as a time', (time) => {
    const response = groundResponse(example);
    expect(() => response.riseAfter(time as Time)).toThrow(/time/u);
    expect(() => response.risesAfter([seconds(1), time as Time])).toThrow(/times\.1\.time/u);
    expect(() => response.pipeRisesAfter(time as Time)).toThrow(/time/u);
  });

  it('refuses pipes out of the ground, pipes that overlap and a soil that contradicts itself', () => {
    const of = (change: Partial<GroundResponseInput>) => (): unknown => groundResponse({ ...example, ...change });
    const shallow = { ...example.layout, pipes: [{ x: metres(0), depth: metres(0.01) }], pipesPerTrench: 1 };
    expect(of({ layout: shallow })).toThrow(/layout\.pipes\.0\.depth.*stick out of the ground/u);
    expect(
      of({
        layout: layoutOf([
          [0, 1.5],
          [0.03, 1.5],
        ]),
      }),
    ).toThrow(/layout\.pipes.*overlap/u);
    expect(
      of({
        layout: layoutOf(
          [
            [-1, 1.5],
            [1, 1.5],
          ],
          2,
          2.16,
        ),
        pipe: { outsideDiameter: diameterMillimetres(200) },
      }),
    ).toThrow(/overlap/u);
    expect(of({ layout: { ...example.layout, pipesPerTrench: 3 } })).toThrow(/layout\.pipesPerTrench/u);
    expect(of({ soil: { ...soilOf(1.5, 6e-7), diffusivity: soilOf(1, 7e-7).diffusivity } })).toThrow(
      /soil\.diffusivity.*conductivity over heat capacity/u,
    );
  });
});

describe('what is doubtful about pipes', () => {
  const findingsOf = (
    pipes: readonly (readonly [x: number, depth: number])[],
    trenches: number,
    spacing: number,
    surface: GroundSurface = { type: 'isothermal' },
  ) => responseOf(layoutOf(pipes, trenches, spacing), { radius: 0.0167, conductivity: 1.5, diffusivity: 6e-7, surface }).findings;

  it('is nothing for one pipe, or for two trenches of one pipe 3 m apart', () => {
    expect(findingsOf([[0, 1.5]], 1, 3)).toEqual([]);
    expect(findingsOf([[0, 1.5]], 2, 3)).toEqual([]);
  });

  it('is the distance of pipes nearer than 20 radii', () => {
    const [finding] = findingsOf(
      [
        [0, 1.5],
        [0.2, 1.5],
      ],
      1,
      3,
    );
    expect(finding).toMatchObject({ code: 'pipes-near-for-line-sources', values: { distance: 0.2 as Length } });
  });

  it('is by how much trenches warm each other, as the steady rises say', () => {
    const [finding] = findingsOf([[0, 1.2192]], 10, 0.6);
    const ratio = (trenches: number): number =>
      responseOf(layoutOf([[0, 1.2192]], trenches, 0.6), { radius: 0.0167, conductivity: 1.5, diffusivity: 6e-7 }).steadyRise ?? Number.NaN;
    if (finding?.code !== 'trenches-warm-each-other') throw new Error('no such finding');
    expect([finding.values.trenches, finding.values.trenchSpacing]).toEqual([10, 0.6]);
    expect(finding.values.risesBy).toBeCloseTo(ratio(10) / ratio(1), 12);
    expect(findingsOf([[0, 1.2192]], 10, 0.6, { type: 'adiabatic' })).toEqual([]);
  });
});
