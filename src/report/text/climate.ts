import type { ClimateFindingValues, WeatherColumnName } from '../../findings/climate.js';
import { days } from '../page/layout.js';
import { type FindingTexts, whole } from './finding-texts.js';
import { groundTemperatureTexts } from './ground-temperature.js';

/** A difference with its sign; nothing has none. */
const signed = (difference: string): string => (/^(?:−|0(?:\.0+)?(?!\S))/u.test(difference) ? difference : `+${difference}`);

/** Columns of weather files in words. */
const COLUMN_WORDS: Readonly<Record<WeatherColumnName, string>> = {
  dryBulb: 'dry bulb',
  dewPoint: 'dew point',
  relativeHumidity: 'relative humidity',
  pressure: 'pressure',
  extraterrestrialHorizontal: 'extraterrestrial radiation on the level',
  extraterrestrialNormal: 'extraterrestrial radiation facing the sun',
  horizontalInfrared: 'infrared radiation of the sky',
  globalHorizontal: 'global radiation',
  directNormal: 'direct radiation',
  diffuseHorizontal: 'diffuse radiation',
  globalIlluminance: 'global illuminance',
  directNormalIlluminance: 'direct illuminance',
  diffuseIlluminance: 'diffuse illuminance',
  zenithLuminance: 'luminance of the zenith',
  windDirection: 'wind direction',
  windSpeed: 'wind speed',
  totalSkyCover: 'sky cover',
  opaqueSkyCover: 'opaque sky cover',
  visibility: 'visibility',
  ceilingHeight: 'height of clouds',
  presentWeatherObservation: 'observation of weather',
  precipitableWater: 'water in the air',
  aerosolOpticalDepth: 'optical depth of aerosol',
  snowDepth: 'depth of snow',
  daysSinceSnow: 'days since snow',
  albedo: 'albedo',
  liquidPrecipitation: 'rain',
  liquidPrecipitationTime: 'time of rain',
};

/** No more columns than this are named in a sentence. */
const MOST_NAMED = 12;

function inWords(columns: readonly WeatherColumnName[]): string {
  if (columns.length === 0) return 'no column';
  const named = columns.slice(0, MOST_NAMED).map((column) => COLUMN_WORDS[column]);
  return columns.length > MOST_NAMED ? `${named.join(', ')} and ${whole(columns.length - MOST_NAMED)} more` : named.join(', ');
}

