import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guidelineAreaExtraction, plausibleLength, type AreaGuidelineInput, type PlausibleLengthInput } from '../../src/operation/index.js';
import { feetPerTon, hours, kilowatts, pipeFeet, type Shape, tons, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { coilRule } from '../published/operation.checks.js';

const SOILS = ['dry non-cohesive', 'damp cohesive', 'water-saturated sand or gravel'] as const;
const LAYOUTS = ['straight', 'one-pipe', 'two-pipe', 'four-pipe', 'coil'] as const;
const areaShape: Shape<AreaGuidelineInput> = { soil: SOILS, fullLoadHours: 'time', groundHeat: 'power' };
const lengthShape: Shape<PlausibleLengthInput> = { layout: LAYOUTS, pipe: 'pipe length', nominalCapacity: 'power' };

describe('guidelineAreaExtraction', () => {
  it('falls as the hours rise, keeps its order, and asks for land in proportion to the heat', () => {
    const hour = fc.double({ min: 1, max: 8784, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...SOILS), hour, hour, fc.double({ min: 100, max: 1e5, noNaN: true }), (soil, one, other, heat) => {
        const [few, many] = one < other ? [one, other] : [other, one];
        const fewer = guidelineAreaExtraction({ soil, fullLoadHours: hours(few), groundHeat: watts(heat) });
        const more = guidelineAreaExtraction({ soil, fullLoadHours: hours(many), groundHeat: watts(heat) });
        expect(more.typical).toBeLessThanOrEqual(fewer.typical);
        expect(fewer.low).toBeLessThanOrEqual(fewer.typical);
        expect(fewer.typical).toBeLessThanOrEqual(fewer.high);
        expect(fewer.typicalArea * fewer.typical).toBeCloseTo(heat, 6);
        expect(fewer.smallestArea).toBeLessThanOrEqual(fewer.largestArea);
        expect((0.8 * fewer.pipe) / fewer.typicalArea).toBeCloseTo(1, 9);
      }),
    );
  });

  it('says when the hours lie outside what it covers, and then reads the nearer end', () => {
    const at = (time: number): ReturnType<typeof guidelineAreaExtraction> =>
      guidelineAreaExtraction({ soil: 'damp cohesive', fullLoadHours: hours(time), groundHeat: kilowatts(7) });
    expect(at(2100).findings).toEqual([]);
    expect(at(2100).typical).toBe(22.5);
    expect([at(1400).typical, at(1400).findings[0]?.code]).toEqual([25, 'guideline-hours-outside']);
    expect([at(3000).typical, at(3000).findings[0]?.code]).toEqual([20, 'guideline-hours-outside']);
  });

  it('comes to 32 W per metre of pipe in saturated sand, 40 W/m² at 0.8 m', () => {
    const { pipe } = guidelineAreaExtraction({ soil: 'water-saturated sand or gravel', fullLoadHours: hours(1800), groundHeat: watts(3200) });
    expect(3200 / pipe).toBeCloseTo(32, 9);
  });

  it('refuses bad input by name', () => {
    refuses(guidelineAreaExtraction, areaShape, { soil: 'damp cohesive', fullLoadHours: hours(1800), groundHeat: kilowatts(7) });
  });
});

describe('plausibleLength', () => {
  it('finds nothing inside the band and says so outside, at every layout', () => {
    for (const layout of LAYOUTS) {
      const at = (perTon: number): ReturnType<typeof plausibleLength> =>
        plausibleLength({ layout, pipe: pipeFeet(3 * perTon), nominalCapacity: tons(3) });
      const [low, high] = [feetPerTon.of(at(500).low), feetPerTon.of(at(500).high)];
      expect(at((low + high) / 2).findings).toEqual([]);
      expect(at(low * 0.99).findings[0]?.code).toBe('outside-plausible-band');
      expect(at(high * 1.01).findings[0]?.code).toBe('outside-plausible-band');
      expect(pipeFeet.of(at(500).shortest)).toBeCloseTo(3 * low, 6);
    }
  });

  it('differs by 0.07 from the metric upper end of the coil rule, which prints twice its rounded lower end', () => {
    expect(coilRule('high') - 86.6).toBeCloseTo(0.0684, 4);
  });

  it('refuses bad input by name', () => {
    refuses(plausibleLength, lengthShape, { layout: 'coil', pipe: pipeFeet(2000), nominalCapacity: tons(3) });
  });
});
