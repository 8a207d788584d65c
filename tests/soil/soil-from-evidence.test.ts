import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ERROR_CAUSES,
  soilEvidenceShape,
  soilFromEvidence,
  soilThermalProperties,
  TEXTURE_CLASSES,
  typicalSoil,
  type EvidencePropertiesResult,
  type SampleEvidence,
  type SoilEvidence,
} from '../../src/soil/index.js';
import { bestRead } from '../../src/soil/best-read.js';
import { TEXTURE_MIDDLES } from '../../src/soil/texture-middles.data.js';
import {
  celsius,
  dryBasisFraction,
  dryBasisPercent,
  fraction,
  kilogramsPerCubicMetre,
  massFraction,
  megajoulesPerCubicMetreKelvin,
  metres,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { everyNumberFinite } from '../support/finite.js';
import { arbitrarySoil, sampled } from './arbitrary.js';
import { everyEvidence } from './evidence-examples.js';

const loam: SampleEvidence = {
  from: 'sample',
  texture: { from: 'laboratory', class: 'silt loam' },
  moisture: { basis: 'dry', value: dryBasisPercent(20) },
  density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1420) },
};
const codes = (evidence: SoilEvidence): readonly string[] => soilFromEvidence(evidence).findings.map(({ code }) => code);
const width = ({ conductivity: { low, high } }: Pick<EvidencePropertiesResult, 'conductivity'>): number => Math.log(high / low);