/** Texts of the findings of the climate room. */
export const climateFindingTexts: FindingTexts<ClimateFindingValues> = {
  ...groundTemperatureTexts,
  'climate-fit-weak': ({ residualDeviation, amplitude }, show) =>
    `The monthly means stray by ${show('temperature difference', residualDeviation)} from a wave with an amplitude of ` +
    `${show('temperature difference', amplitude)}. Check them for a wrong month or unit; otherwise take the ground temperature as a guide only.`,
  'coldest-day-vague': ({ coldestDay, standardError, amplitude }, show) =>
    `The year swings by ${show('temperature difference', amplitude)} about its mean, too little or too unevenly to tell its coldest day: ` +
    `${show('day of year', coldestDay)} with a standard error of ${days(standardError)}.`,
  'coldest-day-odd': ({ coldestDay }, show) =>
    `The surface is said to be coldest around ${show('day of year', coldestDay)}, which is winter in neither hemisphere. ` +
    `Is it the warmest day, or the day on which the mean is passed?`,
  'amplitude-large': ({ amplitude, usual }, show) =>
    `An amplitude of ${show('temperature difference', amplitude)} is more than the ${show('temperature difference', usual)} that nearly all places ` +
    `stay below. Amplitude is half of the swing from the coldest to the warmest day.`,
  'ground-frozen-all-year': ({ mean }, show) =>
    `With a surface mean of ${show('temperature', mean)} the ground stays frozen below the layer that thaws in summer. ` +
    `This computation has no lasting frost in it; a loop here is a matter for a specialist.`,
  'surface-offsets-assumed': ({ meanOffset, meanOffsetLow, meanOffsetHigh, amplitudeRatio, lag }, show) =>
    `The ground surface was derived from the air: its mean lies ${signed(show('temperature difference', meanOffset))} from that of the air ` +
    `(${signed(show('temperature difference', meanOffsetLow))} to ${signed(show('temperature difference', meanOffsetHigh))}), its swing is ` +
    `${show('ratio', amplitudeRatio)} of that of the air, its coldest day is ${days(lag)} ${lag < 0 ? 'earlier' : 'later'}. Some or all of this is assumed from the cover; ` +
    `a year of readings in the ground would replace it.`,
  'design-temperatures-short-record': ({ record, longRecord }) =>
    `The design temperatures were sorted out of ${days(record)} of readings. The coldest and hottest hours of one year, above all of a typical year, are ` +
    `milder than those of ${days(longRecord)} or more; where the local code or a handbook gives design temperatures, take those.`,
  'frost-line-not-given': ({ depth }, show) =>
    `Frost is computed to reach ${show('length', depth)}. That is no frost line: how deep pipes, footings and water lines must lie the local ` +
    `building authority says. Ask it.`,
  'frost-deeper-than-code': ({ depth, frostLine }, show) =>
    `Frost is computed to reach ${show('length', depth)}, deeper than the local frost line of ${show('length', frostLine)}. The frost line stays what the code asks for; ` +
    `look at the cover, the soil and the winter that were taken, and at whatever beside the loop must not freeze.`,
  'frost-reaches-pipes': ({ depth, pipeDepth }, show) =>
    `Frost is computed to reach ${show('length', depth)}, below the shallowest pipe at ${show('length', pipeDepth)}. For a closed loop with antifreeze ` +
    `that is no fault, and the loop freezes the ground about itself anyway; keep it away from footings, paving and water lines, since freezing soil heaves.`,
  'pipes-above-frost-line': ({ pipeDepth, frostLine }, show) =>
    `The shallowest pipe lies at ${show('length', pipeDepth)}, above the local frost line of ${show('length', frostLine)}. Where the code asks for pipes ` +
    `below it, this needs the consent of the authority.`,
  'snow-relied-on': ({ meanGain, coefficient }, show) =>
    `The snow moves the yearly mean of the ground by ${signed(show('temperature difference', meanGain))}. Take the response of the loop below the same snow, ` +
    `which at its deepest lets ${show('surface coefficient', coefficient)} through, and look at the cold side: a winter without snow, or a swept yard, has none of this.`,
  'snow-in-mild-air': ({ month, outdoor }, show) =>
    `Snow is given for month ${whole(month)} of the year, with air of ${show('temperature', outdoor)}. It would not lie for long. ` +
    `Check the months, which begin with January, and the unit of the depth.`,
  'no-cold-winter-used': ({ winterSpread }, show) =>
    `The climate is that of a usual year. Winters differ: at one continental station by ${show('temperature difference', winterSpread)} ` +
    `(standard deviation of the mean of three months), and the ground follows. To plan for a cold one, ` +
    `ask for a design winter, or give colder months (in made weather a cold spell).`,
  'daily-swing-assumed': ({ smallest, largest, warmestHour }, show) =>
    `How the air goes through the day is not given. A swing of ${show('temperature difference', largest)} to either side of the day’s mean was assumed` +
    `${smallest < largest ? `, ${show('temperature difference', smallest)} in the month with least` : ''}, warmest ` +
    `${show('time', warmestHour)} after midnight. Hourly readings of a few clear and dull weeks would replace it.`,
  'season-spread-assumed': ({ season, returnPeriod, deviation }, show) =>
    `The hard ${season} is one in ${whole(returnPeriod)}, reckoned with ${season}s that differ by ${show('temperature difference', deviation)} (standard ` +
    `deviation of three months). How far they and the hours within them differ is assumed in part or whole, by how far the months swing. ` +
    `From daily means of ten years or more take the ${season === 'winter' ? 'coldest' : 'hottest'} ninety days of each ${season}; give how far these differ as seasonDeviation.`,
  'few-seasons-recorded': ({ season, seasonCount, returnPeriod, factor, further }, show) =>
    `The ${season} that comes once in ${whole(returnPeriod)} is told from ${whole(seasonCount)} of them. For so few it is taken ` +
    `${show('ratio', factor)} standard deviations from the mean, ${show('temperature difference', further)} further over three months than if many were known.`,
  'design-season-missed': ({ season, duration, wanted, reached }, show) =>
    `The hardest ${days(duration)} in a row of the made ${season} have ${show('temperature', reached)} on the mean, and ${show('temperature', wanted)} ` +
    `were wanted. Hours that spread widely reach further by themselves; months, spread and recorded ${season}s may also be of different years.`,
  'weather-hours-bridged': ({ bridgedHours, longestGap }, show) =>
    `The weather file has no air temperature in ${whole(bridgedHours)} ${bridgedHours === 1 ? 'hour' : 'hours'}, at most ${show('time', longestGap)} in a row. ` +
    `They were bridged by straight lines.`,
  'weather-values-missing': ({ columns }) =>
    `The weather file lacks values of ${inWords(columns)}, in some hours or in all. The hours are marked; air temperatures are complete.`,
  'weather-values-doubtful': ({ columns }) =>
    `Values of ${inWords(columns)} in the weather file lie outside what is possible in their unit, as if written in another one. They are given as ` +
    `they stand; air temperatures are not affected.`,
  'weather-leap-day-left-out': ({ mean }, show) =>
    `The weather file has a 29 February, with a mean of ${show('temperature', mean)}. It was left out, so that the year can repeat.`,
  'design-conditions-unread': ({ designSets, readSets }) =>
    `The header of the weather file says that it has ${whole(designSets)} ${designSets === 1 ? 'set' : 'sets'} of design temperatures; ` +
    `${readSets === 0 ? 'none' : whole(readSets)} could be read. They are given as written; ask a handbook or whoever works out the heat loss.`,
  'ground-header-means': ({ depth }, show) =>
    `The ground temperatures in the header of the weather file are not temperatures at a depth: what is labelled ${show('length', depth)} is the mean ` +
    `from the surface down to it, of a wave with one soil for all places and its coldest day set by a single hour. They are shown, not used.`,
  'ground-header-unknown': ({ depth, rebuiltWithin }, show) =>
    `The ground temperatures in the header of the weather file do not follow from its air by the usual rule (at ${show('length', depth)} they are off by ` +
    `up to ${show('temperature difference', rebuiltWithin)}). How they were made is not known; they are shown, not used.`,
  'ground-header-out-of-season': ({ surfaceColdestDay, airColdestDay, lag }, show) =>
    `By the header of the weather file the ground surface would be coldest around ${show('day of year', surfaceColdestDay)}; its air is coldest around ` +
    `${show('day of year', airColdestDay)}, ${days(Math.abs(lag))} ${lag < 0 ? 'later' : 'earlier'}. The header is out of season by more than a surface can be.`,
};
