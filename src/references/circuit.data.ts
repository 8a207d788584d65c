/** Sources of the circuit room. */
export const CIRCUIT_REFERENCES = {
  residentialPumpHead: {
    cite: 'Training page of an electric utility on ground-source heat pumps: 25 to 30 ft of total head is typical of a residential loop',
    seen: 'quoted',
    at: 'the utility’s page on sizing (address withheld)',
  },
  modelCodeVelocity: {
    cite: 'International Residential Code M2105.24: velocity within the limit of the pipe maker; 4 to 5 ft/s recalled as usual',
    seen: 'from memory',
  },
  purgeVelocity: {
    cite: 'Unified Facilities Guide Specifications 15741N, 3.7.2: purge at 2 ft/s or more in every pipe section, 15 minutes past the last bubble',
    seen: 'quoted',
    at: 'copy on a commercial site (address withheld)',
  },
  valveFlowCoefficient: {
    cite: 'IEC 60534-2-1: flow coefficient of valves, Kv = flow in m3/h of water at 1 bar, drop proportional to relative density and flow squared',
    seen: 'from memory',
  },
  blasius1913: {
    cite: 'H. Blasius, Das Ähnlichkeitsgesetz bei Reibungsvorgängen in Flüssigkeiten, 1913: friction of turbulent flow in smooth pipe, f ∝ Re^−0.25',
    seen: 'from memory',
  },
  purgeVelocityHomes: {
    cite: 'ENERGY STAR Homes Northwest, ground-source heat pump standard (2005), 1.8: no leak seen in 30 minutes; 2 ft/s for 15 minutes in each section',
    seen: 'quoted',
    at: 'copy on a site of manuals (address withheld)',
  },
  astmF2164: {
    cite: 'ASTM F2164, Field leak testing of polyethylene pressure piping with hydrostatic pressure; 1.5 times, 4 hours, 10 psi, 1 hour and 5 % are recalled',
    seen: 'quoted',
    at: 'scope on water against gas, and a catalogue’s extract of 5.4 and 5.5: no allowance at fused joints, make-up water while the pipe expands',
  },
  modelCodePressureTest: { cite: 'International Residential Code M2105.28: 100 psi with water for 30 minutes', seen: 'from memory' },
  federalPressureTest: {
    cite: 'Unified Facilities Guide Specifications 15741N, 3.7.1: 188 psi for 2 hours without a drop',
    seen: 'quoted',
    at: 'copy on a commercial site (address withheld)',
  },
  statePressureTest: {
    cite: 'State of Delaware, specification 232114: 100 psi with water after assembly, joints seen before backfill',
    seen: 'quoted',
    at: 'copy on a document site (address withheld)',
  },
  findley1987: {
    cite: 'W. N. Findley, 26-year creep and recovery of poly(vinyl chloride) and polyethylene, Polymer Engineering and Science 27, 1987: strain by a power of time',
    seen: 'from memory',
  },
  decaySlopes: {
    cite: 'Practice of British water supply for polyethylene mains: slope of the logarithms of pressure and time, 0.4 of the time of loading added',
    seen: 'from memory',
  },
  polyethyleneGive: {
    cite: 'Polyethylene of high density: expansion 1.3e-4 to 2.0e-4 per kelvin, modulus 600 to 1200 MPa within hours and 200 to 400 MPa for months, Poisson’s ratio 0.45',
    seen: 'quoted',
    at: 'a listing of material data for the lower expansion and the modulus of hours (address withheld); the others recalled',
  },
  sealedLoopCharge: { cite: 'Charge of sealed loops: 5 to 10 psi or more at the pump’s inlet at all times', seen: 'from memory' },
  circuitRules: {
    cite: 'Rules of the trade for circuits: 3/4 in one to a ton and at most 500 to 600 ft, 1 in at most 750 to 800 ft, 1-1/4 in one to two or three tons',
    seen: 'from memory',
  },
  pumpGrades: {
    cite: 'S. P. Kavanaugh and K. Rafferty, Ground-Source Heat Pumps (ASHRAE 1997, repeated 2014): marks for the installed pump power of large plants',
    seen: 'from memory',
  },
} as const;
