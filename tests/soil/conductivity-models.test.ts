import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ballandArpConductivity,
  campbellConductivity,
  coteKonradConductivity,
  ewenThomasConductivity,
  handbookConductivity,
  johansenConductivity,
  kerstenConductivity,
  lu2014Conductivity,
  luConductivity,
  peatConductivity,
  solidsConductivity,
  type BallandArpSoil,
  type CampbellSoil,
  type CoteKonradClass,
  type CoteKonradSoil,
  type EwenThomasSoil,
  type FreezableSoil,
  type Lu2014Soil,
  type LuSoil,
} from '../../src/soil/index.js';
import {
  btuInchPerHourSquareFootFahrenheit,
  dryBasisPercent,
  fraction,
  kilogramsPerCubicMetre,
  massFraction,
  poundsPerCubicFoot,
  ratio,
  volumeFraction,
  volumetricFraction,
  wattsPerMetreKelvin,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** A mineral soil that every model takes: porosity 0.2 to 0.6, sand and clay that leave room for silt. */
interface MineralSoil {
  readonly dryDensity: number;
  readonly sand: number;
  readonly clay: number;
  readonly quartz: number;
}
const arbitraryMineral: fc.Arbitrary<MineralSoil> = fc.record({
  dryDensity: between(1070, 2100),
  sand: between(0, 0.9),
  clay: between(0.02, 0.1),
  quartz: between(0, 1),
});
type Of = (soil: MineralSoil, saturation: number) => number;

const packed = ({ dryDensity }: MineralSoil, saturation: number) =>
  ({ dryDensity: kilogramsPerCubicMetre(dryDensity), saturation: ratio(Math.min(1, saturation)) }) as const;
const composed = ({ sand, quartz }: MineralSoil) => ({ quartzFraction: fraction(quartz), grain: sand >= 0.4 ? 'coarse' : 'fine' }) as const;
const solidOf = ({ quartz }: MineralSoil): BallandArpSoil['solid'] => solidsConductivity({ quartzFraction: fraction(quartz) });

const CLASSES = ['gravel or coarse sand', 'medium or fine sand', 'silt or clay'] as const;
const cote =
  (kind: CoteKonradClass, frozen: boolean): Of =>
  (soil, saturation) =>
    coteKonradConductivity({ ...packed(soil, saturation), solid: solidOf(soil), soil: kind, frozen }).conductivity;
const balland =
  (frozen: boolean): Of =>
  (soil, saturation) =>
    ballandArpConductivity({ ...packed(soil, saturation), solid: solidOf(soil), sandShare: volumeFraction(soil.sand), frozen }).conductivity;

const MODELS: readonly (readonly [name: string, of: Of])[] = [
  ['Johansen', (soil, saturation) => johansenConductivity({ ...packed(soil, saturation), ...composed(soil) }).conductivity],
  ['Johansen, frozen', (soil, saturation) => johansenConductivity({ ...packed(soil, saturation), ...composed(soil), frozen: true }).conductivity],
  ...CLASSES.flatMap((kind) => [
    [`Côté and Konrad, ${kind}`, cote(kind, false)] as const,
    [`Côté and Konrad, ${kind}, frozen`, cote(kind, true)] as const,
  ]),
  ['Lu 2007', (soil, saturation) => luConductivity({ ...packed(soil, saturation), ...composed(soil) }).conductivity],
  [
    'Lu 2014',
    (soil, saturation) =>
      lu2014Conductivity({ ...packed(soil, saturation), sand: massFraction(soil.sand), clay: massFraction(soil.clay) }).conductivity,
  ],
  ['Balland and Arp', balland(false)],
  ['Balland and Arp, frozen', balland(true)],
  ['Campbell', (soil, saturation) => campbellConductivity({ ...packed(soil, saturation), clay: massFraction(soil.clay) }).conductivity],
  [
    'Ewen and Thomas',
    (soil, saturation) => ewenThomasConductivity({ ...packed(soil, saturation), quartzFraction: fraction(soil.quartz) }).conductivity,
  ],
];

describe.each(MODELS)('conductivity after %s', (_, of) => {
  it('never falls with water', () => {
    fc.assert(
      fc.property(arbitraryMineral, between(0, 1), between(0, 1), (soil, saturation, less) => {
        const wet = of(soil, saturation);
        expect(wet).toBeGreaterThan(0);
        expect(wet).toBeGreaterThanOrEqual(of(soil, less * saturation) - 1e-12);
      }),
    );
  });

  it('rises with density where the water in the volume stays', () => {
    fc.assert(
      fc.property(arbitraryMineral, between(0, 0.99), between(1.001, 1.1), (soil, fullness, denser) => {
        const dense = { ...soil, dryDensity: soil.dryDensity * denser };
        const pores = (dryDensity: number): number => 1 - dryDensity / 2650;
        fc.pre(pores(dense.dryDensity) > 0.2);
        const water = fullness * pores(dense.dryDensity);
        expect(of(dense, water / pores(dense.dryDensity))).toBeGreaterThan(of(soil, water / pores(soil.dryDensity)));
      }),
    );
  });
});

describe('the saturated end', () => {
  it('is met with full pores: exactly, or as nearly as the author’s Kersten number comes to 1', () => {
    fc.assert(
      fc.property(arbitraryMineral, fc.constantFrom(...CLASSES), fc.boolean(), (soil, kind, frozen) => {
        const full = packed(soil, 1);
        const ends = [
          [johansenConductivity({ ...full, ...composed(soil), frozen }), 1e-12],
          [coteKonradConductivity({ ...full, soil: kind, solid: solidOf(soil), frozen }), 1e-12],
          [luConductivity({ ...full, ...composed(soil) }), 1e-12],
          [ballandArpConductivity({ ...full, solid: solidOf(soil), frozen }), 1e-7],
          [ewenThomasConductivity({ ...full, quartzFraction: fraction(soil.quartz) }), 1.4e-4],
        ] as const;
        for (const [{ conductivity, saturated, dry }, off] of ends) {
          expect(Math.abs(conductivity - saturated)).toBeLessThanOrEqual(off * (saturated - dry) + 1e-12);
        }
      }),
    );
  });

  it('is the same frozen and unfrozen where no water freezes, and rises as water turns to ice', () => {
    fc.assert(
      fc.property(arbitraryMineral, fc.constantFrom(...CLASSES), between(0, 1), (soil, kind, liquidShare) => {
        const full = packed(soil, 1);
        const porosity = 1 - soil.dryDensity / 2650;
        const forms: readonly ((given: Partial<FreezableSoil>) => number)[] = [
          (given) => johansenConductivity({ ...full, ...composed(soil), ...given }).conductivity,
          (given) => coteKonradConductivity({ ...full, soil: kind, solid: solidOf(soil), ...given }).conductivity,
          (given) => ballandArpConductivity({ ...full, solid: solidOf(soil), ...given }).conductivity,
        ];
        for (const form of forms) {
          const unfrozen = form({});
          expect(form({ frozen: true, unfrozenWater: volumetricFraction(porosity) }) / unfrozen).toBeCloseTo(1, 6);
          expect(form({ frozen: true, unfrozenWater: volumetricFraction(liquidShare * porosity) })).toBeGreaterThanOrEqual(unfrozen * (1 - 1e-6));
        }
      }),
    );
  });

  it('is all that the two forms share: half full, they part by a Kersten number of 0.29 though no water froze', () => {
    const sand = { dryDensity: kilogramsPerCubicMetre(1590), saturation: ratio(0.5), soil: 'medium or fine sand' } as const;
    const frozen = coteKonradConductivity({ ...sand, frozen: true, unfrozenWater: volumetricFraction(0.2) });
    expect(coteKonradConductivity(sand).kerstenNumber - frozen.kerstenNumber).toBeCloseTo(0.293, 3);
  });
});

describe('dry soil', () => {
  it('is the dry end in every model that has one', () => {
    fc.assert(
      fc.property(arbitraryMineral, (soil) => {
        const none = packed(soil, 0);
        const results = [
          coteKonradConductivity({ ...none, soil: 'silt or clay' }),
          luConductivity({ ...none, ...composed(soil) }),
          lu2014Conductivity({ ...none, sand: massFraction(soil.sand), clay: massFraction(soil.clay) }),
          ballandArpConductivity({ ...none, solid: solidOf(soil) }),
          campbellConductivity({ ...none, clay: massFraction(soil.clay) }),
          ewenThomasConductivity({ ...none, quartzFraction: fraction(soil.quartz) }),
        ];
        for (const { conductivity, dry } of results) expect(conductivity).toBeCloseTo(dry, 12);
      }),
    );
  });
});

describe('Kersten’s equations', () => {
  /** The equations as they were published: w in per cent, density in lb/ft³, result in Btu·in/(h·ft²·°F). */
  const published = (soil: 'sandy' | 'silt or clay', frozen: boolean, w: number, density: number): number => {
    if (!frozen) return (soil === 'sandy' ? 0.7 * Math.log10(w) + 0.4 : 0.9 * Math.log10(w) - 0.2) * 10 ** (0.01 * density);
    return soil === 'sandy'
      ? 0.076 * 10 ** (0.013 * density) + 0.032 * 10 ** (0.0146 * density) * w
      : 0.01 * 10 ** (0.022 * density) + 0.085 * 10 ** (0.008 * density) * w;
  };

  it('give of one sample the same in SI and in their published inch-pound form, to 0.2 % for the rounding of the SI coefficients', () => {
    fc.assert(
      fc.property(fc.constantFrom('sandy', 'silt or clay'), fc.boolean(), between(2.5, 40), between(60, 130), (soil, frozen, w, density) => {
        const { conductivity } = kerstenConductivity({
          dryDensity: poundsPerCubicFoot(density),
          moisture: { basis: 'dry', value: dryBasisPercent(w) },
          soil,
          frozen,
        });
        expect(Math.abs(btuInchPerHourSquareFootFahrenheit.of(conductivity) / published(soil, frozen, w, density) - 1)).toBeLessThan(0.002);
      }),
    );
  });
});

describe('what the equations were not made for', () => {
  const loose = { dryDensity: kilogramsPerCubicMetre(900), saturation: ratio(0.5) };
  const tight = { dryDensity: kilogramsPerCubicMetre(2200), saturation: ratio(0.5) };
  const fine = { quartzFraction: fraction(0.3), grain: 'fine' } as const;
  const grains = { sand: massFraction(0.3), clay: massFraction(0.2) };

  it('is told by a finding where the line of dry soil is only drawn further', () => {
    for (const soil of [loose, tight]) {
      expect(luConductivity({ ...soil, ...fine }).findings).toMatchObject([{ code: 'porosity-outside-model', values: { model: 'lu-2007' } }]);
      expect(lu2014Conductivity({ ...soil, ...grains }).findings).toMatchObject([{ code: 'porosity-outside-model', values: { model: 'lu-2014' } }]);
    }
    const usual = { dryDensity: kilogramsPerCubicMetre(1500), saturation: ratio(0.5) };
    expect([luConductivity({ ...usual, ...fine }), lu2014Conductivity({ ...usual, ...grains })].flatMap(({ findings }) => findings)).toEqual([]);
  });

  it('is refused where that line has come down to nothing', () => {
    const fluff = { dryDensity: kilogramsPerCubicMetre(230), saturation: ratio(0.5) };
    expect(() => luConductivity({ ...fluff, ...fine })).toThrow('the equation fails in soil so loose');
    expect(() => lu2014Conductivity({ ...fluff, ...grains })).toThrow('the equation fails in soil so loose');
  });

  it('is told where Campbell’s parabola turns', () => {
    const at = (density: number): readonly string[] =>
      campbellConductivity({ dryDensity: kilogramsPerCubicMetre(density), saturation: ratio(0.5), clay: massFraction(0.2) }).findings.map(
        ({ code }) => code,
      );
    expect(at(649)).toEqual(['density-outside-model']);
    expect(at(650)).toEqual([]);
  });
});

describe('peatConductivity', () => {
  const peat = { dryDensity: kilogramsPerCubicMetre(150), saturation: ratio(1) };

  it('says that measured peat conducts less, by no more than it says', () => {
    const measured = handbookConductivity({ material: 'peat', state: 'saturated' }).values.filter(({ source }) => source === 'kujala2008');
    const frozen = handbookConductivity({ material: 'peat', state: 'saturated, frozen' }).values.filter(({ source }) => source === 'kujala2008');
    expect([measured.length, frozen.length]).toEqual([1, 1]);
    for (const [values, of] of [
      [measured, peatConductivity(peat)],
      [frozen, peatConductivity({ ...peat, frozen: true })],
    ] as const) {
      for (const value of values.flatMap(({ low = NaN, high = NaN }) => [low, high])) {
        expect(value / of.conductivity).toBeLessThan(0.92);
        expect(value / of.conductivity).toBeGreaterThan(0.74);
      }
      expect(of.findings).toMatchObject([{ code: 'peat-model-reads-high', values: { conductivity: of.conductivity, excess: 0.25 } }]);
    }
  });

  it('is the model of Côté and Konrad with its own numbers, whatever else the record of the soil holds', () => {
    const { conductivity } = coteKonradConductivity({ ...peat, soil: 'fibrous organic' });
    const record = { ...peat, solid: wattsPerMetreKelvin(3), crushed: true };
    expect(peatConductivity(record).conductivity).toBe(conductivity);
  });

  it('refuses bad input', () => {
    refuses<FreezableSoil>(peatConductivity, freezable, {
      ...peat,
      particleDensity: kilogramsPerCubicMetre(1500),
      frozen: true,
      unfrozenWater: volumetricFraction(0.05),
    });
  });
});

const packedShape = { dryDensity: 'density', saturation: 'ratio', particleDensity: { optional: 'density' } } as const;
const freezable: Shape<FreezableSoil> = { ...packedShape, frozen: { optional: 'flag' }, unfrozenWater: { optional: 'volumetric water' } };
const whole = { dryDensity: kilogramsPerCubicMetre(1500), saturation: ratio(0.6), particleDensity: kilogramsPerCubicMetre(2680) };
const icy = { ...whole, frozen: true, unfrozenWater: volumetricFraction(0.05) };

describe('the models', () => {
  it('of frozen soil refuse bad input', () => {
    const coteShape: Shape<CoteKonradSoil> = {
      ...freezable,
      soil: [...CLASSES, 'fibrous organic'],
      solid: { optional: 'conductivity' },
      crushed: { optional: 'flag' },
    };
    refuses<CoteKonradSoil>(coteKonradConductivity, coteShape, {
      ...icy,
      soil: 'gravel or coarse sand',
      solid: wattsPerMetreKelvin(3),
      crushed: true,
    });
    const ballandShape: Shape<BallandArpSoil> = {
      ...freezable,
      solid: 'conductivity',
      organicShare: { optional: 'volume fraction' },
      sandShare: { optional: 'volume fraction' },
      gravelShare: { optional: 'volume fraction' },
    };
    refuses<BallandArpSoil>(ballandArpConductivity, ballandShape, {
      ...icy,
      solid: wattsPerMetreKelvin(3),
      organicShare: volumeFraction(0.1),
      sandShare: volumeFraction(0.4),
      gravelShare: volumeFraction(0.2),
    });
  });

  it('of unfrozen soil refuse bad input', () => {
    const quartz = { quartzFraction: 'fraction', organicShare: { optional: 'volume fraction' } } as const;
    const solids = { quartzFraction: fraction(0.3), organicShare: volumeFraction(0.05) };
    const luShape: Shape<LuSoil> = { ...packedShape, ...quartz, grain: ['coarse', 'fine'] };
    refuses<LuSoil>(luConductivity, luShape, { ...whole, ...solids, grain: 'fine' });
    const ewenShape: Shape<EwenThomasSoil> = { ...packedShape, ...quartz };
    refuses<EwenThomasSoil>(ewenThomasConductivity, ewenShape, { ...whole, ...solids });
    const lu2014Shape: Shape<Lu2014Soil> = { ...packedShape, sand: 'mass fraction', clay: 'mass fraction' };
    refuses<Lu2014Soil>(lu2014Conductivity, lu2014Shape, { ...whole, sand: massFraction(0.3), clay: massFraction(0.2) });
    const campbellShape: Shape<CampbellSoil> = { ...packedShape, clay: 'mass fraction' };
    refuses<CampbellSoil>(campbellConductivity, campbellShape, { ...whole, clay: massFraction(0.2) });
  });

  it('refuse what is impossible together', () => {
    expect(() => coteKonradConductivity({ ...whole, soil: 'silt or clay', dryDensity: kilogramsPerCubicMetre(2700) })).toThrow('no pores are left');
    expect(() => coteKonradConductivity({ ...icy, soil: 'silt or clay', unfrozenWater: volumetricFraction(0.3) })).toThrow('no more than the water');
    expect(() => coteKonradConductivity({ ...whole, soil: 'fibrous organic', dryDensity: kilogramsPerCubicMetre(150), crushed: true })).toThrow(
      'crushed',
    );
    expect(() => lu2014Conductivity({ ...whole, sand: massFraction(0.7), clay: massFraction(0.4) })).toThrow('shares of one mass');
    expect(() => campbellConductivity({ ...whole, clay: massFraction(0) })).toThrow('no bend');
    const shares = { sandShare: volumeFraction(0.7), gravelShare: volumeFraction(0.4) };
    expect(() => ballandArpConductivity({ ...whole, solid: wattsPerMetreKelvin(3), ...shares })).toThrow('shares of one volume');
  });
});
