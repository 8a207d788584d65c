import { demand, locate } from '../errors/index.js';
import type { PipeResistance, Time, TrenchResistance } from '../units/index.js';
import { groundFindings } from './ground-findings.js';
import type { GroundPipes } from './ground-pipes.js';
import { groupPairs, meanRise, pipeRises } from './pairs.js';
import type { GroundResponse, GroundResponseInput } from './response.js';
import type { StepKernel } from './step-kernel.js';

const LATEST = 1e12;

/** What sources do to walls: after a diffusivity · time [m2], and in the end below an isothermal surface. */
export interface StepKernels {
  readonly after: (spread: number) => StepKernel;
  readonly steady: StepKernel;
}

/** A ground response of checked pipes from what their sources do. */
export function responseOfPipes({ layout, soil }: GroundResponseInput, pipes: GroundPipes, { after, steady }: StepKernels): GroundResponse {
  const { places, groups, radius, sealed } = pipes;
  const scale = 1 / (4 * Math.PI * soil.conductivity);

  const kernelAfter = (time: Time): StepKernel => {
    demand('time', 'time', time, { atLeast: 0, atMost: LATEST });
    return after(soil.diffusivity * time);
  };
  const riseAfter = (time: Time): PipeResistance => (scale * meanRise(groups, kernelAfter(time))) as PipeResistance;
  const trenchOf = (rise: PipeResistance): TrenchResistance => (rise / layout.pipesPerTrench) as TrenchResistance;
  const risesOf = (kernel: StepKernel): readonly (readonly PipeResistance[])[] =>
    pipeRises(places, kernel).map((trench) => trench.map((rise) => (scale * rise) as PipeResistance));

  const steadyMean = meanRise(groups, steady);
  const steadyRise = sealed ? undefined : ((scale * steadyMean) as PipeResistance);
  return {
    layout,
    riseAfter,
    risesAfter: (times) => times.map((time, index) => locate(`times.${String(index)}`, () => riseAfter(time))),
    steadyRise,
    trenchRiseAfter: (time) => trenchOf(riseAfter(time)),
    steadyTrenchRise: steadyRise === undefined ? undefined : trenchOf(steadyRise),
    pipeRisesAfter: (time) => risesOf(kernelAfter(time)),
    steadyPipeRises: sealed ? undefined : risesOf(steady),
    findings: groundFindings(layout, radius, sealed ? 1 : steadyMean / meanRise(groupPairs({ ...places, trenches: 1 }), steady), places.addedDepth),
    sources: ['ingersoll1954', 'carslawJaeger1959', 'buriedPipeElements'],
  };
}
