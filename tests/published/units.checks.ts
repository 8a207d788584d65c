import { factor, type Kind, KINDS } from '../../src/units/index.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';
import { caseChecks } from '../support/load-cases.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

/** The kind and the unit names under which a row of the table is carried; rows that no kind carries are left out and counted in the test. */
const CARRIED: Readonly<Record<string, readonly [kind: Kind, from: string, to: string]>> = {
  'length/in/m': ['length', 'in', 'm'],
  'length/ft/m': ['length', 'ft', 'm'],
  'length/yd/m': ['length', 'yd', 'm'],
  'area/in2/m2': ['area', 'in2', 'm2'],
  'area/ft2/m2': ['area', 'ft2', 'm2'],
  'area/yd2/m2': ['area', 'yd2', 'm2'],
  'area/acre (43560 ft2)/m2': ['area', 'acre', 'm2'],
  'area/ha/m2': ['area', 'ha', 'm2'],
  'volume/ft3/m3': ['volume', 'ft3', 'm3'],
  'volume/yd3/m3': ['volume', 'yd3', 'm3'],
  'volume/in3/m3': ['volume', 'in3', 'm3'],
  'volume/US gal/m3': ['volume', 'gal', 'm3'],
  'volume/imperial gal/m3': ['volume', 'imp-gal', 'm3'],
  'volume/US gal/L': ['volume', 'gal', 'L'],
  'mass/lb/kg': ['mass', 'lb', 'kg'],
  'mass/oz (avoirdupois)/kg': ['mass', 'oz', 'kg'],
  'mass/short ton (2000 lb)/kg': ['mass', 'short-ton', 'kg'],
  'density/lb/ft3/kg/m3': ['density', 'lb/ft3', 'kg/m3'],
  'density/lb/US gal/kg/m3': ['density', 'lb/gal', 'kg/m3'],
  'density/g/cm3/kg/m3': ['density', 'g/cm3', 'kg/m3'],
  'temperature difference/degF/K': ['temperature difference', 'degF', 'K'],
  'temperature difference/degR/K': ['temperature difference', 'degR', 'K'],
  'degree-days/degF*day/K*day': ['degree days', 'degF.d', 'K.d'],
  'energy/Btu_IT/J': ['energy', 'Btu', 'J'],
  'energy/kWh/J': ['energy', 'kWh', 'J'],
  'energy/kWh/Btu_IT': ['energy', 'kWh', 'Btu'],
  'energy/MMBtu_IT (1e6)/GJ': ['energy', 'MMBtu', 'GJ'],
  'energy/MMBtu_IT (1e6)/kWh': ['energy', 'MMBtu', 'kWh'],
  'energy/therm (EC/IT)/MJ': ['energy', 'therm', 'MJ'],
  'energy/ton-hour of refrigeration/kWh': ['energy', 'ton.h', 'kWh'],
  'power/Btu_IT/h/W': ['power', 'Btu/h', 'W'],
  'power/W/Btu_IT/h': ['power', 'W', 'Btu/h'],
  'power/kBtu/h (MBH)/kW': ['power', 'kBtu/h', 'kW'],
  'power/ton of refrigeration/kW': ['power', 'ton', 'kW'],
  'power/ton of refrigeration/Btu_IT/h': ['power', 'ton', 'Btu/h'],
  'power/horsepower (550 ft lbf/s)/W': ['electric power', 'hp', 'W'],
  'conductivity/Btu_IT/(h*ft*degF)/W/(m*K)': ['conductivity', 'Btu/(h.ft.degF)', 'W/(m.K)'],
  'conductivity/Btu_IT*in/(h*ft2*degF)/W/(m*K)': ['conductivity', 'Btu.in/(h.ft2.degF)', 'W/(m.K)'],
  'conductivity/W/(m*K)/Btu_IT/(h*ft*degF)': ['conductivity', 'W/(m.K)', 'Btu/(h.ft.degF)'],
  'conductivity/kcal_IT/(h*m*degC)/W/(m*K)': ['conductivity', 'kcal/(h.m.K)', 'W/(m.K)'],
  'diffusivity/ft2/h/m2/s': ['diffusivity', 'ft2/h', 'm2/s'],
  'diffusivity/ft2/day/m2/s': ['diffusivity', 'ft2/d', 'm2/s'],
  'diffusivity/m2/day/m2/s': ['diffusivity', 'm2/d', 'm2/s'],
  'diffusivity/cm2/s/m2/s': ['diffusivity', 'cm2/s', 'm2/s'],
  'diffusivity/mm2/s/m2/s': ['diffusivity', 'mm2/s', 'm2/s'],
  'diffusivity/ft2/h/ft2/day': ['diffusivity', 'ft2/h', 'ft2/d'],
  'thermal resistance per length/h*ft*degF/Btu_IT/m*K/W': ['pipe resistance', 'h.ft.degF/Btu', 'm.K/W'],
  'thermal resistance per length/m*K/W/h*ft*degF/Btu_IT': ['trench resistance', 'm.K/W', 'h.ft.degF/Btu'],
  'thermal resistance per area (R-value)/h*ft2*degF/Btu_IT/m2*K/W': ['surface resistance', 'h.ft2.degF/Btu', 'm2.K/W'],
  'film coefficient / U-value/Btu_IT/(h*ft2*degF)/W/(m2*K)': ['surface coefficient', 'Btu/(h.ft2.degF)', 'W/(m2.K)'],
  'heat loss coefficient/Btu_IT/(h*degF)/W/K': ['conductance', 'Btu/(h.degF)', 'W/K'],
  'heat flux/Btu_IT/(h*ft2)/W/m2': ['heat flux', 'Btu/(h.ft2)', 'W/m2'],
  'heat per length of pipe/trench/Btu_IT/(h*ft)/W/m': ['heat per pipe length', 'Btu/(h.ft)', 'W/m'],
  'heat per length of pipe/trench/W/ft/W/m': ['heat per trench length', 'W/ft', 'W/m'],
  'heat per area/W/ft2/W/m2': ['heat flux', 'W/ft2', 'W/m2'],
  'loop length ratio/ft/ton/m/kW': ['length per power', 'ft/ton', 'm/kW'],
  'specific heat (mass)/Btu_IT/(lb*degF)/J/(kg*K)': ['specific heat', 'Btu/(lb.degF)', 'J/(kg.K)'],
  'volumetric heat capacity/Btu_IT/(ft3*degF)/J/(m3*K)': ['heat capacity', 'Btu/(ft3.degF)', 'J/(m3.K)'],
  'dynamic viscosity/cP/Pa*s': ['dynamic viscosity', 'cP', 'Pa.s'],
  'dynamic viscosity/lb/(ft*h)/Pa*s': ['dynamic viscosity', 'lb/(ft.h)', 'Pa.s'],
  'dynamic viscosity/lb/(ft*s)/Pa*s': ['dynamic viscosity', 'lb/(ft.s)', 'Pa.s'],
  'kinematic viscosity/cSt/m2/s': ['kinematic viscosity', 'cSt', 'm2/s'],
  'kinematic viscosity/ft2/s/m2/s': ['kinematic viscosity', 'ft2/s', 'm2/s'],
  'pressure/psi/Pa': ['pressure', 'psi', 'Pa'],
  'pressure/psi/kPa': ['pressure', 'psi', 'kPa'],
  'pressure/bar/Pa': ['pressure', 'bar', 'Pa'],
  'pressure/atm/Pa': ['pressure', 'atm', 'Pa'],
  'pressure/mmHg (conventional)/Pa': ['pressure', 'mmHg', 'Pa'],
  'pressure/inHg (conventional)/Pa': ['pressure', 'inHg', 'Pa'],
  'head/ft of water (conventional 1000 kg/m3)/Pa': ['pressure', 'ftH2O', 'Pa'],
  'head/in of water (conventional 1000 kg/m3)/Pa': ['pressure', 'inH2O', 'Pa'],
  'head/m of water (conventional 1000 kg/m3)/Pa': ['pressure', 'mH2O', 'Pa'],
  'head/psi/ft of water (conventional)': ['pressure', 'psi', 'ftH2O'],
  'pressure gradient/ft water per 100 ft/Pa/m': ['pressure gradient', 'ftH2O/100ft', 'Pa/m'],
  'pressure gradient/psi/ft/Pa/m': ['pressure gradient', 'psi/ft', 'Pa/m'],
  'flow/US gpm/m3/s': ['flow', 'gpm', 'm3/s'],
  'flow/US gpm/L/s': ['flow', 'gpm', 'L/s'],
  'flow/US gpm/L/min': ['flow', 'gpm', 'L/min'],
  'flow/US gpm/m3/h': ['flow', 'gpm', 'm3/h'],
  'flow/ft3/min (cfm)/m3/s': ['flow', 'cfm', 'm3/s'],
  'flow/ft3/min (cfm)/m3/h': ['flow', 'cfm', 'm3/h'],
  'flow/L/s/m3/h': ['flow', 'L/s', 'm3/h'],
  'flow per capacity/gpm/ton/L/(s*kW)': ['flow per power', 'gpm/ton', 'L/(s.kW)'],
  'mass flow/lb/h/kg/s': ['mass flow', 'lb/h', 'kg/s'],
  'specific energy/Btu_IT/lb/J/kg': ['heating value by mass', 'Btu/lb', 'J/kg'],
  'fuel energy/Btu_IT/US gal/MJ/L': ['heating value by volume', 'Btu/gal', 'MJ/L'],
  'fuel energy/Btu_IT/ft3/MJ/m3': ['heating value by volume', 'Btu/ft3', 'MJ/m3'],
  'emission factor/kg/MMBtu_IT/kg/GJ': ['emission factor', 'kg/MMBtu', 'kg/GJ'],
  'emission factor/kg/MMBtu_IT/kg/kWh': ['emission factor', 'kg/MMBtu', 'kg/kWh'],
  'emission factor/lb/MWh/kg/kWh': ['emission factor', 'lb/MWh', 'kg/kWh'],
  'price/$/therm(IT)/$/kWh': ['energy price', 'cur/therm', 'cur/kWh'],
  'price/$/US gal/$/L': ['volume price', 'cur/gal', 'cur/L'],
  'velocity/ft/s/m/s': ['velocity', 'ft/s', 'm/s'],
  'velocity/ft/min/m/s': ['velocity', 'ft/min', 'm/s'],
  'velocity/mph/m/s': ['velocity', 'mph', 'm/s'],
  'velocity/km/h/m/s': ['velocity', 'km/h', 'm/s'],
};

