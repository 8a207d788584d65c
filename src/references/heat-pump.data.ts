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
  eu811of2013: {
    cite: 'Commission Delegated Regulation (EU) No 811/2013, annex VII.4: SCOP and seasonal efficiency of heat pump space heaters; 2066, 1336 and 2465 h',
    seen: 'original',
    at: 'legislation.gov.uk/eur/2013/811/annex/VII/division/4/adopted/data.xht',
  },
  en14825Hours: {
    cite: 'EN 14825:2018: hours with thermostat off, standby, crankcase heater and off; interpolation between declared points, CC, F(1) and F(2), these recalled',
    seen: 'quoted',
    at: 'github.com/SharodX/keymark-heat-pumps, scripts/calculate_scop_en14825.py, the hours only',
  },
  sepemo2012: { cite: 'SEPEMO-Build, concept for evaluation of seasonal performance: boundaries H1 to H4, 2012', seen: 'from memory' },
  eu2009of28: {
    cite: 'Directive 2009/28/EC, annex VII, and Decision 2013/114/EU: heat is renewable from a seasonal factor of 1.15/η, with η = 0.455 rounded to 2.5',
    seen: 'quoted',
    at: '0.455 and 2.5 at gigawat.info/artykul/items/kiedy-energia-jest-odnawialna.html; 1.15 recalled',
  },
  fieldGermanyTwoTests: {
    cite: 'Two large field tests of new heat pumps in Germany: new houses, heating and hot water, first period',
    seen: 'quoted',
    at: 'heatpumpingtechnologies.org/publications/two-large-field-tests-of-new-heat-pumps-in-germany',
  },
  fieldGermanyExisting: {
    cite: 'Heat pumps in existing buildings in Germany, two projects ten years apart',
    seen: 'quoted',
    at: 'blog.innovation4e.de/en/2021/03/03/how-well-do-heat-pumps-really-work-in-existing-buildings',
  },
  fieldSweden: {
    cite: 'Ground-source heat pumps in Sweden: typical seasonal performance until 2008',
    seen: 'quoted',
    at: 'a page of heatpumpingtechnologies.org',
  },
  spitlerGehlin2019: {
    cite: 'J. D. Spitler and S. Gehlin, Measured performance of a mixed-use commercial-building ground source heat pump system in Sweden, Energies 12, 2019',
    seen: 'original',
    at: 'docslib.org/doc/542299',
  },
  fieldUnitedKingdom: { cite: 'Renewable Heat Premium Payment trial, United Kingdom, about 700 units', seen: 'from memory' },
  desuperheaterPractice: {
    cite: 'ASHRAE Handbook, chapters on applied heat pumps and service water heating: a desuperheater takes about 5 to 15 % of the condenser heat',
    seen: 'from memory',
  },
  en442Emitters: {
    cite: 'EN 442-2, Radiators and convectors: test methods and rating; output over the mean excess temperature, rated at 75, 65 and 20 degC',
    seen: 'quoted',
    at: 'correction table of a radiator maker at buildingservicesindex.co.uk, entry 136540; the logarithmic mean from memory',
  },
  emitterExponents: {
    cite: 'Exponents of radiators, convectors, walls and floors',
    seen: 'quoted',
    at: 'haustechnikdialog.de/SHKwissen/560: convectors about 1.4, radiators 1.3, walls and floors about 1.1',
  },
  closedLoopPenalty: {
    cite: 'Closed-loop rating of ground-source units in the United States before 2000: 0.8 W for each gpm and foot of water, with 17 ft of water for the loop',
    seen: 'quoted',
    at: 'a public design page of a United States electric utility',
  },
  en14825Conditions: {
    cite: 'EN 14825, part-load points A to D of low-temperature heating in the average climate',
    seen: 'from memory',
  },
  lash1992: {
    cite: 'T. A. Lash, Simulation and analysis of a water loop heat pump system, M.S. thesis, University of Illinois, 1992',
    seen: 'from memory',
  },
  tang2005: {
    cite: 'C. C. Tang, Modeling packaged heat pumps in a quasi-steady state energy simulation program, M.S. thesis, Oklahoma State University, 2005',
    seen: 'from memory',
  },
  horizontalLoopPractice: {
    cite: 'Trade manuals of the United States for horizontal loops in the north: entering fluid of 28 to 32 °F in heating, not under 25 °F; 90 to 95 °F in cooling',
    seen: 'from memory',
  },
  ashraeGroundDistance: {
    cite: 'ASHRAE Handbook, HVAC Applications, chapter on geothermal energy: entering fluid 6 to 11 K below and 11 to 17 K above the undisturbed ground, for vertical loops',
    seen: 'from memory',
  },
  vdi4640Fluid: {
    cite: 'VDI 4640-2: fluid returned to the ground at most 11 K from undisturbed on the mean of a week, 17 K at peak',
    seen: 'from memory',
  },
  electricPowerFormulas: {
    cite: 'Active power of an alternating current, P = V I cos φ, √3 times that between three lines; any text on electricity',
    seen: 'from memory',
  },
} as const;
