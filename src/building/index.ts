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
