/** What a weather file says of each hour, in the order of the columns of an EPW row. */
export type WeatherColumnName =
  | 'dryBulb'
  | 'dewPoint'
  | 'relativeHumidity'
  | 'pressure'
  | 'extraterrestrialHorizontal'
  | 'extraterrestrialNormal'
  | 'horizontalInfrared'
  | 'globalHorizontal'
  | 'directNormal'
  | 'diffuseHorizontal'
  | 'globalIlluminance'
  | 'directNormalIlluminance'
  | 'diffuseIlluminance'
  | 'zenithLuminance'
  | 'windDirection'
  | 'windSpeed'
  | 'totalSkyCover'
  | 'opaqueSkyCover'
  | 'visibility'
  | 'ceilingHeight'
  | 'presentWeatherObservation'
  | 'precipitableWater'
  | 'aerosolOpticalDepth'
  | 'snowDepth'
  | 'daysSinceSnow'
  | 'albedo'
  | 'liquidPrecipitation'
  | 'liquidPrecipitationTime';

/** The unit of a column. */
export type WeatherUnit = 'degC' | '%' | 'Pa' | 'Wh/m2' | 'lx' | 'cd/m2' | 'deg' | 'm/s' | 'tenths' | 'km' | 'm' | 'mm' | 'cm' | 'd' | 'h' | '1';

/** What a column holds, whatever the file. */
export interface WeatherQuantity {
  readonly unit: WeatherUnit;
  /** Values below and above are doubtful. */
  readonly lowest: number;
  readonly highest: number;
}

const RADIATION = { unit: 'Wh/m2', lowest: 0, highest: 1500 } as const;
const ILLUMINANCE = { unit: 'lx', lowest: 0, highest: 200_000 } as const;
const COVER = { unit: 'tenths', lowest: 0, highest: 10 } as const;

/**
 * Units and ranges. Temperatures, humidity, pressure, cover and wind: `epwDataDictionary`. The others are wide limits of what the atmosphere does
 * (`common practice`), there to catch a writer's slip of units: the sun gives 1.41 kW/m2 above the air, a column of air holds less than 0.1 m of water.
 */
export const WEATHER_QUANTITIES: Readonly<Record<WeatherColumnName, WeatherQuantity>> = {
  // The dictionary allows 70 degC; there is no such weather, and nothing else here takes it.
  dryBulb: { unit: 'degC', lowest: -70, highest: 65 },
  dewPoint: { unit: 'degC', lowest: -70, highest: 70 },
  relativeHumidity: { unit: '%', lowest: 0, highest: 110 },
  pressure: { unit: 'Pa', lowest: 31_000, highest: 120_000 },
  extraterrestrialHorizontal: RADIATION,
  extraterrestrialNormal: RADIATION,
  horizontalInfrared: RADIATION,
  globalHorizontal: RADIATION,
  directNormal: RADIATION,
  diffuseHorizontal: RADIATION,
  globalIlluminance: ILLUMINANCE,
  directNormalIlluminance: ILLUMINANCE,
  diffuseIlluminance: ILLUMINANCE,
  zenithLuminance: { unit: 'cd/m2', lowest: 0, highest: 100_000 },
  windDirection: { unit: 'deg', lowest: 0, highest: 360 },
  windSpeed: { unit: 'm/s', lowest: 0, highest: 40 },
  totalSkyCover: COVER,
  opaqueSkyCover: COVER,
  visibility: { unit: 'km', lowest: 0, highest: 500 },
  ceilingHeight: { unit: 'm', lowest: 0, highest: 88_888 },
  presentWeatherObservation: { unit: '1', lowest: 0, highest: 9 },
  precipitableWater: { unit: 'mm', lowest: 0, highest: 100 },
  aerosolOpticalDepth: { unit: '1', lowest: 0, highest: 10 },
  snowDepth: { unit: 'cm', lowest: 0, highest: 998 },
  daysSinceSnow: { unit: 'd', lowest: 0, highest: 98 },
  albedo: { unit: '1', lowest: 0, highest: 1 },
  liquidPrecipitation: { unit: 'mm', lowest: 0, highest: 500 },
  liquidPrecipitationTime: { unit: 'h', lowest: 0, highest: 24 },
};

/** One column of an EPW row: where it stands, from 0, and the code from which on a value counts as missing. */
export interface EpwColumn {
  readonly name: WeatherColumnName;
  readonly cell: number;
  readonly missingFrom: number;
}