const keyOf = (row: FixtureRow): string => `${row.text('quantity')}/${row.text('from_unit')}/${row.text('to_unit')}`;

const slope = (kind: Kind, name: string): number => {
  const [numerator = '', denominator = ''] = factor(kind, name) ?? [];
  return Number(numerator) / Number(denominator);
};

/** The worked conversions: row of the table, kind, and the two units as the library names them. */
const WORKED: readonly (readonly [id: string, kind: Kind, from: string, to: string])[] = [
  ['M15-01', 'diffusivity', 'ft2/h', 'm2/s'],
  ['M15-03', 'power', 'ton', 'kW'],
  ['M15-05', 'heat per pipe length', 'Btu/(h.ft)', 'W/m'],
  ['M15-07', 'flow', 'gpm', 'L/s'],
  ['M15-09', 'pressure', 'psi', 'kPa'],
  ['M15-11', 'specific heat', 'Btu/(lb.degF)', 'J/(kg.K)'],
  ['M15-13', 'density', 'lb/ft3', 'kg/m3'],
  ['M15-15', 'temperature difference', 'degF', 'K'],
  ['M15-17', 'length per power', 'ft/ton', 'm/kW'],
  ['M15-19', 'dynamic viscosity', 'cP', 'Pa.s'],
  ['M15-21', 'velocity', 'ft/s', 'm/s'],
];

export const unitChecks: readonly PublishedCheck[] = [
  ...caseChecks(
    'units',
    WORKED.map(([id, kind, from, to]) => [id, `${kind}, ${from} to ${to}`, ({ value }) => (Number(value) * slope(kind, from)) / slope(kind, to)]),
  ),
  fromFixture(loadFixture('load-unit-conversions'), {
    id: 'U-1',
    room: 'units',
    quantity: 'conversion factors',
    column: 'multiply_by',
    where: (row) => CARRIED[keyOf(row)] !== undefined,
    label: keyOf,
    compute: (row) => {
      const [kind, from, to] = CARRIED[keyOf(row)] ?? ['length', '', ''];
      return slope(kind, from) / slope(kind, to);
    },
  }),
];

/** How many rows of the table the kinds carry, of how many kinds. */
export const carried: { readonly rows: number; readonly kinds: number } = { rows: Object.keys(CARRIED).length, kinds: Object.keys(KINDS).length };
