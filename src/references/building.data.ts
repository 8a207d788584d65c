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
  burchChristensen2007: {
    cite: 'J. Burch and C. Christensen, Towards development of an algorithm for mains water temperature, Proceedings of the ASES annual conference, 2007: offset 6 °F, amplitude about 0.4 of the air’s; slopes and lag recalled',
    seen: 'quoted',
    at: 'abstract at osti.gov/scitech/biblio/981988, with offset and amplitude only',
  },
  eu814of2013: {
    cite: 'Commission Regulation (EU) No 814/2013, Annex III, table 1: load profiles of water heaters, profile M of 5.845 kWh a day',
    seen: 'from memory',
  },
  hseHsg274: {
    cite: 'Health and Safety Executive, HSG274 part 2, Legionnaires’ disease: hot water stored at about 60 °C and at 50 °C at the outlets; growth between 20 and 45 °C',
    seen: 'quoted',
    at: 'legionella.io/topics/temperature-control',
  },
  changePointModels: {
    cite: 'D. Ruch and D. E. Claridge, A four-parameter change-point model for predicting energy consumption in commercial buildings, Journal of Solar Energy Engineering 114, 1992: generalises the three-parameter line, with errors of its parameters',
    seen: 'quoted',
    at: 'asmedigitalcollection.asme.org/solarenergyengineering, abstract; the equations are our own derivation',
  },
  knebel1983: {
    cite: 'D. E. Knebel, Simplified energy analysis using the modified bin method, ASHRAE, 1983: load lines from mean gains for each part of the day',
    seen: 'from memory',
  },
  irishDegreeDays: {
    cite: 'Met Éireann, degree days from daily highest and lowest temperature, four cases',
    seen: 'quoted',
    at: 'met.ie/climate/data03.asp',
  },
  gradtage2006: {
    cite: 'Station tables of degree days for 2006, heating days below 12 °C counted up to 20 °C',
    seen: 'quoted',
    at: 'ruhstorf-wetter.de/gradtage-2006.html',
  },
  iso13790: {
    cite: 'ISO 13790:2008, Energy performance of buildings, table of heat capacity by class: 80, 110, 165, 260 and 370 kJ/K for each square metre of floor',
    seen: 'from memory',
  },
} as const;
