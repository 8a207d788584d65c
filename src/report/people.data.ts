import type { Kind, UnitOf } from '../units/index.js';

/** How a kind is written for a person: in which unit, with how many decimals, and how the unit is spelled. */
export interface Written<K extends Kind = Kind> {
  readonly unit: UnitOf<K>;
  readonly decimals: number;
  readonly spelled: string;
}

type PeopleTable = { readonly [K in Kind]: { readonly metric: Written<K>; readonly us: Written<K> } };

const write = <U extends string>(
  unit: U,
  decimals: number,
  spelled: string,
): { readonly unit: U; readonly decimals: number; readonly spelled: string } => ({
  unit,
  decimals,
  spelled,
});

const PERCENT = { metric: write('%', 0, '%'), us: write('%', 0, '%') } as const;
const RESISTANCE = { metric: write('m.K/W', 3, 'm·K/W'), us: write('h.ft.degF/Btu', 3, 'h·ft·°F/Btu') } as const;
const LINE_HEAT = { metric: write('W/m', 1, 'W/m'), us: write('Btu/(h.ft)', 1, 'Btu/(h·ft)') } as const;

/** Units and decimals for people. A document keeps every digit; a page keeps what the reader can use. */
export const PEOPLE: PeopleTable = {
  length: { metric: write('m', 2, 'm'), us: write('ft', 1, 'ft') },
  'pipe length': { metric: write('m', 0, 'm'), us: write('ft', 0, 'ft') },
  'trench length': { metric: write('m', 1, 'm'), us: write('ft', 0, 'ft') },
  diameter: { metric: write('mm', 1, 'mm'), us: write('in', 3, 'in') },
  area: { metric: write('m2', 0, 'm²'), us: write('ft2', 0, 'ft²') },
  volume: { metric: write('L', 0, 'L'), us: write('gal', 1, 'gal') },
  'volume per length': { metric: write('L/m', 3, 'L/m'), us: write('gal/100ft', 2, 'gal/100 ft') },
  mass: { metric: write('kg', 1, 'kg'), us: write('lb', 1, 'lb') },
  time: { metric: write('h', 0, 'h'), us: write('h', 0, 'h') },
  'day of year': { metric: write('d', 0, ''), us: write('d', 0, '') },
  temperature: { metric: write('degC', 1, '°C'), us: write('degF', 1, '°F') },
  'temperature difference': { metric: write('K', 1, 'K'), us: write('degF', 1, '°F') },
  'degree days': { metric: write('K.d', 0, 'K·d'), us: write('degF.d', 0, '°F·d') },
  energy: { metric: write('kWh', 0, 'kWh'), us: write('MMBtu', 1, 'million Btu') },
  'electric energy': { metric: write('kWh', 0, 'kWh'), us: write('kWh', 0, 'kWh') },
  power: { metric: write('kW', 2, 'kW'), us: write('Btu/h', 0, 'Btu/h') },
  'electric power': { metric: write('W', 0, 'W'), us: write('W', 0, 'W') },
  'heat flux': { metric: write('W/m2', 1, 'W/m²'), us: write('Btu/(h.ft2)', 1, 'Btu/(h·ft²)') },
  'heat per pipe length': LINE_HEAT,
  'heat per trench length': LINE_HEAT,
  conductance: { metric: write('W/K', 0, 'W/K'), us: write('Btu/(h.degF)', 0, 'Btu/(h·°F)') },
  conductivity: { metric: write('W/(m.K)', 2, 'W/(m·K)'), us: write('Btu/(h.ft.degF)', 2, 'Btu/(h·ft·°F)') },
  diffusivity: { metric: write('mm2/s', 2, 'mm²/s'), us: write('ft2/d', 2, 'ft²/day') },
  'kinematic viscosity': { metric: write('mm2/s', 2, 'mm²/s'), us: write('cSt', 2, 'cSt') },
  'dynamic viscosity': { metric: write('mPa.s', 2, 'mPa·s'), us: write('cP', 2, 'cP') },
  'heat capacity': { metric: write('MJ/(m3.K)', 2, 'MJ/(m³·K)'), us: write('Btu/(ft3.degF)', 1, 'Btu/(ft³·°F)') },
  'specific heat': { metric: write('J/(kg.K)', 0, 'J/(kg·K)'), us: write('Btu/(lb.degF)', 3, 'Btu/(lb·°F)') },
  'latent heat': { metric: write('MJ/m3', 0, 'MJ/m³'), us: write('Btu/ft3', 0, 'Btu/ft³') },
  density: { metric: write('kg/m3', 0, 'kg/m³'), us: write('lb/ft3', 0, 'lb/ft³') },
  'pipe resistance': RESISTANCE,
  'trench resistance': RESISTANCE,
  'surface resistance': { metric: write('m2.K/W', 2, 'm²·K/W'), us: write('h.ft2.degF/Btu', 1, 'h·ft²·°F/Btu') },
  'surface coefficient': { metric: write('W/(m2.K)', 1, 'W/(m²·K)'), us: write('Btu/(h.ft2.degF)', 1, 'Btu/(h·ft²·°F)') },
  pressure: { metric: write('kPa', 1, 'kPa'), us: write('psi', 1, 'psi') },
  'pressure gradient': { metric: write('Pa/m', 0, 'Pa/m'), us: write('ftH2O/100ft', 2, 'ft of water per 100 ft') },
  'force per length': { metric: write('N/m', 1, 'N/m'), us: write('lbf/ft', 2, 'lb of force per ft') },
  head: { metric: write('m', 1, 'm of head'), us: write('ft', 1, 'ft of head') },
  flow: { metric: write('L/s', 2, 'L/s'), us: write('gpm', 1, 'gpm') },
  'mass flow': { metric: write('kg/s', 2, 'kg/s'), us: write('lb/h', 0, 'lb/h') },
  'flow per power': { metric: write('L/(s.kW)', 3, 'L/s per kW'), us: write('gpm/ton', 1, 'gpm per ton') },
  'length per power': { metric: write('m/kW', 0, 'm per kW'), us: write('ft/ton', 0, 'ft per ton') },
  velocity: { metric: write('m/s', 2, 'm/s'), us: write('ft/s', 1, 'ft/s') },
  money: { metric: write('cur', 0, ''), us: write('cur', 0, '') },
  'energy price': { metric: write('cur/kWh', 3, 'per kWh'), us: write('cur/kWh', 3, 'per kWh') },
  'power price': { metric: write('cur/kW', 2, 'per kW'), us: write('cur/kW', 2, 'per kW') },
  'volume price': { metric: write('cur/L', 3, 'per L'), us: write('cur/gal', 2, 'per gal') },
  'mass price': { metric: write('cur/kg', 3, 'per kg'), us: write('cur/lb', 3, 'per lb') },
  'length price': { metric: write('cur/m', 2, 'per m'), us: write('cur/ft', 2, 'per ft') },
  'yearly rate': { metric: write('%/a', 1, '% a year'), us: write('%/a', 1, '% a year') },
  'emission factor': { metric: write('kg/kWh', 3, 'kg per kWh'), us: write('lb/MWh', 0, 'lb per MWh') },
  'heating value by volume': { metric: write('kWh/L', 2, 'kWh per L'), us: write('Btu/gal', 0, 'Btu per gal') },
  'heating value by mass': { metric: write('kWh/kg', 2, 'kWh per kg'), us: write('Btu/lb', 0, 'Btu per lb') },
  'electric current': { metric: write('A', 0, 'A'), us: write('A', 0, 'A') },
  voltage: { metric: write('V', 0, 'V'), us: write('V', 0, 'V') },
  'moisture on dry basis': PERCENT,
  'moisture on wet basis': PERCENT,
  'volumetric water': PERCENT,
  'mass fraction': PERCENT,
  'volume fraction': PERCENT,
  'run fraction': PERCENT,
  fraction: PERCENT,
  ratio: { metric: write('1', 2, ''), us: write('1', 2, '') },
};
