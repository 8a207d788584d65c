import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conductivityClass, contactGap, gappedPipeShape, type GappedPipe } from '../../src/soil/index.js';
import { bandShape, type Band } from '../../src/states/index.js';
import { diameterMillimetres, fraction, pipeMetreKelvinPerWatt, wattsPerMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const band = (low: number, estimate: number, high: number): Band<'conductivity'> => ({
  low: wattsPerMetreKelvin(low),
  estimate: wattsPerMetreKelvin(estimate),
  high: wattsPerMetreKelvin(high),
  coverage: fraction(0.8),
});

describe('conductivityClass', () => {
  it('has its edges in the middle class', () => {
    const of = (k: number): string => conductivityClass(band(k, k, k)).class;
    expect([0.899, 0.9, 1.3, 1.301].map(of)).toEqual(['poor', 'fair', 'fair', 'good']);
  });

  it('comes with its band, and warns of poor ground', () => {
    const found = conductivityClass(band(0.7, 0.85, 1));
    expect(found).toMatchObject({ class: 'poor', lowClass: 'poor', highClass: 'fair', certain: false });
    expect(found.findings).toMatchObject([{ code: 'ground-conductivity-class', level: 'warning', values: { low: 0.7, estimate: 0.85, high: 1 } }]);
    expect(conductivityClass(band(1.4, 1.5, 1.6))).toMatchObject({ certain: true, findings: [{ level: 'note' }] });
  });

  it('refuses bad input by name', () => {
    refuses<Band<'conductivity'>>(conductivityClass, bandShape('conductivity'), band(1, 1.2, 1.5));
    expect(() => conductivityClass(band(1.3, 1.2, 1.5))).toThrow('low');
    expect(() => conductivityClass(band(1, 1.2, 1.1))).toThrow('high');
  });
});

describe('contactGap', () => {
  const ground: GappedPipe = {
    conductivity: band(1, 1.2, 1.5),
    steadyRise: pipeMetreKelvinPerWatt(0.7),
    outsideDiameter: diameterMillimetres(32),
    gap: diameterMillimetres(0.5),
  };

  it('lowers the low end and moves nothing else', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5, noNaN: true }), fc.double({ min: 0.01, max: 5, noNaN: true }), (gap, more) => {
        const narrow = contactGap({ ...ground, gap: diameterMillimetres(gap) });
        const wide = contactGap({ ...ground, gap: diameterMillimetres(gap + more) });
        expect(wide.conductivity).toMatchObject({ estimate: 1.2, high: 1.5, coverage: 0.8 });
        expect(wide.conductivity.low).toBeLessThan(narrow.conductivity.low);
        expect(wide.gapResistance).toBeGreaterThan(narrow.gapResistance);
        expect(narrow.conductivity.low).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
    expect(contactGap({ ...ground, gap: diameterMillimetres(0) }).conductivity.low).toBeCloseTo(1, 12);
  });

  it('of a certain ground is the gap in series with it', () => {
    const { gapResistance, conductivity } = contactGap({ ...ground, conductivity: band(1.2, 1.2, 1.2) });
    expect(conductivity.low).toBeCloseTo((1.2 * 0.7) / (0.7 + gapResistance), 12);
  });

  it('refuses bad input by name', () => {
    refuses(contactGap, gappedPipeShape, ground);
  });
});
