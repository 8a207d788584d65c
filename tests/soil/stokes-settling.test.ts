import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { settlingWater } from '../../src/soil/settling-water.js';
import {
  jarReadingTimes,
  jarTestFractions,
  jarTestResultShape,
  jarTestShape,
  settlingColumnShape,
  settlingParticleShape,
  settlingTimeShape,
  stokesCutSize,
  stokesSettlingTime,
  TEXTURE_CLASSES,
  textureClass,
  type JarTest,
  type SettlingColumn,
  type SettlingParticle,
  type SettlingTime,
} from '../../src/soil/index.js';
import {
  celsius,
  diameterMillimetres,
  hours,
  kilogramsPerCubicMetre,
  massFraction,
  metres,
  minutes,
  seconds,
  type Length,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';

const warmth = fc.double({ min: 10, max: 25, noNaN: true });
const height = fc.double({ min: 0.02, max: 0.5, noNaN: true });
const jar = (sand: number, silt: number, clay: number, more: Pick<JarTest, 'reading'> = {}): JarTest => ({
  sandThickness: metres(sand),
  siltThickness: metres(silt),
  clayThickness: metres(clay),
  ...more,
});
const water = { columnHeight: metres(0.1), temperature: celsius(20) };
const codes = (given: JarTest): readonly string[] => jarTestFractions(given).findings.map(({ code }) => code);

describe('water of a jar', () => {
  it('has the viscosity and density of the release at the tabled temperatures', () => {
    const rows = loadFixture('fluids-water').rows.filter((row) => row.number('p_bar_abs') === 1 && [10, 15, 20, 25].includes(row.number('t_C')));
    expect(rows).toHaveLength(4);
    for (const row of rows) {
      const { viscosity, density } = settlingWater(celsius(row.number('t_C')));
      // Four digits of viscosity and five of density are recalled; 1.1375 for 1.13757 is the worst.
      expect(Math.abs(1000 * viscosity - row.number('viscosity_mPa_s'))).toBeLessThan(8e-5);
      expect(Math.abs(density - row.number('density_kg_m3'))).toBeLessThan(0.005);
    }
  });

  it('has between them what a formula of another form gives', () => {
    // Vogel's form of the viscosity, of another fit to water: 0.02414 mPa.s · 10^(247.8 K/(T − 140 K)), good to 1 % (from memory).
    fc.assert(
      fc.property(warmth, (temperature) => {
        const vogel = 2.414e-5 * 10 ** (247.8 / (temperature + 273.15 - 140));
        expect(Math.abs(settlingWater(celsius(temperature)).viscosity / vogel - 1)).toBeLessThan(0.01);
      }),
    );
  });

  it('grows thinner and lighter with warmth', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 24.9, noNaN: true }), fc.double({ min: 0.05, max: 15, noNaN: true }), (cold, step) => {
        const [first, second] = [cold, Math.min(cold + step, 25)].map((each) => settlingWater(celsius(each)));
        expect(second?.viscosity).toBeLessThan(first?.viscosity ?? 0);
        expect(second?.density).toBeLessThan(first?.density ?? 0);
      }),
    );
  });
});

describe('stokesSettlingTime and stokesCutSize', () => {
  it('undo one another, and scale with the height and the square of the size', () => {
    fc.assert(
      fc.property(warmth, height, fc.double({ min: 0.0005, max: 0.05, noNaN: true }), (temperature, column, size) => {
        const grain = { columnHeight: metres(column), temperature: celsius(temperature), particleSize: diameterMillimetres(size) };
        const { particleSize, ...rest } = grain;
        const time = stokesSettlingTime(grain);
        // Times of days and seconds alike come back as the size, as far as a reading of a second and of thirty days allow.
        if (time.settlingTime >= 1 && time.settlingTime <= 30 * 86_400) {
          expect(stokesCutSize({ ...rest, settlingTime: time.settlingTime }).particleSize / particleSize).toBeCloseTo(1, 12);
        }
        expect(stokesSettlingTime({ ...grain, columnHeight: metres(column * 2) }).settlingTime / time.settlingTime).toBeCloseTo(2, 12);
        expect(stokesSettlingTime({ ...grain, particleSize: diameterMillimetres(size / 2) }).settlingTime / time.settlingTime).toBeCloseTo(4, 12);
        expect(time.settlingVelocity * time.settlingTime).toBeCloseTo(column, 12);
      }),
    );
  });

  it('balance weight and drag on the grain', () => {
    // Stokes' drag 3π µ d v against the weight under water, π d³ (ρs − ρf) g / 6, both by the numbers of 20 °C.
    const size = 3e-5;
    const { settlingVelocity } = stokesSettlingTime({ ...water, particleSize: diameterMillimetres(1000 * size) });
    const drag = 3 * Math.PI * 1.0016e-3 * size * settlingVelocity;
    expect(drag / ((Math.PI * size ** 3 * (2650 - 998.21) * 9.80665) / 6)).toBeCloseTo(1, 9);
  });

  it('doubt a grain that sinks too fast, and refuse one that falls', () => {
    const of = (size: number): ReturnType<typeof stokesSettlingTime> => stokesSettlingTime({ ...water, particleSize: diameterMillimetres(size) });
    expect(of(0.069).findings).toEqual([]);
    expect(of(0.071).findings.map(({ code }) => code)).toEqual(['grain-too-coarse-for-stokes']);
    expect(() => of(0.2)).toThrow('sieve what is coarser');
    expect(() => stokesCutSize({ ...water, settlingTime: seconds(2) })).toThrow('settlingTime: 2 (time)');
  });

  it('refuse bad input by name', () => {
    const heavy = { ...water, particleDensity: kilogramsPerCubicMetre(2700) };
    refuses<SettlingParticle>(stokesSettlingTime, settlingParticleShape, { ...heavy, particleSize: diameterMillimetres(0.05) });
    refuses<SettlingTime>(stokesCutSize, settlingTimeShape, { ...heavy, settlingTime: hours(2) });
    refuses<SettlingColumn>(jarReadingTimes, settlingColumnShape, heavy);
    expect(() => jarReadingTimes({ ...water, temperature: celsius(30) })).toThrow('a room of even temperature');
    expect(() => stokesSettlingTime({ ...water, temperature: celsius(4), particleSize: diameterMillimetres(0.05) })).toThrow('temperature: 4');
  });
});

