import { demand, locate } from '../errors/index.js';
import type { PipeLength, PipeResistance, Ratio, Time, TrenchResistance } from '../units/index.js';
import { cylinderOnly, type ExponentialResponse, fitInSoil } from './exponential-response.js';
import { ringFindings } from './ring-findings.js';
import { ringMean } from './ring-mean.js';
import type { RingResponse, RingResponseInput } from './ring-response-input.js';
import { ringedGround } from './ringed-pipes.js';

const LATEST = 1e12;

/**
 * How far the walls of pipe laid in rings warm after a step of heat, and in the end: flat and upright overlapped coils, pipes round a closed trench.
 *
 * Rings are circles that give off equal heat per metre, so that the advance from one ring to the next is left out: 0.2 % of the pipe of 0.9 m rings 0.25 m
 * apart, 6 % at 1.4 m, and a reserve in either case. Length of pipe is counted the same way, see `countedPipe`. The return is a straight line with the same
 * heat per metre, its ends abreast of the rings'; what the two do to one another comes out 0.2 % high in 20 turns, 1 % in 5. Soil, surface and freezing are as for {@link groundResponse}; a coil ends where its rings end.
 *
 * @param input - rings, pipe, soil, surface and treatment of the pipe's own heat
 * @returns the response, ready to be asked for any time
 * @throws InputError when a number is out of its range, the soil's numbers contradict one another, rings stand out of the ground, lie closer than the pipe
 * is thick, are bent too tightly or run into one another or the return
 * @remarks Ring sources with mirror images (`xiong2015`), point sources summed over all distances. Checked against nested quadrature of 4 rings (1e-4) and
 * even-point quadrature of 12 and 40 (0.1 %; 3e-5 found). Invariants tested: equal when lengths are scaled by c and times by c²; proportional to 1/conductivity; growing with
 * time and with turns; isothermal, film, sealed in this order; coils and trenches far apart like one; a wide ring trench like a straight one.
 * @example
 * ```ts @import.meta.vitest
 * const { inches, feet, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond, days } = await import('../units/index.js');
 * const { flatOverlappedCoil } = await import('./ring-layout-makers.js');
 * const response = ringResponse({
 *   layout: flatOverlappedCoil({ ringDiameter: inches(36), pitch: inches(10), depth: feet(6), turns: 40, trenches: 1, trenchSpacing: feet(12) }),
 *   pipe: { outsideDiameter: diameterMillimetres(26.8) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.2), heatCapacity: joulesPerCubicMetreKelvin(2e6), diffusivity: squareMetresPerSecond(6e-7) },
 * });
 * expect(response.riseAfter(days(365.25))).toBeCloseTo(3.648, 3);
 * expect(response.countedPipe).toBeCloseTo(40 * Math.PI * inches(36), 9);
 * ```
 */
export function ringResponse(input: RingResponseInput): RingResponse {
  const ground = ringedGround(input);
  const { layout, soil } = input;
  const mean = ringMean(ground);
  const scale = 1 / (4 * Math.PI * soil.conductivity);
  const riseAfter = (time: Time): PipeResistance => {
    demand('time', 'time', time, { atLeast: 0, atMost: LATEST });
    return (time === 0 ? 0 : scale * mean.riseAfter(soil.diffusivity * time)) as PipeResistance;
  };
  const trenchOf = (rise: PipeResistance): TrenchResistance => (rise / ground.pipePerTrench) as TrenchResistance;
  const steadyRise = mean.steady === undefined ? undefined : ((scale * mean.steady) as PipeResistance);
  return {
    layout,
    riseAfter,
    risesAfter: (times) => times.map((time, index) => locate(`times.${String(index)}`, () => riseAfter(time))),
    steadyRise,
    trenchRiseAfter: (time) => trenchOf(riseAfter(time)),
    steadyTrenchRise: steadyRise && trenchOf(steadyRise),
    countedPipePerTrench: ground.pipePerTrench as Ratio,
    countedPipe: Number.isFinite(ground.counted) ? (ground.counted as PipeLength) : undefined,
    findings: ringFindings(layout, ground, mean.steady),
    sources: ['xiong2015', 'carslawJaeger1959', 'ingersoll1954'],
  };
}

/**
 * The response of pipe laid in rings as a sum of decaying exponentials, from one minute to 20 years, which a simulation steps.
 *
 * Its pipe is the counted pipe of {@link ringResponse}: simulate with `countedPipe` as length.
 *
 * @param input - rings, pipe, soil and surface as for {@link ringResponse}; the pipe's own heat leaves a cylinder
 * @returns the terms, the response that they give, and how good it is
 * @throws InputError as {@link ringResponse} does, and for a line as the pipe's own heat
 * @remarks Fitted like {@link exponentialResponse}. Invariants tested: within what `fit` says of {@link ringResponse}; every part positive; their sum the
 * steady rise.
 * @example
 * ```ts @import.meta.vitest
 * const { inches, feet, diameterMillimetres, wattsPerMetreKelvin, joulesPerCubicMetreKelvin, squareMetresPerSecond } = await import('../units/index.js');
 * const { uprightOverlappedCoil } = await import('./ring-layout-makers.js');
 * const { fit } = exponentialRingResponse({
 *   layout: uprightOverlappedCoil({ ringDiameter: inches(36), pitch: inches(17), depth: feet(4.5), trenches: 2, trenchSpacing: feet(12) }),
 *   pipe: { outsideDiameter: diameterMillimetres(26.8) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.2), heatCapacity: joulesPerCubicMetreKelvin(2e6), diffusivity: squareMetresPerSecond(6e-7) },
 * });
 * expect(fit.largestError).toBeLessThan(2e-4);
 * ```
 */
export function exponentialRingResponse(input: RingResponseInput): ExponentialResponse {
  const ground = ringedGround(input);
  cylinderOnly(ground.selfTerm);
  return fitInSoil(ringMean(ground), input.soil);
}