/** Fields and codes of `epwDataDictionary`. */
export const EPW_COLUMNS: readonly EpwColumn[] = [
  { name: 'dryBulb', cell: 6, missingFrom: 99.9 },
  { name: 'dewPoint', cell: 7, missingFrom: 99.9 },
  { name: 'relativeHumidity', cell: 8, missingFrom: 999 },
  { name: 'pressure', cell: 9, missingFrom: 999_999 },
  { name: 'extraterrestrialHorizontal', cell: 10, missingFrom: 9999 },
  { name: 'extraterrestrialNormal', cell: 11, missingFrom: 9999 },
  { name: 'horizontalInfrared', cell: 12, missingFrom: 9999 },
  { name: 'globalHorizontal', cell: 13, missingFrom: 9999 },
  { name: 'directNormal', cell: 14, missingFrom: 9999 },
  { name: 'diffuseHorizontal', cell: 15, missingFrom: 9999 },
  { name: 'globalIlluminance', cell: 16, missingFrom: 999_900 },
  { name: 'directNormalIlluminance', cell: 17, missingFrom: 999_900 },
  { name: 'diffuseIlluminance', cell: 18, missingFrom: 999_900 },
  { name: 'zenithLuminance', cell: 19, missingFrom: 9999 },
  { name: 'windDirection', cell: 20, missingFrom: 999 },
  { name: 'windSpeed', cell: 21, missingFrom: 999 },
  { name: 'totalSkyCover', cell: 22, missingFrom: 99 },
  { name: 'opaqueSkyCover', cell: 23, missingFrom: 99 },
  { name: 'visibility', cell: 24, missingFrom: 9999 },
  { name: 'ceilingHeight', cell: 25, missingFrom: 99_999 },
  { name: 'presentWeatherObservation', cell: 26, missingFrom: 9 },
  { name: 'precipitableWater', cell: 28, missingFrom: 999 },
  { name: 'aerosolOpticalDepth', cell: 29, missingFrom: 0.999 },
  { name: 'snowDepth', cell: 30, missingFrom: 999 },
  { name: 'daysSinceSnow', cell: 31, missingFrom: 99 },
  { name: 'albedo', cell: 32, missingFrom: 999 },
  { name: 'liquidPrecipitation', cell: 33, missingFrom: 999 },
  { name: 'liquidPrecipitationTime', cell: 34, missingFrom: 99 },
];

/** One column of a TMY3 file: its heading, and what its numbers are multiplied and divided by to be in the unit of the quantity. */
export interface Tmy3Column {
  readonly name: WeatherColumnName;
  readonly heading: string;
  readonly times?: number;
  readonly per?: number;
}

/**
 * Headings of `tmy3Greensboro`. Its heading says lx and cd/m2, but 1013 W/m2 of sun come with 1055 there, where daylight has about 100 lm/W: they are
 * hundreds of lux, and tens of cd/m2 for the zenith.
 */
export const TMY3_COLUMNS: readonly Tmy3Column[] = [
  { name: 'dryBulb', heading: 'Dry-bulb (C)' },
  { name: 'dewPoint', heading: 'Dew-point (C)' },
  { name: 'relativeHumidity', heading: 'RHum (%)' },
  { name: 'pressure', heading: 'Pressure (mbar)', times: 100 },
  { name: 'extraterrestrialHorizontal', heading: 'ETR (W/m^2)' },
  { name: 'extraterrestrialNormal', heading: 'ETRN (W/m^2)' },
  { name: 'globalHorizontal', heading: 'GHI (W/m^2)' },
  { name: 'directNormal', heading: 'DNI (W/m^2)' },
  { name: 'diffuseHorizontal', heading: 'DHI (W/m^2)' },
  { name: 'globalIlluminance', heading: 'GH illum (lx)', times: 100 },
  { name: 'directNormalIlluminance', heading: 'DN illum (lx)', times: 100 },
  { name: 'diffuseIlluminance', heading: 'DH illum (lx)', times: 100 },
  { name: 'zenithLuminance', heading: 'Zenith lum (cd/m^2)', times: 10 },
  { name: 'windDirection', heading: 'Wdir (degrees)' },
  { name: 'windSpeed', heading: 'Wspd (m/s)' },
  { name: 'totalSkyCover', heading: 'TotCld (tenths)' },
  { name: 'opaqueSkyCover', heading: 'OpqCld (tenths)' },
  { name: 'visibility', heading: 'Hvis (m)', per: 1000 },
  { name: 'ceilingHeight', heading: 'CeilHgt (m)' },
  { name: 'precipitableWater', heading: 'Pwat (cm)', times: 10 },
  { name: 'aerosolOpticalDepth', heading: 'AOD (unitless)' },
  { name: 'albedo', heading: 'Alb (unitless)' },
  { name: 'liquidPrecipitation', heading: 'Lprecip depth (mm)' },
  { name: 'liquidPrecipitationTime', heading: 'Lprecip quantity (hr)' },
];

/** A value of a TMY3 file at or below this is missing. */
export const TMY3_MISSING = -9900;
