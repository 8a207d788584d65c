import type { Conductivity, DayOfYear, Density, Length, Ratio, SpecificHeat, Temperature, TemperatureDifference, Time } from '../units/index.js';
import type { ExceededTemperature } from './design-temperatures.js';

/** Where the weather of a file was. */
export interface WeatherPlace {
  /** City or station. */
  readonly city: string;
  /** State, province or region, as written. */
  readonly region: string;
  /** Country, as written; empty where the format has none. */
  readonly country: string;
  /** Where the file says that its data are from. */
  readonly origin: string;
  /** Number of the station, as written. */
  readonly station: string;
  /** Degrees north of the equator, −90 to 90 [1]. */
  readonly latitude: Ratio;
  /** Degrees east of Greenwich, −180 to 180 [1]. */
  readonly longitude: Ratio;
  /** How far standard time is ahead of universal time, −12 to 14 hours [s]. */
  readonly aheadOfUniversalTime: Time;
  /** Height above the sea, −1000 to 9999.9 [m]. */
  readonly elevation: Length;
}

/** Design temperatures out of a long record, as the header of a file gives them; to be preferred to what the file's own hours give. */
export interface WeatherDesignConditions {
  /** Handbook they are from, as written. */
  readonly handbook: string;
  /** Coldest month, 1 to 12; absent where not given. */
  readonly coldestMonth?: number;
  /** Exceeded in 99.6 and 99 % of the year's hours; empty where not given [degC]. */
  readonly heating: readonly ExceededTemperature[];
  /** Hottest month, 1 to 12; absent where not given. */
  readonly hottestMonth?: number;
  /** Swing from the lowest to the highest temperature of a day in the hottest month; absent where not given [K]. */
  readonly dailyRange?: TemperatureDifference;
  /** Exceeded in 0.4, 1 and 2 % of the year's hours; empty where not given [degC]. */
  readonly cooling: readonly ExceededTemperature[];
  /** All of the record as written, since its fields differ from one edition of the handbook to the next. */
  readonly written: readonly string[];
}

/** A week or season that a file calls typical or extreme. */
export interface WeatherPeriod {
  /** What it is, as written. */
  readonly title: string;
  /** Typical or extreme, as written. */
  readonly sort: string;
  /** Its first day, in a year of 365 days [d]. */
  readonly firstDay: DayOfYear;
  /** Its last day, itself included [d]. */
  readonly lastDay: DayOfYear;
}

/** A day that a file names. */
export interface WeatherHoliday {
  /** What it is called. */
  readonly title: string;
  /** When, as written: a date, or the like of the last Monday in May. */
  readonly date: string;
}

/** Ground temperatures as the header of a file gives them, at one depth. */
export interface PrintedGround {
  /** The depth they are labelled with [m]. */
  readonly depth: Length;
  /** Conductivity of the soil, where given [W/(m.K)]. */
  readonly conductivity?: Conductivity;
  /** Density of the soil, where given [kg/m3]. */
  readonly density?: Density;
  /** Specific heat of the soil, where given [J/(kg.K)]. */
  readonly specificHeat?: SpecificHeat;
  /** Twelve temperatures as printed, January first [degC]. */
  readonly monthlyMeans: readonly Temperature[];
}

/** What stands above the hours of a file. */
export interface WeatherHeader {
  /** Where the weather was. */
  readonly place: WeatherPlace;
  /** Design temperatures of handbooks. */
  readonly designConditions: readonly WeatherDesignConditions[];
  /** Weeks and seasons called typical or extreme. */
  readonly periods: readonly WeatherPeriod[];
  /** Whether the file says that it observes leap years. */
  readonly leapYearObserved: boolean;
  /** First and last day of daylight saving as written, empty where there is none; the hours are in standard time all the same. */
  readonly daylightSaving: readonly string[];
  /** Days the file names. */
  readonly holidays: readonly WeatherHoliday[];
  /** Comments, as written. */
  readonly comments: readonly string[];
  /** Day of the week the file begins with, as written; empty where the format has none. */
  readonly startWeekday: string;
}
