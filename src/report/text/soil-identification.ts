import type { SoilIdentificationValues } from '../../findings/soil-identification.js';
import { type FindingTexts, whole } from './finding-texts.js';

/** Texts of the findings that identifying a soil raises. */
export const soilIdentificationTexts: FindingTexts<SoilIdentificationValues> = {
  'fine-earth-scaled': ({ sum }, show) =>
    `Sand, silt and clay add up to ${show('mass fraction', sum)}, not quite or more than the whole; they were scaled to it in proportion.`,
  'plasticity-beyond-soils': ({ liquidLimit, plasticityIndex, uLine }, show) =>
    `A plasticity index of ${show('moisture on dry basis', plasticityIndex)} at a liquid limit of ${show('moisture on dry basis', liquidLimit)} is beyond ` +
    `what natural soils have (${show('moisture on dry basis', uLine)}). Ask the laboratory to repeat both limits.`,
  'grain-too-coarse-for-stokes': ({ reynolds }, show) =>
    `Grains of this size sink with a Reynolds number of ${show('ratio', reynolds)}, somewhat slower than Stokes’ law has it. Sieve grains as coarse as this.`,
  'jar-layers-thin': () =>
    `The layers in the jar are so thin that reading them is the greater error. Fill a taller jar to a third with soil and read it again.`,
  'jar-reading-off-size': ({ sizeRatio }, show) =>
    `The jar was read when grains of ${show('ratio', sizeRatio)} times the size had settled that parts its two layers. ` +
    (sizeRatio > 1 ? 'Read later; what was marked there holds too little.' : 'Read earlier; what was marked there holds too much.'),
  'field-signs-disagree': ({ signsAgainst }) =>
    `No group of fines has all the signs that were found; ${whole(signsAgainst)} of them ${signsAgainst === 1 ? 'speaks' : 'speak'} against the nearest. Try them again on ` +
    `another lump without sand, or take the soil as a mixture.`,
  'moisture-against-word': ({ moistureWord, moisture }, show) =>
    `The soil was called ${moistureWord}, and its water is given as ${show('moisture on dry basis', moisture)} on dry basis: one of both is wrong. ` +
    `The one that conducts worse was taken. Look at the soil again, and weigh a sample that was kept sealed.`,
};
