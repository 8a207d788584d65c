/** Sources of the climate room. */
export const CLIMATE_REFERENCES = {
  kusudaAchenbach1965: {
    cite: 'T. Kusuda and P. R. Achenbach, Earth temperature and thermal diffusivity at selected stations in the United States, ASHRAE Transactions 71(1), 1965, 61–74',
    seen: 'from memory',
  },
  hillel1982: {
    cite: 'D. Hillel, Introduction to Soil Physics, 1982: annual wave in the ground as a sine with the coldest day',
    seen: 'quoted',
    at: 'soilphysics.okstate.edu/toolkit/temperature/model.htm: symbols and damping depth; the printed equation is a picture, its form recalled',
  },
  nofzigerWu: {
    cite: 'D. L. Nofziger and J. Wu, Soil temperature exercises, Oklahoma State University',
    seen: 'original',
    at: 'soilphysics.okstate.edu/software/SoilTemperature/exercises.html: surface from 0 to 30 °C, coldest on day 10; the table is left to the student',
  },
  xing2014: {
    cite: 'L. Xing, Estimations of undisturbed ground temperatures using numerical and analytical modeling, doctoral thesis, Oklahoma State University, 2014',
    seen: 'quoted',
    at: 'engineering reference of a public building-simulation program (version 8.7), two-harmonic form; the later version 9.5 prints it without the lag',
  },
  xingSpitler2017: {
    cite: 'L. Xing and J. D. Spitler, Prediction of undisturbed ground temperature using analytical and numerical modeling, part I, 2017',
    seen: 'quoted',
    at: 'record at researchportal.northumbria.ac.uk: 19 sites, root-mean-square error of the two-harmonic formula 1.4 to 2.4 °C at 5 to 100 cm',
  },
  patrignani: {
    cite: 'A. Patrignani, teaching notes on soil temperature, Kansas State University: sine with a phase',
    seen: 'original',
    at: 'github.com/andres-patrignani/pynotes, notes on a soil temperature model; they call half of the sum of the extremes amplitude, which is a misprint of half of the difference',
  },
  asceColdRegions1996: {
    cite: 'Cold Regions Utilities Monograph, American Society of Civil Engineers, 3rd ed. 1996: wave with a year of 365.25 days',
    seen: 'quoted',
    at: 'documentation of a public building-simulation library, which describes the amplitude as maximum less minimum',
  },
  hortonWierengaNielsen1983: {
    cite: 'R. Horton, P. J. Wierenga and D. R. Nielsen, Evaluation of methods for determining the apparent thermal diffusivity of soil near the surface, Soil Science Society of America Journal 47, 1983, 25–32',
    seen: 'quoted',
    at: 'abstract at scilit.com/publications/d42d1c5812e5be9e8bdbadb0f779b59c: the explicit methods are erratic, the fit of harmonics is better; equations from memory, verified on exact waves',
  },
  larwa2018: {
    cite: 'B. Larwa et al., Czasopismo Techniczne 2018, volume 9, article 12426: a joint nonlinear fit of mean, amplitude, phase and diffusivity',
    seen: 'quoted',
    at: 'abstract at ejournals.eu: separate linear regressions leave the diffusivity ambiguous, the joint fit does not',
  },
  soilTaxonomyMean: {
    cite: 'Tradition of Soil Taxonomy: mean annual soil temperature is mean annual air temperature plus about 1 °C',
    seen: 'quoted',
    at: 'soil.scijournals.org/cgi/content/figsonly/69/6/2033, caption of figure 2D',
  },
  surfaceCoversPrague: {
    cite: 'International Journal of Climatology, doi:10.1002/joc.4764: ground under covers in Prague, 2003–2013; surface minus air: asphalt +4.1, sand +1.6, bare clay +1.4, short grass +0.2 K',
    seen: 'quoted',
    at: 'record RIV/67985530:_____/17:00464212 at starfos.tacr.cz',
  },
  climateReferenceNetwork: {
    cite: 'J. E. Bell et al., U.S. Climate Reference Network soil moisture and temperature observations, Journal of Hydrometeorology 14, 2013, 977–988; daily records of Manhattan KS 2010–2016 and Sandstone MN 2020',
    seen: 'original',
    at: 'the daily records (WBAN 53974 and Sandstone 6 W) were fitted at all depths; the paper itself was not read',
  },
  leastSquares: {
    cite: 'Linear least squares with standard errors from the residuals; any text on regression',
    seen: 'from memory',
  },
  histospline1971: {
    cite: 'L. I. Boneva, D. Kendall and I. Stefanov, Spline transformations: three new diagnostic aids for the statistical data-analyst, Journal of the Royal Statistical Society B 33(1), 1971, 1–71',
    seen: 'from memory',
  },
  studentDistribution: {
    cite: "Student's distribution for a further observation from a normal sample, quantile times √(1 + 1/n); M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, 26.7.3 and 26.7.4 for whole degrees of freedom",
    seen: 'from memory',
  },
  weibull1939: {
    cite: 'W. Weibull, A statistical theory of the strength of materials, 1939: the k-th of n in order is passed with the chance k/(n + 1)',
    seen: 'from memory',
  },
  drummond1943: {
    cite: 'A. J. Drummond, Cold winters at Kew Observatory, Quarterly Journal of the Royal Meteorological Society 69, 1943, 28; monthly means of December to February, 1850–1900',
    seen: 'quoted',
    at: 'typed off a history of London (G. Stedman Jones, appendix 2, table 12, after Drummond page 28) into the code of a public teaching package',
  },
  epwDataDictionary: {
    cite: 'Data dictionary of the EPW weather file, National Renewable Energy Laboratory',
    seen: 'original',
    at: 'documentation of the auxiliary programs of the public building-simulation program that the format is named for, chapter on the weather converter: fields, units, ranges, codes of missing values, hour 1 ends at 01:00',
  },
  epwMissingCodes: {
    cite: 'Definition of a custom format for the weather converter, with the codes of missing values of all fields',
    seen: 'original',
    at: 'gist.github.com/jmarrec/313839be74ae119347d9565db45bba39: dry bulb and dew point appear there as 999, in the dictionary as 99.9',
  },
  tmy3Greensboro: {
    cite: 'Typical meteorological year 3, National Renewable Energy Laboratory, 2008, station 723170, Greensboro',
    seen: 'original',
    at: 'copy in github.com/pvlib/pvlib-python: line of the station, headings with units, hours 01:00 to 24:00; the manual itself was not read',
  },
  epwGroundHeader: {
    cite: 'Rule by which the ground temperatures in headers of weather files were made, worked out from five files',
    seen: 'original',
    at: 'headers of Chicago O’Hare, Bologna and three other files, reproduced to the last printed digit; the rule is that of an older weather processor, said so on a public mailing list (onebuilding.org, msg00997)',
  },
  freezingIndexTerms: {
    cite: 'Freezing index: seasonal, total, approximate and design index of glossaries of permafrost and meteorology',
    seen: 'quoted',
    at: 'yamz.net/term/ark/h7190 and glossary.ametsoc.org/wiki/Freezing_index: design index from the three coldest of thirty winters or the coldest of ten',
  },
  wsdotFrost: {
    cite: 'Pavement guide of a state department of transportation: Stefan formula and modified Berggren formula',
    seen: 'quoted',
    at: 'training.ce.washington.edu/WSDOT/Modules/04_design_parameters, pages stefan_formula and berggren; the equations are pictures, the form in US units is printed at frostline-77i.pages.dev/calculators/frost-depth',
  },
  aldrichPaynter1953: {
    cite: 'H. P. Aldrich and H. M. Paynter, Frost investigations: analytical studies of freezing and thawing of soils, Corps of Engineers, 1953',
    seen: 'from memory',
  },
  ufc313006: {
    cite: 'Calculation methods for determination of depths of freeze and thaw in soils, TM 5-852-6 / UFC 3-130-06, worked example of a homogeneous soil',
    seen: 'from memory',
  },
  ufc313004: {
    cite: 'Foundations for structures in arctic and subarctic construction, UFC 3-130-04, table 4-1: n-factors',
    seen: 'original',
    at: 'buildingcriteria1.tpub.com/ufc_3_130_04/ufc_3_130_040078.htm',
  },
  sturm1997: {
    cite: 'M. Sturm, J. Holmgren, M. König and K. Morris, The thermal conductivity of seasonal snow, Journal of Glaciology 43, 1997, 26–41',
    seen: 'quoted',
    at: 'abstract at cambridge.org; both forms with their coefficients and the bound of 156 kg/m3 in the source code of a public permafrost model',
  },
} as const;
