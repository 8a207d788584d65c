import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codecOf } from '../../src/document/codec.js';
import {
  exponentialRingResponse,
  flatOverlappedCoil,
  layoutFrom,
  type LayoutInput,
  layoutInputShape,
  ringLayoutFrom,
  ringLayoutInputShape,
  ringResponse,
  type RingLayoutInput,
} from '../../src/ground/index.js';
import { simulate } from '../../src/operation/index.js';
import { diameterMetres, hours, metres, pipeMetreKelvinPerWatt, seconds, wattsPerKelvin } from '../../src/units/index.js';
import { arbitraryOf } from '../support/arbitrary.js';
import { soilOf } from './support.js';

const HOURS = 8760;

describe('a coil in a simulation', () => {
  it('has walls that steps of its response add up to, on its counted pipe', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 3 }),
        fc.array(fc.double({ min: -3000, max: 3000, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (turns, trenches, quarters) => {
          const coil = { ringDiameter: metres(0.9144), pitch: metres(0.3), depth: metres(1.8), turns, trenches, trenchSpacing: metres(3.6) };
          const input = { layout: flatOverlappedCoil(coil), pipe: { outsideDiameter: diameterMetres(0.0268) }, soil: soilOf(1.2, 6e-7) };
          const [response, exact] = [exponentialRingResponse(input), ringResponse(input)];
          const { countedPipe } = exact;
          if (countedPipe === undefined) throw new Error('a coil with an end');
          // 10 W a metre at most, whatever the pipe.
          const loads = Array.from({ length: HOURS }, (_, hour) => ((quarters[Math.floor((hour * 4) / HOURS)] ?? 0) * countedPipe) / 300);
          const { yearOne } = simulate({
            step: hours(1),
            duty: { from: 'ground', loads },
            ground: new Array<number>(HOURS).fill(10),
            response,
            pipeLength: countedPipe,
            resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
            heatCapacityRate: wattsPerKelvin(20_000),
            years: 1,
            withCourse: true,
          });
          // Heat taken out is a load above 0; each quarter begins with a step of what it takes more than the one before.
          const drop = quarters.reduce((sum, heat, quarter) => {
            const more = (heat - (quarters[quarter - 1] ?? 0)) / 300;
            return sum + more * exact.riseAfter(seconds(((4 - quarter) * HOURS * 3600) / 4));
          }, 0);
          expect(Math.abs((yearOne.course?.walls[HOURS - 1] ?? Number.NaN) - (10 - drop))).toBeLessThan(0.02);
        },
      ),
      { numRuns: 8 },
    );
  });
});

describe('layouts in documents', () => {
  it.each(['metric', 'us'] as const)('come back as they were written, in %s units', (system) => {
    const [rings, straight] = [codecOf<RingLayoutInput>(ringLayoutInputShape), codecOf<LayoutInput>(layoutInputShape)];
    fc.assert(
      fc.property(arbitraryOf(ringLayoutInputShape), arbitraryOf(layoutInputShape), (ring, layout) => {
        expect(rings.read(rings.write(ring as RingLayoutInput, system))).toEqual(ring);
        expect(straight.read(straight.write(layout as LayoutInput, system))).toEqual(layout);
      }),
      { numRuns: 40 },
    );
  });

  it('make layouts as they are read', () => {
    const coil = codecOf<RingLayoutInput>(ringLayoutInputShape).read({
      type: 'upright-overlapped-coil',
      ringDiameter: '3 ft',
      pitch: '1.5 ft',
      depth: '5 ft',
      turns: 60,
      trenchSpacing: '12 ft',
    });
    expect(ringLayoutFrom(coil, 2)).toMatchObject({ type: 'upright-overlapped-coil', trenches: 2, turns: 60 });
    const collector = codecOf<LayoutInput>(layoutInputShape).read({ type: 'area-collector', depth: '1.3 m', trenchSpacing: '0.6 m' });
    expect(layoutFrom(collector, 20)).toMatchObject({ trenches: 20, pipesPerTrench: 1 });
  });
});
