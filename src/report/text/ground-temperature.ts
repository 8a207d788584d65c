import type { GroundTemperatureFindingValues } from '../../findings/ground-temperature.js';
import { days } from '../page/layout.js';
import type { FindingTexts } from './finding-texts.js';

/** How a diffusivity was taken, and what that rests on. */
const METHODS: Readonly<Record<GroundTemperatureFindingValues['diffusivity-method-weak']['method'], string>> = {
  amplitudes:
    'The diffusivity was taken from how the swing shrinks with depth. A cold snap or a hot week widens the upper swing and makes the ground look less ' +
    'conductive than it is, and snow or frost near the surface changes it as well.',
  lags:
    'The diffusivity was taken from how late the wave comes at depth. An extreme is flat, so its day is hard to read, and the diffusivity goes with the ' +
    'square of the days between.',
  arctangent:
    'The diffusivity was taken from the angle between two depths by four readings each. Eight readings carry all their noise into it, and depths more than ' +
    'half a wavelength apart are taken for nearer ones.',
  logarithm:
    'The diffusivity was taken from the ratio of two swings by four readings each. Eight readings carry all their noise into it, most of all the deeper ' +
    'ones, whose swing is small.',
};

/** Texts of the findings that readings of the air or in the ground raise. */
export const groundTemperatureTexts: FindingTexts<GroundTemperatureFindingValues> = {
  'readings-leave-seasons-out': ({ longestGap }) =>
    `No reading falls into ${days(longestGap)} of the year. Mean and amplitude can hardly be told apart without the seasons that are missing; ` +
    `read on through half a year at least, or take the coldest day from the air and the diffusivity from the soil.`,
  'second-harmonic-vague': ({ amplitude, secondHarmonicError }, show) =>
    `The semi-annual part of ${show('temperature difference', amplitude)} has a standard error of ${show('temperature difference', secondHarmonicError)}: ` +
    `it may be chance. One sine is the safer description.`,
  'probe-fit-vague': ({ meanLow, meanHigh, degreesOfFreedom }, show) =>
    `The readings leave the mean of the ground anywhere from ${show('temperature', meanLow)} to ${show('temperature', meanHigh)} ` +
    `(degrees of freedom: ${String(degreesOfFreedom)}). Do not size a loop on the value between; more readings through the year narrow it.`,
  'probe-depths-close': ({ depthsApart }, show) =>
    `The depths read lie ${show('length', depthsApart)} apart at most. Too little of the wave is lost between them to tell the diffusivity; ` +
    `take it from the soil, or read deeper as well.`,
  'probe-plan-out-of-reach': ({ longestTime }) =>
    `No choice of the depths gives the wanted certainty within ${days(longestTime)}. Allow more time or depth, ask for less, or take the diffusivity ` +
    `from the soil and the coldest day from the air.`,
  'probe-depth-disagrees': ({ depth, meanResidual }, show) =>
    `At ${show('length', depth)} the readings lie ${show('temperature difference', Math.abs(meanResidual))} ${meanResidual < 0 ? 'below' : 'above'} the wave ` +
    `that fits all depths. A layer, water, snow or a depth measured wrong does this; the fit is of even ground.`,
  'diffusivity-unlikely': ({ diffusivity, usualLow, usualHigh }, show) =>
    `A diffusivity of ${show('diffusivity', diffusivity)} lies outside ${show('diffusivity', usualLow)} to ${show('diffusivity', usualHigh)}, where nearly all ` +
    `soils are. Depths too close together, snow, or moving water are likelier than such a soil.`,
  'diffusivity-method-weak': ({ method, relativeError }, show) =>
    `${METHODS[method]} The readings leave it a standard error of ${show('ratio', relativeError)} times itself; a fit of all readings does better.`,
  'diffusivities-disagree': ({ diffusivity, otherDiffusivity }, show) =>
    `Phase and swing give different diffusivities: ${show('diffusivity', diffusivity)} and ${show('diffusivity', otherDiffusivity)}. ` +
    `The ground is not even, or a reading is wrong; do not take the one that pleases.`,
};
