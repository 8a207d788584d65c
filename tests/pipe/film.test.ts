import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  filmFindings,
  nusseltNumber,
  pipeDimensions,
  pipeResistance,
  prandtlNumber,
  type FilmState,
  type PipeResistanceParts,
  type RunningPipe,
  type ThermalFluid,
} from '../../src/pipe/index.js';
import { pipeSectionShape } from '../../src/states/index.js';
import {
  cubicMetresPerSecond,
  diameterMillimetres,
  joulesPerKilogramKelvin,
  kilogramsPerCubicMetre,
  millipascalSeconds,
  ratio,
  wattsPerMetreKelvin,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';

const fluid: ThermalFluid = {
  density: kilogramsPerCubicMetre(1022),
  viscosity: millipascalSeconds(3.9),
  specificHeat: joulesPerKilogramKelvin(3930),
  conductivity: wattsPerMetreKelvin(0.47),
};
const pipe = pipeDimensions({ series: 'IPS', size: '3/4', dimensionRatio: '11' });
const nusselt = (reynolds: number, prandtl: number): number => nusseltNumber({ reynolds: ratio(reynolds), prandtl: ratio(prandtl) }).nusselt;
const running = (flow: number): PipeResistanceParts => pipeResistance({ pipe, fluid, flow: cubicMetresPerSecond(flow) });
const prandtls: fc.Arbitrary<number> = fc.double({ min: 0.5, max: 2000, noNaN: true });

/** Mean-to-wall temperature of developed laminar flow under even flux, by integrating the energy balance over the radius. */
function laminarNusselt(rings: number): number {
  let [heat, temperature, weighted, mass] = [0, 0, 0, 0];
  const profile: (readonly [temperature: number, velocity: number])[] = [];
  const step = 1 / rings;
  for (let ring = 0; ring < rings; ring += 1) {
    const radius = (ring + 0.5) * step;
    const share = 2 * (1 - radius ** 2) * radius * step;
    // Heat carried inside the middle of the ring falls on its circumference; unit flux at the wall warms the whole flow evenly.
    const gradient = (4 * (heat + share / 2)) / (2 * radius);
    temperature += (gradient * step) / 2;
    profile.push([temperature, share]);
    temperature += (gradient * step) / 2;
    heat += share;
  }
  for (const [at, share] of profile) {
    weighted += at * share;
    mass += share;
  }
  return 2 / (temperature - weighted / mass);
}

describe('nusseltNumber', () => {
  it('is continuous at 2300 and 4000, and names the regimes', () => {
    fc.assert(
      fc.property(prandtls, fc.constantFrom(2300, 4000), (prandtl, edge) => {
        const [below, above] = [nusselt(edge * (1 - 1e-10), prandtl), nusselt(edge, prandtl)];
        expect(Math.abs(above / below - 1)).toBeLessThan(1e-6);
      }),
    );
    expect([2299.9, 2300, 3999.9, 4000].map((re) => nusseltNumber({ reynolds: ratio(re), prandtl: ratio(30) }).regime)).toEqual([
      'laminar',
      'transitional',
      'transitional',
      'turbulent',
    ]);
  });

  it('never falls as the Reynolds number rises', () => {
    const re = fc.double({ min: 0, max: 5e6, noNaN: true });
    fc.assert(
      fc.property(re, re, fc.double({ min: 1, max: 2000, noNaN: true }), (one, other, prandtl) => {
        expect(nusselt(Math.max(one, other), prandtl)).toBeGreaterThanOrEqual(nusselt(Math.min(one, other), prandtl));
      }),
    );
  });

  it('is, when laminar, what the energy balance over the radius gives', () => {
    expect(laminarNusselt(2000)).toBeCloseTo(48 / 11, 4);
    expect(Math.abs(nusselt(1000, 10) / laminarNusselt(2000) - 1)).toBeLessThan(1e-4);
  });

  it('lies within a quarter of Dittus and Boelter where both hold', () => {
    for (const prandtl of [5, 10, 20, 40]) {
      for (const re of [10_000, 20_000, 50_000]) {
        expect(Math.abs(nusselt(re, prandtl) / (0.023 * re ** 0.8 * prandtl ** 0.4) - 1)).toBeLessThan(0.25);
      }
    }
  });

  it('never lends turbulence to a laminar flow, as the turbulent formula carried down would', () => {
    const rows = loadFixture('loop-oracle-film').rows.filter((row) => row.number('Re') < 2300);
    expect(rows.length).toBe(2);
    for (const row of rows) expect(nusselt(row.number('Re'), row.number('Pr'))).toBeLessThan(Number(row.text('Nu_Gnielinski')));
  });

  it('refuses what the correlations do not cover', () => {
    expect(() => nusselt(6e6, 10)).toThrow('reynolds');
    expect(() => nusselt(5000, 3000)).toThrow('the turbulent correlation ends there');
    expect(() => nusselt(5000, 0.4)).toThrow('prandtl');
    expect(nusselt(500, 3000)).toBe(4.364);
  });

  it('refuses bad input', () => {
    const shape: Shape<FilmState> = { reynolds: 'ratio', prandtl: 'ratio' };
    refuses(nusseltNumber, shape, { reynolds: ratio(5000), prandtl: ratio(10) });
  });
});

describe('pipeResistance', () => {
  it('never rises with the flow, and is wall and film together', () => {
    const flows = fc.double({ min: 0, max: 2e-3, noNaN: true });
    fc.assert(
      fc.property(flows, flows, (one, other) => {
        const [slow, fast] = [running(Math.min(one, other)), running(Math.max(one, other))];
        expect(fast.total).toBeLessThanOrEqual(slow.total);
        expect(slow.total).toBe(slow.wall + slow.film);
        expect(slow.wall).toBe(fast.wall);
        expect(slow.film).toBeCloseTo(1 / (Math.PI * slow.nusselt * fluid.conductivity), 12);
      }),
    );
  });

  it('has the wall that thin shells in series have', () => {
    const shells = 20_000;
    const step = (pipe.outsideDiameter - pipe.insideDiameter) / 2 / shells;
    let sum = 0;
    for (let shell = 0; shell < shells; shell += 1) {
      sum += step / (2 * Math.PI * (pipe.insideDiameter / 2 + (shell + 0.5) * step) * pipe.wallConductivity);
    }
    expect(running(1e-4).wall).toBeCloseTo(sum, 9);
  });

  it('reaches the published 0.089 m.K/W of 42 mm DR 11 with a nominal bore and a film of 1340 W/(m2.K)', () => {
    const nominal = pipeDimensions({
      series: 'IPS',
      size: '1-1/4',
      dimensionRatio: '11',
      bore: 'minimum wall',
      wallConductivity: wattsPerMetreKelvin(0.389),
    });
    const { wall } = pipeResistance({ pipe: nominal, fluid, flow: cubicMetresPerSecond(1e-4) });
    expect(wall + 1 / (Math.PI * nominal.insideDiameter * 1340)).toBeCloseTo(0.089, 3);
  });

  it('refuses interchanged diameters', () => {
    const swapped = { ...pipe, insideDiameter: pipe.outsideDiameter, outsideDiameter: pipe.insideDiameter };
    expect(() => pipeResistance({ pipe: swapped, fluid, flow: cubicMetresPerSecond(1e-4) })).toThrow('interchanged');
  });

  it('and the Prandtl number refuse bad input', () => {
    const thermal: Shape<ThermalFluid> = {
      density: 'density',
      viscosity: 'dynamic viscosity',
      specificHeat: 'specific heat',
      conductivity: 'conductivity',
    };
    const shape: Shape<RunningPipe> = { pipe: pipeSectionShape, fluid: thermal, flow: 'flow' };
    const section = {
      insideDiameter: diameterMillimetres(26),
      outsideDiameter: diameterMillimetres(32),
      wallConductivity: wattsPerMetreKelvin(0.4),
    };
    refuses(({ fluid: of }) => prandtlNumber(of), { fluid: thermal }, { fluid });
    refuses(pipeResistance, shape, { pipe: section, fluid, flow: cubicMetresPerSecond(3e-4) });
  });
});

describe('filmFindings', () => {
  it('notes laminar flow, warns of transition, says nothing of turbulence', () => {
    expect(filmFindings(running(1e-4))).toEqual([
      {
        code: 'laminar-flow',
        level: 'note',
        values: { reynolds: running(1e-4).reynolds, film: running(1e-4).film, wall: running(1e-4).wall },
        source: 'incroperaInternalFlow',
      },
    ]);
    expect(filmFindings(running(1.8e-4)).map(({ code, level }) => `${code} ${level}`)).toEqual(['transitional-flow warning']);
    expect(filmFindings(running(4e-4))).toEqual([]);
  });
});
