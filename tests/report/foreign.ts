import type { UnitSystem } from '../../src/report/index.js';

/** Units that the reader did not ask for. A nominal pipe size is a name: it keeps the unit of its series. */
export const FOREIGN: Readonly<Record<UnitSystem, RegExp>> = {
  metric: /[\d ](?:ft|psi|gal|gpm|Btu|lb|tons?|feet|inch(?:es)?)\b|°F/g,
  us: /\d (?:m|mm|cm|km|L|K|kPa|Pa|kg|kW|L\/s|m\/s|m[²³]|MJ)(?![\w·])|W\/\(?m|°C|kPa|m²|m³|\bkelvin\b|\b(?:milli|centi)?met(?:re|er)s\b|\blit(?:re|er)s\b/g,
};
