import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HeaveClass, heaveInputShape, type HeaveInput, heaveRisk } from '../../src/operation/index.js';
import { fraction, metres, volumetricFraction } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const CLASSES: readonly HeaveClass[] = ['none', 'slight', 'moderate', 'severe'];
const rank = (input: HeaveInput): number => CLASSES.indexOf(heaveRisk(input).heaveClass);
const silt: HeaveInput = {
  textureClass: 'silt loam',
  waterByVolume: volumetricFraction(0.25),
  frozenRadius: metres(0.2),
  frozenThickness: metres(0.18),
  frozenWater: metres(0.02),
};

describe('heave', () => {
  it('is a matter of soil, water and ice', () => {
    expect(heaveRisk(silt).heaveClass).toBe('severe');
    expect(heaveRisk({ ...silt, textureClass: 'sand' }).heaveClass).toBe('slight');
    expect(heaveRisk({ ...silt, textureClass: 'clay' }).heaveClass).toBe('moderate');
    expect(heaveRisk({ ...silt, finerThan20Micrometres: fraction(0.02) }).heaveClass).toBe('none');
    expect(heaveRisk({ ...silt, waterByVolume: volumetricFraction(0.08) }).heaveClass).toBe('none');
    const none = metres(0);
    expect(heaveRisk({ ...silt, frozenRadius: none, frozenThickness: none, frozenWater: none })).toMatchObject({ heaveClass: 'none', swelling: 0 });
    expect(heaveRisk({ ...silt, frozenThickness: metres(0.03) }).heaveClass).toBe('moderate');
  });

  it('is severe where ice reaches a structure, and said so', () => {
    const reached = heaveRisk({ ...silt, textureClass: 'sand', structureDistance: metres(0.15) });
    expect(reached).toMatchObject({ heaveClass: 'severe', findings: [{ code: 'ice-near-structure', level: 'stop' }] });
    expect(reached.structureClearance).toBeCloseTo(-0.05, 12);
    expect(heaveRisk({ ...silt, structureDistance: metres(1) }).findings).toMatchObject([{ level: 'warning' }]);
    expect(heaveRisk({ ...silt, structureDistance: metres(3) }).findings).toEqual([]);
  });

  it('never falls with more water, thicker ice or a nearer structure', () => {
    const any = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom('sand', 'loam', 'clay', 'silt'),
        any(0, 0.5),
        any(0.001, 0.4),
        any(0, 4),
        any(0, 1),
        (textureClass, water, ice, distance, more) => {
          const base: HeaveInput = {
            textureClass,
            waterByVolume: volumetricFraction(water),
            frozenRadius: metres(ice + 0.016),
            frozenThickness: metres(ice),
            frozenWater: metres(ice / 10),
            structureDistance: metres(distance),
          };
          expect(rank({ ...base, waterByVolume: volumetricFraction(water + more * (1 - water)) })).toBeGreaterThanOrEqual(rank(base));
          expect(rank({ ...base, frozenThickness: metres(ice + more), frozenRadius: metres(ice + more + 0.016) })).toBeGreaterThanOrEqual(rank(base));
          expect(rank({ ...base, structureDistance: metres(distance * more) })).toBeGreaterThanOrEqual(rank(base));
        },
      ),
    );
  });

  it('refuses what cannot be', () => {
    const full: HeaveInput = { ...silt, finerThan20Micrometres: fraction(0.4), structureDistance: metres(3) };
    refuses<HeaveInput>(heaveRisk, heaveInputShape, full);
  });
});
