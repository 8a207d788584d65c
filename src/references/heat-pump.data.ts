/** Sources of the heat-pump room. */
export const HEAT_PUMP_REFERENCES = {
  fritschCarlson1980: {
    cite: 'F. N. Fritsch and R. E. Carlson, Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17, 1980, doi:10.1137/0717021',
    seen: 'from memory',
  },
  iso13256: { cite: 'ISO 13256-1 and -2:1998, Water-source heat pumps: testing and rating for performance', seen: 'from memory' },
  en14511: { cite: 'EN 14511-2, Air conditioners and heat pumps: test conditions', seen: 'from memory' },
  ahri210240: { cite: 'AHRI Standard 210/240, section on cyclic degradation: default coefficient 0.25', seen: 'from memory' },
  en14825PartLoad: {
    cite: 'EN 14825:2018, part-load performance of water and brine units: Cc, default 0.9',
    seen: 'quoted',
    at: 'github.com/SharodX/keymark-heat-pumps, scripts/calculate_scop_en14825.py',
  },
  staffell2012: {
    cite: 'I. Staffell, D. Brett, N. Brandon and A. Hawkes, A review of domestic heat pumps, Energy & Environmental Science 5, 2012',
    seen: 'quoted',
    at: 'a correction note to pypsa-eur, git.cps.unileoben.ac.at/bjoern/pypsa-eur, commit 7fad9e2',
  },
  ruhnau2019: {
    cite: 'O. Ruhnau, L. Hirth and A. Praktiknjo, Time series of heat demand and heat pump efficiency for energy system modeling, Scientific Data 6, 2019, doi:10.1038/s41597-019-0199-y',
    seen: 'original',
    at: 'data file github.com/oruhnau/when2heat, input/cop/cop_parameters.csv',
  },
} as const;
