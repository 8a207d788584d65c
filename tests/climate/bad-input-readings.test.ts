import { describe, it } from 'vitest';
import {
  type AmplitudesInput,
  amplitudesInputShape,
  type DepthOfSwingInput,
  depthOfSwing,
  depthOfSwingInputShape,
  diffusivityFromAmplitudes,
  diffusivityFromLags,
  diffusivityFromQuarters,
  fitGroundProbe,
  fitWaveSeries,
  type GroundProbe,
  type GroundProbePlanInput,
  groundProbePlanInputShape,
  groundProbeShape,
  groundTemperature,
  type LagsInput,
  lagsInputShape,
  planGroundProbe,
  probeErrors,
  type ProbeErrorsInput,
  probeErrorsInputShape,
  publishedForms,
  type PublishedSecondHarmonic,
  publishedSecondHarmonicShape,
  type QuartersInput,
  quartersInputShape,
  secondHarmonic,
  temperatureReach,
  type TemperatureReachInput,
  temperatureReachInputShape,
  temperatureSpells,
  type TemperatureSpellsInput,
  temperatureSpellsInputShape,
  type WaveSeries,
  waveSeriesShape,
} from '../../src/climate/index.js';
import { type AnnualWave, annualWaveShape } from '../../src/states/index.js';
import { celsius, dayOfYear, days, fraction, kelvinDifference, metres, ratio, squareMetresPerDay } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loam, temperate } from './waves.js';

const day = dayOfYear(60);
const second = { amplitude: kelvinDifference(1), coldestDay: day };
const place = { wave: temperate, secondHarmonic: second, diffusivity: loam, depth: metres(1.5) };
const moments = [16, 76, 136, 196, 256, 316].flatMap((moment) => [0.5, 1.5].map((depth) => ({ day: dayOfYear(moment), depth: metres(depth) })));
const readings = moments.map((moment, i) => ({
  ...moment,
  temperature: celsius(groundTemperature({ wave: temperate, diffusivity: loam, ...moment }) + (i % 3) / 10),
}));

describe('bad input is refused by name', () => {
  it('by the spells and the reach of a temperature', () => {
    const asked = { side: 'below', temperature: celsius(5) } as const;
    refuses<TemperatureSpellsInput>(temperatureSpells, temperatureSpellsInputShape, { ...place, ...asked });
    const { wave, diffusivity } = place;
    refuses<TemperatureReachInput>(temperatureReach, temperatureReachInputShape, { wave, secondHarmonic: second, diffusivity, ...asked });
  });
  it('by the depth of a swing', () => {
    const amplitude = kelvinDifference(3);
    refuses<DepthOfSwingInput>(depthOfSwing, depthOfSwingInputShape, { wave: temperate, diffusivity: loam, amplitude });
  });
  it('by the published forms', () => {
    refuses<{ readonly wave: AnnualWave }>(({ wave }) => publishedForms(wave), { wave: annualWaveShape }, { wave: temperate });
    const amplitude = kelvinDifference(1);
    const marked = { day, countedAs: 'days elapsed' } as const;
    refuses<PublishedSecondHarmonic>(
      secondHarmonic,
      publishedSecondHarmonicShape,
      { amplitude, phase: { marks: 'coldest', ...marked }, period: days(365) },
      {
        more: [
          { amplitude, phase: { marks: 'warmest', ...marked } },
          { amplitude, phase: { marks: 'rising through the mean', ...marked } },
          { amplitude, phase: { marks: 'falling through the mean', ...marked } },
          { amplitude, phase: { marks: 'sine phase', angle: ratio(1) } },
          { amplitude, phase: { marks: 'cosine phase', angle: ratio(1) } },
        ],
      },
    );
  });
  it('by the fit of a series', () => {
    const series = readings.map(({ temperature }, i) => ({ day: dayOfYear(10 + 30 * i), temperature }));
    refuses<WaveSeries>(fitWaveSeries, waveSeriesShape, { readings: series, period: days(365), harmonics: 2, averaging: days(30) });
  });
  it('by the fit of a probe', () => {
    const wanted = [{ day, depth: metres(1) }];
    const options = { period: days(365), harmonics: 1, coverage: fraction(0.9), wanted };
    refuses<GroundProbe>(
      fitGroundProbe,
      groundProbeShape,
      { readings, ...options, diffusivity: loam, coldestDay: temperate.coldestDay },
      { more: [{ readings, ...options }] },
    );
  });
  it('by the methods for diffusivity', () => {
    const period = days(365);
    const amplitudes = [0.5, 1.5].map((depth) => ({ depth: metres(depth), amplitude: kelvinDifference(10 - 3 * depth) }));
    refuses<AmplitudesInput>(diffusivityFromAmplitudes, amplitudesInputShape, { amplitudes, amplitudeError: kelvinDifference(0.3), period });
    const arrivals = [0.5, 1.5].map((depth) => ({ depth: metres(depth), day: dayOfYear(30 + 20 * depth) }));
    refuses<LagsInput>(diffusivityFromLags, lagsInputShape, { arrivals, arrivalError: days(2), period });
    const probes = [
      { depth: metres(0.5), quarterly: [1.3, 5.6, 18.7, 14.4].map((read) => celsius(read)) },
      { depth: metres(1.5), quarterly: [5.9, 5.0, 14.1, 15.0].map((read) => celsius(read)) },
    ];
    refuses<QuartersInput>(diffusivityFromQuarters, quartersInputShape, { probes, readingDeviation: kelvinDifference(0.3), period });
  });
  it('by the planner of a probe', () => {
    const expected = { wave: temperate, diffusivity: loam, readingDeviation: kelvinDifference(1) };
    const flags = { diffusivityKnown: false, coldestDayKnown: false };
    const probeDepths = [metres(0.5), metres(1.5)];
    const readingDays = [20, 80, 140, 200].map((each) => dayOfYear(each));
    refuses<ProbeErrorsInput>(probeErrors, probeErrorsInputShape, { ...expected, ...flags, probeDepths, readingDays });
    refuses<GroundProbePlanInput>(planGroundProbe, groundProbePlanInputShape, {
      ...expected,
      ...flags,
      probeDepths,
      start: day,
      interval: days(30),
      longestTime: days(400),
      wanted: {
        meanError: kelvinDifference(0.5),
        amplitudeError: kelvinDifference(2),
        coldestDayError: days(10),
        diffusivityError: squareMetresPerDay(0.04),
      },
    });
  });
});
