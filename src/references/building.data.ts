/** Sources of the building room. */
export const BUILDING_REFERENCES = {
  en12831: { cite: 'EN 12831-1:2017, Energy performance of buildings: method for calculation of the design heat load', seen: 'from memory' },
  en14825: {
    cite: 'EN 14825:2018, Annex B: heating seasons by bins of outdoor temperature; load line from the design temperature to zero at 16 °C',
    seen: 'quoted',
    at: 'github.com/SharodX/keymark-heat-pumps, scripts/calculate_scop_en14825.py',
  },
  eu813of2013: {
    cite: 'Commission Regulation (EU) No 813/2013, annexes: equivalent active heating hours of the three climates, 2066, 1336 and 2465 h',
    seen: 'quoted',
    at: 'legislation.gov.uk/eur/2013/811/annex/VII/division/4, the sister regulation 811/2013 with the same hours',
  },
  ashraeEnergyEstimating: {
    cite: 'ASHRAE Handbook of Fundamentals, chapter on energy estimating: balance point and degree days of a residence',
    seen: 'from memory',
  },
  schoenauKehrig1990: {
    cite: 'G. J. Schoenau and R. A. Kehrig, A method for calculating degree-days to any base temperature, Energy and Buildings 14, 1990',
    seen: 'from memory',
  },
  erbs1983: {
    cite: 'D. G. Erbs, S. A. Klein and W. A. Beckman, Estimation of degree-days and ambient temperature bin data from monthly-average temperatures, ASHRAE Journal 25(6), 1983',
    seen: 'from memory',
  },
  calovGreve2005: {
    cite: 'R. Calov and R. Greve, A semi-analytical solution for the positive degree-day model, Journal of Glaciology 51, 2005',
    seen: 'from memory',
  },
  urbanaNormals: {
    cite: 'Illinois State Water Survey, Urbana 1981–2010 normals: monthly means, heating and cooling degree days to 65 °F',
    seen: 'original',
    at: 'isws.illinois.edu/statecli/urbana/urbana-monthly-2018_files/sheet013.htm',
  },
  loadWeatherChecks: {
    cite: 'Hour-by-hour loads of two weather years, Chicago O’Hare (TMY3) and Bologna (TMYx 2004–2018), computed outside this library',
    seen: 'original',
    at: 'tests/fixtures/load-weather-checks.csv',
  },
} as const;