describe('soilFromEvidence of a sample', () => {
  it('is finite, lies in its bands, and tells causes that add up', () => {
    fc.assert(
      fc.property(arbitrarySoil, fc.constantFrom('core', 'disturbed', 'word'), (soil, from) => {
        const evidence = sampled(soil);
        const dryDensity = kilogramsPerCubicMetre(soil.dryDensity);
        const properties = soilFromEvidence({
          ...evidence,
          ...(from === 'word' ? { moisture: { basis: 'word', word: 'moist' }, texture: { from: 'feel', class: soil.texture } } : {}),
          density: from === 'core' ? { from, dryDensity } : { from: 'disturbed', dryDensity },
        });
        expect(everyNumberFinite(properties)).toBe(true);
        for (const { low, estimate, high, coverage } of [properties.conductivity, properties.heatCapacity, properties.diffusivity]) {
          expect(low).toBeLessThan(estimate);
          expect(estimate).toBeLessThan(high);
          expect(coverage).toBe(0.8);
        }
        expect(properties.errors.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
        const shares = properties.errors.map(({ share }) => share);
        expect(shares).toEqual([...shares].sort((a, b) => b - a));
        const { conductivity, heatCapacity, diffusivity } = properties.thermal;
        expect(diffusivity * heatCapacity).toBeCloseTo(conductivity, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('conducts no worse with more water or density', () => {
    fc.assert(
      fc.property(arbitrarySoil, fc.double({ min: 0, max: 1, noNaN: true }), (soil, less) => {
        const at = (change: Partial<typeof soil>): number => soilFromEvidence(sampled({ ...soil, ...change })).thermal.conductivity;
        const here = at({}) * (1 + 1e-9);
        expect(at({ water: soil.water * less })).toBeLessThanOrEqual(here);
        expect(at({ dryDensity: soil.dryDensity * 0.97 })).toBeLessThanOrEqual(here);
      }),
      { numRuns: 60 },
    );
  });

  it('reckons with what soilThermalProperties reckons with, but for the model', () => {
    const plan = soilThermalProperties({
      ...loam,
      from: 'sample',
      texture: { from: 'laboratory', class: 'silt loam' },
      moisture: { basis: 'dry', value: dryBasisPercent(20) },
    });
    const { sample, heatCapacity, thermal } = soilFromEvidence(loam);
    expect(sample?.phases).toEqual(plan.phases);
    expect(heatCapacity.estimate).toBeCloseTo(plan.thermal.heatCapacity, 6);
    expect(sample?.models.find(({ model }) => model === 'johansen')?.conductivity).toBeCloseTo(plan.thermal.conductivity, 12);
    expect(thermal.conductivity / plan.thermal.conductivity).toBeCloseTo(1.076, 3);
  });

  it('adds errors as squares where texture and water are measured', () => {
    const { errors, conductivity } = soilFromEvidence(loam);
    const total = Math.hypot(...errors.map(({ downward }) => downward));
    expect(Math.log(conductivity.estimate / conductivity.low) / total).toBeCloseTo(1.2816, 4);
    expect(errors.every(({ cause }) => ERROR_CAUSES.includes(cause))).toBe(true);
  });

  it('keeps water liquid in frozen clay and frees the heat of the rest', () => {
    const frozenOf = (texture: 'sand' | 'clay'): NonNullable<EvidencePropertiesResult['sample']>['frozenProperties'] | undefined =>
      soilFromEvidence({
        ...loam,
        texture: { from: 'laboratory', class: texture },
        density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1450) },
        frozenAt: celsius(-2),
      }).sample?.frozenProperties;
    const [sand, clay] = [frozenOf('sand'), frozenOf('clay')];
    expect(sand?.unfrozenMoisture).toBeLessThan(0.02);
    expect(clay?.unfrozenMoisture).toBeGreaterThan(0.08);
    expect(sand?.latentHeat).toBeCloseTo(1450 * (0.2 - (sand?.unfrozenMoisture ?? 0)) * 334e3, 0);
    expect(clay?.thermal.heatCapacity).toBeGreaterThan(sand?.thermal.heatCapacity ?? NaN);
    expect(sand?.models.map(({ model }) => model)).toEqual(['johansen', 'kersten', 'cote-konrad', 'balland-arp']);
  });

  it.each<[string, SampleEvidence, string, string]>([
    ['fine earth', loam, 'lu-2007', 'silt loam'],
    ['gravelly soil', { ...loam, gravel: massFraction(0.3) }, 'johansen', 'silt loam'],
    ['gravel', { ...loam, gravel: massFraction(0.7) }, 'cote-konrad', 'silt loam'],
    [
      'organic soil',
      { ...loam, organicMatter: massFraction(0.4), density: { from: 'core', dryDensity: kilogramsPerCubicMetre(600) } },
      'balland-arp',
      'silt loam',
    ],
    [
      'peat',
      {
        ...loam,
        texture: { from: 'unknown' },
        organicMatter: massFraction(0.9),
        moisture: { basis: 'dry', value: dryBasisFraction(5) },
        density: { from: 'core', dryDensity: kilogramsPerCubicMetre(150) },
      },
      'cote-konrad',
      'loam',
    ],
  ])('rests on the first model that applies to %s', (_, evidence, model, texture) => {
    expect(soilFromEvidence(evidence).sample).toMatchObject({ model, texture });
  });

  it('gives peat in the range that was measured, and its band wider than that of soil', () => {
    const { conductivity, errors } = soilFromEvidence({
      ...loam,
      texture: { from: 'unknown' },
      organicMatter: massFraction(0.9),
      moisture: { basis: 'dry', value: dryBasisFraction(5.8) },
      density: { from: 'core', dryDensity: kilogramsPerCubicMetre(150) },
    });
    expect(conductivity.low).toBeLessThan(0.41);
    expect(conductivity.high).toBeGreaterThan(0.5);
    expect(errors[0]?.cause).toBe('model');
    expect(errors.some(({ cause }) => cause === 'texture')).toBe(false);
  });

  it('refuses to guess the density of organic soil from a texture', () => {
    const bag = { ...loam, organicMatter: massFraction(0.5), density: { from: 'texture' } } as const;
    expect(() => soilFromEvidence(bag)).toThrow(/^density: .*for peat by the word, take the handbook/u);
  });
});

describe('evidence that cannot be of one soil', () => {
  const sand: SampleEvidence = {
    from: 'sample',
    texture: { from: 'feel', class: 'sand' },
    moisture: { basis: 'dry', value: dryBasisPercent(1) },
    density: { from: 'texture' },
  };

  it('is told where the word goes against the weighed water, and the poorer of both counts', () => {
    const both = soilFromEvidence({ ...sand, moistureWord: 'wet' });
    expect(both.findings[0]).toMatchObject({ code: 'moisture-against-word', level: 'warning', values: { moistureWord: 'wet', moisture: 0.01 } });
    expect(both.conductivity).toEqual(soilFromEvidence(sand).conductivity);
    const drier = soilFromEvidence({ ...sand, moisture: { basis: 'dry', value: dryBasisPercent(22) }, moistureWord: 'dry' });
    expect(drier.findings[0]).toMatchObject({ code: 'moisture-against-word' });
    expect(drier.conductivity).toEqual(soilFromEvidence({ ...sand, moisture: { basis: 'word', word: 'dry' } }).conductivity);
    expect(codes({ ...sand, moistureWord: 'dry' })).not.toContain('moisture-against-word');
  });

  it('is refused where gravel leaves no fine earth', () => {
    expect(() => soilFromEvidence({ ...loam, gravel: massFraction(1) })).toThrow(/^gravel: 1 .*take the handbook/u);
  });

  it('is told where a conductivity is that of rock, read with a probe, in a laboratory or for a plan', () => {
    const conductivity = wattsPerMetreKelvin(4.5);
    expect(codes({ from: 'laboratory', conductivity })).toContain('measured-conductivity-high');
    expect(codes({ from: 'probe', readings: 3, conductivity })).toContain('measured-conductivity-high');
    expect(soilThermalProperties({ from: 'laboratory', conductivity }).findings[0]).toMatchObject({
      code: 'measured-conductivity-high',
      level: 'warning',
    });
    expect(codes({ from: 'laboratory', conductivity: wattsPerMetreKelvin(4) })).not.toContain('measured-conductivity-high');
  });

  it('does not hold the density of organic soil against a mineral texture, by either way', () => {
    const organic = {
      ...loam,
      texture: { from: 'laboratory', class: 'silt loam' },
      density: { from: 'core', dryDensity: kilogramsPerCubicMetre(700) },
    } as const;
    const told = (organicMatter: number): readonly string[] =>
      soilThermalProperties({
        ...organic,
        moisture: { basis: 'dry', value: dryBasisPercent(40) },
        organicMatter: massFraction(organicMatter),
      }).findings.map(({ code }) => code);
    expect(told(0.1)).toContain('density-outside-texture');
    expect(told(0.4)).not.toContain('density-outside-texture');
    expect(codes({ ...organic, organicMatter: massFraction(0.4) })).not.toContain('density-outside-texture');
  });
});

describe('the same soil known better in one respect', () => {
  /** From the worst to the best that may be known of each part, all of it saying the same of the soil. */
  const textures = (texture: (typeof TEXTURE_CLASSES)[number]): readonly SampleEvidence['texture'][] => {
    const { sand, clay } = TEXTURE_MIDDLES[texture];
    return [
      { from: 'feel', class: texture },
      { from: 'feel', class: texture, observer: 'professional' },
      { from: 'laboratory', class: texture },
      { from: 'fractions', sand: massFraction(sand), clay: massFraction(clay) },
    ];
  };
  const middle = (texture: (typeof TEXTURE_CLASSES)[number]): number => typicalSoil(texture).dryDensity;
  const densities = (texture: (typeof TEXTURE_CLASSES)[number]): readonly SampleEvidence['density'][] => [
    { from: 'texture' },
    { from: 'core', dryDensity: kilogramsPerCubicMetre(middle(texture)) },
    { from: 'core', dryDensity: kilogramsPerCubicMetre(middle(texture)), standardError: fraction(0.01) },
  ];
  const WORDS = { dry: 0.1, moist: 0.525, wet: 0.925 } as const;
  const water = (
    texture: (typeof TEXTURE_CLASSES)[number],
    word: keyof typeof WORDS,
  ): readonly Pick<SampleEvidence, 'moisture' | 'moistureError' | 'moistureWord'>[] => {
    const value = dryBasisFraction(WORDS[word] * (1000 / middle(texture) - 1000 / 2650));
    return [
      { moisture: { basis: 'word', word } },
      { moisture: { basis: 'dry', value }, moistureWord: word, moistureError: dryBasisFraction(Math.min(0.01, 0.2 * value)) },
      { moisture: { basis: 'dry', value }, moistureWord: word, moistureError: dryBasisFraction(Math.min(0.002, 0.1 * value)) },
    ];
  };
  const lattice = TEXTURE_CLASSES.flatMap((texture) => (['dry', 'moist', 'wet'] as const).map((word) => [texture, word] as const));

  it.each(lattice)('never has a wider band: %s, %s', (texture, word) => {
    const [byTexture, byDensity, byWater] = [textures(texture), densities(texture), water(texture, word)];
    const known = new Map<string, number>();
    const at = (t: number, d: number, w: number, q: number): number => {
      const key = [t, d, w, q].join();
      const make = (): number =>
        width(
          bestRead({
            ...{ from: 'sample', texture: byTexture[t] ?? { from: 'unknown' }, density: byDensity[d] ?? { from: 'texture' } },
            ...(byWater[w] ?? { moisture: { basis: 'word', word } }),
            ...(q === 0 ? {} : { quartzFraction: typicalSoil(texture).quartzFraction, extent: 'sample' }),
          }).banded,
        );
      const found = known.get(key) ?? make();
      known.set(key, found);
      return found;
    };
    const wider: string[] = [];
    const no = (worse: number, better: number, what: string): void => {
      if (better > worse * (1 + 1e-5)) wider.push(`${what}: ${worse.toFixed(4)} -> ${better.toFixed(4)}`);
    };
    for (let t = 0; t < byTexture.length; t++)
      for (let d = 0; d < byDensity.length; d++)
        for (let w = 0; w < byWater.length; w++)
          for (let q = 0; q < 2; q++) {
            const here = at(t, d, w, q);
            const place = [t, d, w, q].join();
            if (t + 1 < byTexture.length) no(here, at(t + 1, d, w, q), `texture at ${place}`);
            if (d + 1 < byDensity.length) no(here, at(t, d + 1, w, q), `density at ${place}`);
            if (w + 1 < byWater.length) no(here, at(t, d, w + 1, q), `water at ${place}`);
            if (q === 0) no(here, at(t, d, w, q + 1), `quartz or extent at ${place}`);
          }
    expect(wider).toEqual([]);
  });

  it('is not made to look better by a jar than by a laboratory, nor by nothing than by a hand', () => {
    const by = (texture: SampleEvidence['texture']): number =>
      soilFromEvidence({ ...loam, texture }).errors.find(({ cause }) => cause === 'texture')?.share ?? 0;
    const jar = { from: 'jar', sandThickness: metres(0.04), siltThickness: metres(0.04), clayThickness: metres(0.02) } as const;
    expect(by(jar)).toBeGreaterThan(by({ from: 'laboratory', class: 'loam' }));
    expect(by({ from: 'feel', class: 'silt loam' })).toBeGreaterThan(by({ from: 'feel', class: 'silt loam', observer: 'professional' }));
    const wide = (texture: SampleEvidence['texture']): number =>
      width(soilFromEvidence({ ...loam, density: { from: 'texture' }, moisture: { basis: 'word', word: 'moist' }, texture }));
    expect(wide({ from: 'unknown' })).toBeGreaterThan(wide({ from: 'feel', class: 'loam' }));
  });
});

describe('soilFromEvidence of what was measured or read', () => {
  const probe = { from: 'probe', conductivity: wattsPerMetreKelvin(1.4), readings: 12 } as const;

  it('narrows with more readings of a probe down to the error that they share', () => {
    const [one, many, endless] = [1, 12, 1000].map((readings) => width(soilFromEvidence({ ...probe, readings })) / (2 * 1.2815515655));
    expect(one).toBeCloseTo(Math.hypot(0.15, 0.1), 6);
    expect(many).toBeCloseTo(Math.hypot(0.15, 0.1 / Math.sqrt(12)), 6);
    expect(endless).toBeCloseTo(0.15, 3);
    const good = soilFromEvidence({ ...probe, readings: 1, standardError: fraction(0.05) });
    expect(good.errors.map(({ cause }) => cause)).toEqual(['place', 'measurement']);
    expect(good.from).toBe('probe');
  });

  it('takes a laboratory and a handbook as soilThermalProperties does', () => {
    const measured = { from: 'laboratory', conductivity: wattsPerMetreKelvin(1.4), standardError: fraction(0.1) } as const;
    const word = { from: 'handbook', material: 'peat', state: 'saturated' } as const;
    for (const evidence of [measured, word]) {
      expect(soilFromEvidence(evidence).conductivity).toEqual(soilThermalProperties(evidence).conductivity);
    }
    expect(soilFromEvidence(measured).errors).toEqual([{ cause: 'measurement', downward: 0.1, upward: 0.1, share: 1 }]);
    expect(codes(word)).toEqual(['conductivity-from-handbook', 'peat-ground', 'heat-capacity-assumed', 'ground-conductivity-class']);
    expect(soilFromEvidence(word).errors).toEqual([]);
  });
});

describe('findings of soilFromEvidence', () => {
  const always = ['conductivity-error-mostly-by', 'ground-conductivity-class'];
  const dense = (dryDensity: number): SampleEvidence['density'] => ({ from: 'core', dryDensity: kilogramsPerCubicMetre(dryDensity) });

  it.each<[string, SampleEvidence, readonly string[]]>([
    ['a plain sample', loam, []],
    ['soil out of a bag', { ...loam, density: { from: 'disturbed', dryDensity: kilogramsPerCubicMetre(1000) } }, ['disturbed-sample-density']],
    ['no density', { ...loam, density: { from: 'texture' } }, ['density-not-measured']],
    [
      'clean dry sand',
      { ...loam, texture: { from: 'laboratory', class: 'sand' }, moisture: { basis: 'dry', value: dryBasisPercent(5) }, density: dense(1750) },
      ['sand-may-dry-out-in-cooling'],
    ],
    ['gravel', { ...loam, gravel: massFraction(0.3) }, ['gravelly-soil-unmeasured']],
    ['organic soil', { ...loam, organicMatter: massFraction(0.3), density: dense(1100) }, ['organic-outside-models']],
    [
      'peat',
      { ...loam, organicMatter: massFraction(0.9), moisture: { basis: 'dry', value: dryBasisFraction(5) }, density: dense(150) },
      ['moisture-of-organic-soil', 'peat-ground', 'peat-model-reads-high'],
    ],
    [
      'a thin jar',
      { ...loam, texture: { from: 'jar', sandThickness: metres(0.001), siltThickness: metres(0.006), clayThickness: metres(0.001) } },
      ['jar-layers-thin'],
    ],
  ])('of %s', (_, evidence, expected) => {
    expect([...codes(evidence)].sort()).toEqual([...always, ...expected].sort());
  });

  it('say what to measure next', () => {
    const mostly = (evidence: SoilEvidence): unknown =>
      soilFromEvidence(evidence).findings.find(({ code }) => code === 'conductivity-error-mostly-by')?.values;
    expect(mostly({ ...loam, texture: { from: 'feel', class: 'loam' }, density: { from: 'texture' } })).toMatchObject({ cause: 'texture' });
    expect(mostly({ ...loam, density: { from: 'texture' } })).toMatchObject({ cause: 'density' });
    expect(mostly({ from: 'probe', conductivity: wattsPerMetreKelvin(1.2), readings: 12 })).toMatchObject({ cause: 'measurement' });
  });
});

describe('soilFromEvidence of bad input', () => {
  it('refuses it in every form', () => {
    const standardError = fraction(0.04);
    const conductivity = wattsPerMetreKelvin(1.4);
    const heatCapacity = megajoulesPerCubicMetreKelvin(2);
    const [first, ...others] = everyEvidence;
    refuses<SoilEvidence>(soilFromEvidence, soilEvidenceShape, first, {
      more: [
        ...others,
        { from: 'probe', conductivity, readings: 5, standardError, heatCapacity },
        { from: 'laboratory', conductivity, standardError, heatCapacity },
        { from: 'handbook', material: 'sand', state: 'moist' },
      ],
    });
  });
});
