import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { customLayout, groundResponse } from '../../src/ground/index.js';
import { layeredGroundShape, layeredResponse, type LayeredGround } from '../../src/soil/index.js';
import { days, diameterMillimetres, hours, metres, seconds, type Time } from '../../src/units/index.js';
import { elements, log, responded, thermal } from '../published/soil-layers.checks.js';
import { refuses } from '../support/bad-input.js';
import { arbitraryConductivity, arbitraryLog, arbitraryPipes, FOUR, pipes } from './logs.js';

const OUTSIDE = diameterMillimetres(32);
const uniform = (at: LayeredGround['pipes'], conductivity: number): ReturnType<typeof groundResponse> =>
  groundResponse({
    layout: customLayout({ pipes: at, trenches: 1, trenchSpacing: metres(10) }),
    pipe: { outsideDiameter: OUTSIDE },
    soil: thermal(conductivity),
  });
const TIMES = [hours(1), hours(10), days(3), days(30), days(365), days(3650)];

describe('layeredResponse', () => {
  it('is that of uniform ground where the layers are alike, cut up or not', () => {
    fc.assert(
      fc.property(arbitraryConductivity, arbitraryPipes, fc.constantFrom(...TIMES), (k, at, time) => {
        const expected = uniform(at, k).riseAfter(time);
        for (const layers of [log([k, 3]), log([k, 0.7], [k, 1.6], [k, 3])]) {
          expect(layeredResponse({ layers, pipes: at, outsideDiameter: OUTSIDE }).riseAfter(time) / expected).toBeCloseTo(1, 6);
        }
      }),
    );
  });

  it('begins in the layer of the pipe, grows with time and ends steady', () => {
    fc.assert(
      fc.property(arbitraryLog, arbitraryPipes, (layers, at) => {
        const { riseAfter, steadyRise } = layeredResponse({ layers, pipes: at });
        const rises = [...TIMES.map(riseAfter), riseAfter(seconds(1e12))];
        // Ten places of the transform leave this much of the whole.
        const slack = 1e-4 * steadyRise;
        for (const [index, rise] of rises.slice(1).entries()) expect(rise).toBeGreaterThan((rises[index] ?? NaN) - slack);
        expect(rises.at(-1)).toBeCloseTo(steadyRise, 3);
      }),
      { numRuns: 40 },
    );
    const { riseAfter } = layeredResponse({ layers: log([0.9, 1], [1.9, 3]), pipes: pipes([0, 1.5]), outsideDiameter: OUTSIDE });
    expect(riseAfter(hours(6)) / uniform(pipes([0, 1.5]), 1.9).riseAfter(hours(6))).toBeCloseTo(1, 3);
  });

  it('ends steady with a pipe beside an interface as well', () => {
    const { riseAfter, steadyRise } = layeredResponse({ layers: log([0.9, 1.49], [1.9, 3]), pipes: pipes([0, 1.5]), outsideDiameter: OUTSIDE });
    // What is still to come goes by depth squared over diffusivity times time: some 2e-6 here.
    expect(riseAfter(seconds(1e12)) / steadyRise).toBeCloseTo(1, 5);
  });

  it('in worse fill lies between the native ground and ground that is all fill, in better fill too', () => {
    fc.assert(
      fc.property(arbitraryConductivity, arbitraryConductivity, arbitraryPipes, (native, k, at) => {
        const fill = { width: metres(0.6), depth: metres(1.9), thermal: thermal(k) };
        const { riseAfter } = layeredResponse({ layers: log([native, 3]), pipes: at, outsideDiameter: OUTSIDE, fill });
        for (const time of TIMES) {
          const [one, other] = [uniform(at, native).riseAfter(time), uniform(at, k).riseAfter(time)];
          expect(riseAfter(time)).toBeGreaterThan(Math.min(one, other) * 0.999);
          expect(riseAfter(time)).toBeLessThan(Math.max(one, other) * 1.001);
        }
      }),
      { numRuns: 15 },
    );
  });

  it('after a day in trench fill is too much, which is the safe side: 7 % against the elements', () => {
    const [row] = elements.rows.filter((each) => each.text('case') === 'D10' && each.text('t') === '1d');
    if (row === undefined) throw new Error('no such row');
    expect(responded(row) / row.number('rise_mean_mK_W')).toBeCloseTo(1.073, 3);
  });

  it('refuses bad input by name', () => {
    const ground: LayeredGround = { layers: log([0.9, 1.2], [1.9, 3]), pipes: FOUR, outsideDiameter: OUTSIDE };
    const [first, ...rest] = ground.layers;
    const named = first === undefined ? [] : [{ ...first, ground: 'soil' as const }, ...rest];
    const fill = { width: metres(0.6), depth: metres(1.9), thermal: thermal(0.8) };
    const bedding = { thickness: metres(0.1), thermal: thermal(0.6) };
    refuses<LayeredGround>((given) => layeredResponse(given).riseAfter(days(30)), layeredGroundShape, ground, {
      more: [{ ...ground, layers: named, fill, bedding, waterTable: metres(3) }],
    });
    interface Asked {
      readonly time: Time;
    }
    refuses<Asked>(({ time }) => layeredResponse(ground).riseAfter(time), { time: 'time' }, { time: days(30) });
  });
});
