export { heatingBalanceInputShape, heatingBalancePoint, type HeatingBalanceInput } from './balance-point.js';
export {
  buildingInputShape,
  buildingSignaturesShape,
  readBuilding,
  type BuildingInput,
  type BuildingSignatures,
  type BuildingSignaturesResult,
  type DesignLoadInput,
} from './building-input.js';
export {
  energySignature,
  energySignatureShape,
  loadAt,
  signatureInputShape,
  type EnergySignature,
  type SignatureForm,
  type SignatureInput,
} from './signature.js';
export {
  erbsDegreeDays,
  erbsMonthShape,
  normalMonthShape,
  schoenauKehrigDegreeDays,
  type DegreeDayMonth,
  type ErbsMonth,
  type MonthDegreeDays,
  type NormalMonth,
} from './degree-days.js';
export { erbsSpread, erbsSpreadShape, type ErbsSpread } from './spread.js';
export type { Distribution } from './shortfall.js';
export {
  monthLoadShape,
  monthlyLoads,
  monthlyLoadsInputShape,
  monthlyLoadsShape,
  type MonthLoad,
  type MonthlyLoads,
  type MonthlyLoadsInput,
  type MonthlyLoadsResult,
} from './monthly-loads.js';
export {
  monthRunShape,
  runFractions,
  runFractionsInputShape,
  runFractionsShape,
  type MonthRun,
  type RunFractions,
  type RunFractionsInput,
  type RunFractionsResult,
} from './run-fractions.js';
export {
  binRun,
  binRunInputShape,
  binRunShape,
  weatherBinShape,
  type BinRun,
  type BinRunInput,
  type BinRunPart,
  type WeatherBin,
} from './bin-run.js';
export { degreeDayEnergy, equivalentFullLoadHours, type FullLoadHoursInput } from './full-load-hours.js';
export { hourlyLoads, type HourlyLoads, type HourlyLoadsInput, type HourlyModeLoads } from './hourly-loads.js';
export { coldWaterMonths, coldWaterShape, type ColdWater } from './cold-water.js';
export { burchChristensenColdWater } from './cold-water-from-air.js';
export { MEDIUM_TAPPING_SHARES } from './hot-water.data.js';
export { hotWaterInputShape, type AbsentDays, type HotWaterDraw, type HotWaterInput } from './hot-water-input.js';
export { hotWaterDemand, type HotWaterDemand, type HotWaterMonth } from './hot-water-demand.js';
export { hotWaterPriority, type HotWaterPriority, type HotWaterPriorityInput, type UnitDuty } from './hot-water-priority.js';
export type { PowerSeries } from './power-series.js';
export { hotWaterGroundHeat, hotWaterGroundInputShape, hotWaterGroundShape } from './hot-water-ground.js';
export type { HotWaterGround, HotWaterGroundInput, HotWaterGroundMonth, HotWaterGroundResult } from './hot-water-ground.js';
export { heatFraction, heatFractionInputShape, type HeatFractionInput } from './heat-fraction.js';
export { unitFullLoadHours, unitFullLoadHoursShape, unitFullLoadInputShape } from './unit-full-load-hours.js';
export type { UnitFullLoadHours, UnitFullLoadInput } from './unit-full-load-hours.js';
export { fitEnergySignature } from './fit-energy-signature.js';
export { fittedSignatureShape, signatureFitInputShape } from './fitted-signature.js';
export type { FittedPeriod, FittedSignature, FittedSignatureResult, SignatureErrors, SignatureFitInput } from './fitted-signature.js';
export { meterPeriodShape, periodWeatherShape, usefulHeatShape } from './meter-readings.js';
export type { DegreeDaysOnBase, MeterPeriod, MeterReading, PeriodWeather, UsefulHeat } from './meter-readings.js';
export { HEATER_NAMES, type HeaterName } from './heaters.data.js';
export { degreeDayFuel, degreeDayFuelInputShape, type DegreeDayFuelInput } from './degree-day-fuel.js';
export { dailyExtremeDegreeDays, dailyExtremeInputShape, type DailyExtremeInput, type DailyExtremeRule } from './daily-extreme-degree-days.js';
export { heatingDayDegreeDays, heatingDayDegreeDaysShape, heatingDayInputShape } from './heating-day-degree-days.js';
export type { HeatingDayDegreeDays, HeatingDayInput } from './heating-day-degree-days.js';
export { weatherBins, type DayHours, type PartedBin, type WeatherBinsInput } from './weather-bins.js';
export { closedFormBins, closedFormBinsInputShape, type ClosedFormBin, type ClosedFormBinsInput } from './closed-form-bins.js';
export { dayNightRun, dayNightRunInputShape, dayNightRunShape, type DayNightRun, type DayNightRunInput } from './day-night-run.js';
export { closedFormErrors, closedFormErrorsShape, type ClosedFormErrors } from './closed-form-errors.js';
export {
  monthBalanceShape,
  monthlyBalancePoints,
  monthlyGainsInputShape,
  type MonthBalance,
  type MonthlyGainsInput,
} from './monthly-balance-points.js';
export { HEAT_CAPACITY_CLASSES, type HeatCapacityClass } from './heat-capacity-classes.data.js';
export { houseTimeConstant, houseTimeConstantInputShape, type HouseTimeConstantInput } from './house-time-constant.js';
export { setback } from './setback.js';
export { setbackInputShape, setbackShape, type Setback, type SetbackInput, type SetbackResult } from './setback-result.js';