describe('jarTestFractions', () => {
  it('has the shares of the layers within ten points, and a texture among those possible', () => {
    fc.assert(
      fc.property(
        fc.tuple(
          fc.double({ min: 0, max: 0.1, noNaN: true }),
          fc.double({ min: 0, max: 0.1, noNaN: true }),
          fc.double({ min: 0.011, max: 0.1, noNaN: true }),
        ),
        ([sand, silt, clay]) => {
          const found = jarTestFractions(jar(sand, silt, clay));
          const bands = [found.sandBand, found.siltBand, found.clayBand];
          expect(bands.reduce((sum, { estimate }) => sum + estimate, 0)).toBeCloseTo(1, 9);
          for (const { low, estimate, high } of bands) {
            expect(low).toBe(Math.max(estimate - 0.1, 0));
            expect(high).toBe(Math.min(estimate + 0.1, 1));
          }
          expect(found.possible.map(({ texture }) => texture)).toContain(found.texture);
          expect(found.possible.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
          expect(found.findings).toEqual([]);
        },
      ),
    );
  });

  it('names the class of the triangle, whatever the glass', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 40 }), (sand, silt, clay) => {
        const sum = sand + silt + clay;
        const small = jarTestFractions(jar(sand / 1000, silt / 1000, clay / 1000));
        expect(small.texture).toBe(jarTestFractions(jar(sand / 500, silt / 500, clay / 500)).texture);
        expect(small.texture).toBe(textureClass({ sand: massFraction(sand / sum), clay: massFraction(clay / sum) }).texture);
      }),
    );
  });

  it('allows the classes that a plain walk through the band meets', () => {
    const { sandBand, siltBand, clayBand, possible } = jarTestFractions(jar(0.02, 0.02, 0.01));
    const met = new Set<string>();
    for (let sand = 0; sand <= 1000; sand += 5) {
      for (let clay = 0; clay <= 1000 - sand; clay += 5) {
        const silt = 1000 - sand - clay;
        const inside = [
          [sand, sandBand],
          [silt, siltBand],
          [clay, clayBand],
        ] as const;
        if (inside.some(([tenths, { low, high }]) => tenths < 1000 * low - 1e-6 || tenths > 1000 * high + 1e-6)) continue;
        met.add(textureClass({ sand: massFraction(sand / 1000), clay: massFraction(clay / 1000) }).texture);
      }
    }
    expect(new Set(possible.map(({ texture }) => texture))).toEqual(met);
    expect(met.size).toBeGreaterThan(2);
    expect([...met].every((texture) => TEXTURE_CLASSES.some((each) => each === texture))).toBe(true);
  });

  it('tells which published readings part silt from clay, and which do not', () => {
    const read = (sand: ReturnType<typeof seconds>, silt: ReturnType<typeof seconds>): JarTest =>
      jar(0.02, 0.02, 0.01, { reading: { ...water, sandReadAt: sand, siltReadAt: silt } });
    expect(codes(read(minutes(1), hours(6)))).toEqual([]);
    expect(codes(read(minutes(1), hours(2)))).toEqual(['jar-reading-off-size']);
    expect(codes(read(seconds(40), minutes(30)))).toEqual(['jar-reading-off-size']);
    expect(codes(read(minutes(1), hours(24)))).toEqual(['jar-reading-off-size']);
    const { sandCut, siltCut } = jarTestFractions(read(minutes(1), hours(6)));
    expect(1000 * diameterMillimetres.of(sandCut ?? diameterMillimetres(0))).toBeCloseTo(43, 0);
    expect(1000 * diameterMillimetres.of(siltCut ?? diameterMillimetres(0))).toBeCloseTo(2.3, 1);
    const times = jarReadingTimes(water);
    expect(codes(jar(0.02, 0.02, 0.01, { reading: { ...water, ...times } }))).toEqual([]);
  });

  it('doubts thin layers and refuses none', () => {
    expect(codes(jar(0.002, 0.003, 0.001))).toEqual(['jar-layers-thin']);
    expect(() => jarTestFractions(jar(0, 0, 0))).toThrow('hardly anything has settled');
    const late = { ...water, sandReadAt: hours(6), siltReadAt: minutes(1) };
    expect(() => jarTestFractions(jar(0.02, 0.02, 0.01, { reading: late }))).toThrow('the second reading comes after the first');
    const early = { ...water, sandReadAt: seconds(2), siltReadAt: minutes(1) };
    expect(() => jarTestFractions(jar(0.02, 0.02, 0.01, { reading: early }))).toThrow('reading.sandReadAt: 2 (time)');
  });

  it('refuses bad input by name', () => {
    const reading = { ...water, particleDensity: kilogramsPerCubicMetre(2650), sandReadAt: minutes(1), siltReadAt: hours(6) };
    refuses(jarTestFractions, jarTestShape, jar(0.02, 0.02, 0.01, { reading }));
    expect(Object.keys(jarTestResultShape)).toContain('possible');
    const inMillimetres = 20 as Length;
    expect(() => jarTestFractions({ ...jar(0, 0.02, 0.01), sandThickness: inMillimetres })).toThrow('sandThickness: 20');
  });
});
