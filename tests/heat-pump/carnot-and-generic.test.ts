import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  carnotCop,
  carnotInputShape,
  carnotPointsInputShape,
  type CarnotShareInput,
  carnotShareInputShape,
  fitCarnotShare,
  type GenericPointsInput,
  genericPointsInputShape,
  genericRatingPoints,
  performanceMap,
  ruhnauCop,
  staffellCop,
} from '../../src/heat-pump/index.js';
import { celsius, kelvinDifference, kilowatts, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const at = (cold: number, warm: number, cop: number): CarnotShareInput['points'][number] => ({
  cold: celsius(cold),
  warm: celsius(warm),
  cop: ratio(cop),
});
const input: CarnotShareInput = { temperaturesOf: 'fluids', ratingOrigin: 'maker', points: [at(0, 35, 4.4), at(0, 45, 3.5), at(5, 35, 5)] };
const codes = (result: { readonly findings: readonly { readonly code: string }[] }): readonly string[] => result.findings.map(({ code }) => code);

describe('fitCarnotShare', () => {
  it('gives a unit of constant share back anywhere, with no band', () => {
    fc.assert(
      fc.property(between(0.36, 0.59), between(-5, 5), between(32, 48), (share, cold, warm) => {
        const points = [at(0, 35, share * (308.15 / 35)), at(0, 45, share * (318.15 / 45)), at(5, 45, share * (318.15 / 40))];
        const fit = fitCarnotShare({ ...input, points });
        const { copBand } = fit.copAt({ cold: celsius(cold), warm: celsius(warm) });
        expect(copBand.estimate / (share * carnotCop({ cold: celsius(cold), warm: celsius(warm) }))).toBeCloseTo(1, 10);
        expect(copBand.high - copBand.low).toBeLessThan(1e-6);
        expect(fit.worstError).toBeLessThan(1e-10);
      }),
    );
  });

  it('has mean, deviation, residuals and band as by hand', () => {
    const fit = fitCarnotShare(input);
    const shares = [(4.4 * 35) / 308.15, (3.5 * 45) / 318.15, (5 * 30) / 308.15];
    const mean = shares.reduce((sum, each) => sum + each, 0) / 3;
    const deviation = Math.sqrt(shares.reduce((sum, each) => sum + (each - mean) ** 2, 0) / 2);
    expect(fit.carnotShare).toBeCloseTo(mean, 12);
    expect(fit.shareDeviation).toBeCloseTo(deviation, 12);
    expect(fit.copResiduals[0]).toBeCloseTo(4.4 - (mean * 308.15) / 35, 12);
    const { copBand, findings } = fit.copAt({ cold: celsius(0), warm: celsius(40) });
    // Student's t of two degrees of freedom for 90 % is 2.919986.
    expect(copBand.high - copBand.estimate).toBeCloseTo(2.919986 * deviation * Math.sqrt(4 / 3) * (313.15 / 40), 5);
    expect(copBand.low).toBeLessThan(copBand.estimate);
    expect(copBand.coverage).toBe(0.9);
    expect(findings).toEqual([]);
  });

  it('says where it is led on, and refuses farther out', () => {
    const fit = fitCarnotShare(input);
    expect(codes(fit.copAt({ cold: celsius(0), warm: celsius(55) }))).toEqual(['carnot-share-extrapolated']);
    expect(() => fit.copAt({ cold: celsius(0), warm: celsius(66) })).toThrow('warm');
    expect(() => fit.copAt({ cold: celsius(-21), warm: celsius(35) })).toThrow('cold');
    expect(() => fit.copAt({ cold: celsius(16), warm: celsius(25) })).toThrow('warm');
  });

  it('says a share that units do not have, and refuses one beyond Carnot or all too scattered', () => {
    expect(codes(fitCarnotShare({ ...input, points: [at(0, 35, 2.5), at(0, 45, 2)] }))).toEqual(['carnot-share-unusual']);
    expect(codes(fitCarnotShare({ ...input, temperaturesOf: 'refrigerant', points: [at(0, 35, 5.5), at(0, 45, 4.4)] }))).toEqual([]);
    expect(() => fitCarnotShare({ ...input, points: [at(0, 35, 8.9), at(0, 45, 3.5)] })).toThrow('points.0.cop');
    expect(() => fitCarnotShare({ ...input, points: [at(0, 35, 2), at(0, 45, 6)] })).toThrow('agree well enough');
    expect(() => fitCarnotShare({ ...input, points: [at(0, 9, 4), at(0, 45, 3)] })).toThrow('points.0.warm');
  });

  it('makes rating points at another supply temperature, labelled as estimated', () => {
    const capacityRows = [10, 0].map((t) => ({ enteringFluid: celsius(t), capacity: kilowatts(8 + 0.2 * t) }));
    const derived = fitCarnotShare(input).ratingPoints({ supplyTemperature: celsius(50), capacityRows });
    expect(derived.points.map(({ enteringFluid }) => enteringFluid)).toEqual([0, 10]);
    expect(derived.points[0]?.cop).toBeCloseTo((fitCarnotShare(input).carnotShare * 323.15) / 50, 12);
    expect([derived.ratingOrigin, ...codes(derived)]).toEqual(['estimated', 'rating-points-derived', 'carnot-share-extrapolated']);
    expect(performanceMap({ mode: 'heating', points: derived.points }).at(celsius(5)).cop).toBeGreaterThan(3);
    expect(fitCarnotShare({ ...input, ratingOrigin: 'invented' }).ratingPoints({ supplyTemperature: celsius(45), capacityRows }).ratingOrigin).toBe(
      'invented',
    );
    const refrigerant = fitCarnotShare({ ...input, temperaturesOf: 'refrigerant' });
    expect(() => refrigerant.ratingPoints({ supplyTemperature: celsius(45), capacityRows })).toThrow('temperaturesOf');
  });

  it('refuses bad input by name', () => {
    refuses(fitCarnotShare, carnotShareInputShape, input);
    refuses(fitCarnotShare(input).copAt, carnotInputShape, { cold: celsius(0), warm: celsius(40) });
    const capacityRows = [0, 10].map((t) => ({ enteringFluid: celsius(t), capacity: kilowatts(8) }));
    refuses(fitCarnotShare(input).ratingPoints, carnotPointsInputShape, { supplyTemperature: celsius(45), capacityRows });
  });
});

describe('genericRatingPoints', () => {
  const generic = { capacity: kilowatts(8), ratedEntering: celsius(0), supplyTemperature: celsius(45) };

  it('lies between the two regressions, both as installed, and says what it is', () => {
    fc.assert(
      fc.property(between(30, 60), fc.array(between(0, 1), { minLength: 2, maxLength: 6 }), (supply, places) => {
        const wantedEntering = places.map((place, i) => celsius(supply - 20 - 40 * ((place + i) / places.length)));
        fc.pre(wantedEntering.every((each) => each > -20 && each < 40));
        const told = genericRatingPoints({ ...generic, supplyTemperature: celsius(supply), wantedEntering });
        told.copBands.forEach(({ enteringFluid, copBand }, i) => {
          const both = [staffellCop, ruhnauCop].map((cop) => 0.85 * cop(kelvinDifference(supply - enteringFluid)));
          expect(copBand.low).toBeCloseTo(Math.min(...both), 12);
          expect(copBand.high).toBeCloseTo(Math.max(...both), 12);
          expect(copBand.estimate).toBeCloseTo(((both[0] ?? 0) + (both[1] ?? 0)) / 2, 12);
          expect(told.points[i]?.cop).toBe(copBand.estimate);
        });
        const cops = told.copBands.map(({ copBand }) => copBand.estimate);
        cops.forEach((cop, i) => expect(cop - (cops[i - 1] ?? 0)).toBeGreaterThan(-1e-12));
        expect([told.ratingOrigin, ...codes(told)]).toEqual(['estimated', 'rating-points-generic']);
      }),
    );
  });

  it('disagrees by as much as the chapter found: 15 % at 60 K, under 4 % between 30 and 40 K', () => {
    const apart = (t: number): number => genericRatingPoints({ ...generic, wantedEntering: [celsius(t), celsius(t - 0.5)] }).disagreement;
    expect(apart(-14.5)).toBeGreaterThan(0.12);
    for (const t of [5.5, 10, 14.5]) expect(apart(t)).toBeLessThan(0.04);
  });

  it('has a capacity on the line through the one stated', () => {
    const { points } = genericRatingPoints({ ...generic, capacityRise: ratio(0.03) });
    expect(points.map(({ enteringFluid }) => enteringFluid)).toEqual([-5, 0, 5, 10, 15]);
    [6.8, 8, 9.2, 10.4, 11.6].forEach((each, i) => expect(kilowatts.of(points[i]?.capacity ?? kilowatts(0))).toBeCloseTo(each, 9));
    expect(genericRatingPoints({ ...generic, supplyTemperature: celsius(32) }).points).toHaveLength(4);
  });

  it('refuses lifts that the regressions were not made for, near their turning least of all', () => {
    expect(() => genericRatingPoints({ ...generic, wantedEntering: [celsius(0), celsius(26)] })).toThrow('wantedEntering.1');
    expect(() => genericRatingPoints({ ...generic, supplyTemperature: celsius(65), wantedEntering: [celsius(0), celsius(5)] })).toThrow('20 to 60 K');
    expect(() =>
      genericRatingPoints({ ...generic, ratedEntering: celsius(25), capacityRise: ratio(0.05), wantedEntering: [celsius(0), celsius(20)] }),
    ).toThrow('three tenths');
    expect(() => staffellCop(kelvinDifference(102.2))).toThrow('turns at 102.2 K');
    expect(() => ruhnauCop(kelvinDifference(86.8))).toThrow('turns at 86.8 K');
  });

  it('refuses bad input by name', () => {
    const input: GenericPointsInput = { ...generic, capacityRise: ratio(0.02), wantedEntering: [celsius(0), celsius(10)] };
    refuses(genericRatingPoints, genericPointsInputShape, input);
  });
});
