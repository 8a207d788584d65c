/** Sources of the pipe room. */
export const PIPE_REFERENCES = {
  astmPolyethylenePipe: {
    cite: 'ASTM D3035 and F714 (IPS) and D2737 (CTS): outside diameters and walls of polyethylene pipe by dimension ratio',
    seen: 'quoted',
    at: 'a maker’s D3035 table (address withheld) for DR 9, 11 and 13.5 up to 3 in; the rounding rule itself is recalled, other walls rest on it',
  },
  iso4427: {
    cite: 'ISO 4427-2:2007, Table 2 (polyethylene pipe, minimum walls), and ISO 11922-1, grade V (tolerance)',
    seen: 'quoted',
    at: 'makers’ pages (addresses withheld) and, for DN 90 and 110, a national adoption; series numbers as Renard numbers recalled, checked against the table',
  },
  ppiHandbook: { cite: 'Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 6', seen: 'from memory' },
  peConductivity2015: {
    cite: 'Geothermal Energy 3 (2015), doi:10.1186/s40517-015-0029-1: polyethylene 0.389 W/(m.K), resistance of a 42 mm DR 11 pipe',
    seen: 'original',
    at: 'Table 1',
  },
  peConductivity2021: {
    cite: 'Geothermal Energy 9 (2021), doi:10.1186/s40517-021-00206-y: polyethylene 0.40 W/(m.K)',
    seen: 'original',
    at: 'Table 2',
  },
  plasticRoughness: {
    cite: 'Hydraulic Institute, Engineering Data Book: 0.000005 ft for thermoplastics and drawn tubing',
    seen: 'quoted',
    at: 'table of pipe roughness on a commercial site (address withheld)',
  },
  churchill1977: {
    cite: 'S. W. Churchill, Friction-factor equation spans all fluid-flow regimes, Chemical Engineering 84(24), 1977',
    seen: 'from memory',
  },
  colebrook1939: { cite: 'C. F. Colebrook, Turbulent flow in pipes, Journal of the Institution of Civil Engineers 11, 1939', seen: 'from memory' },
  haaland1983: {
    cite: 'S. E. Haaland, Simple and explicit formulas for the friction factor in turbulent pipe flow, Journal of Fluids Engineering 105, 1983',
    seen: 'from memory',
  },
  swameeJain1976: {
    cite: 'P. K. Swamee and A. K. Jain, Explicit equations for pipe-flow problems, Journal of the Hydraulics Division 102, 1976',
    seen: 'from memory',
  },
  hazenWilliams1905: {
    cite: 'G. S. Williams and A. Hazen, Hydraulic Tables, 1905; the form in gpm, inches and feet per 100 ft',
    seen: 'from memory',
  },
  hooper1981: {
    cite: 'W. B. Hooper, The two-K method predicts head losses in pipe fittings, Chemical Engineering, 24 August 1981',
    seen: 'quoted',
    at: 'constants as a general fluid-mechanics library holds them',
  },
  technicalPaper410: {
    cite: 'Technical Paper 410, Flow of fluids through valves, fittings and pipe, 1976',
    seen: 'quoted',
    at: 'Ludwig, Applied Process Design, volume 1, 3rd edition, page 76, and a table of coefficients on a commercial site (address withheld)',
  },
  white1929: {
    cite: 'C. M. White, Streamline flow through curved pipes, Proceedings of the Royal Society A 123, 1929, doi:10.1098/rspa.1929.0089',
    seen: 'quoted',
    at: 'documentation of a general fluid-mechanics library',
  },
  ito1959: {
    cite: 'H. Ito, Friction factors for turbulent flow in curved pipes, Journal of Basic Engineering 81, 1959',
    seen: 'quoted',
    at: 'a page of design equations on a commercial site (address withheld); 0.034 to 300 in Re (d/D)² as its range',
  },
  schmidt1967: {
    cite: 'E. F. Schmidt, Wärmeübergang und Druckverlust in Rohrschlangen, Chemie Ingenieur Technik 39, 1967, doi:10.1002/cite.330391302',
    seen: 'quoted',
    at: 'documentation of a general fluid-mechanics library',
  },
  hausen1943: {
    cite: 'H. Hausen, Darstellung des Wärmeüberganges in Rohren durch verallgemeinerte Potenzbeziehungen, VDI Verfahrenstechnik 4, 1943',
    seen: 'quoted',
    at: 'documentation of a general heat-transfer library',
  },
  ppiDesignStress: {
    cite: 'Plastics Pipe Institute, comparison of PE4710 and PE3608, 2015: design stresses of 1000 and 800 psi',
    seen: 'quoted',
    at: 'copy on a document site (address withheld)',
  },
  ppiBendRadius: {
    cite: 'Plastics Pipe Institute, Handbook of Polyethylene Pipe, chapter 7: least radius of cold bends; 100 diameters at a fitting is recalled',
    seen: 'quoted',
    at: 'two copies of the table (addresses withheld)',
  },
  awwaM55: {
    cite: 'AWWA Manual M55 (2006), Table 4-6: temperature factors of polyethylene pipe, to 100 °F',
    seen: 'quoted',
    at: 'copy on a document site (address withheld)',
  },
  asNzs4130: {
    cite: 'Table of allowed head over temperature for polyethylene pipe of AS/NZS 4130, PE100 PN 16',
    seen: 'quoted',
    at: 'a maker’s page (address withheld)',
  },
  iso4427Temperature: {
    cite: 'ISO 4427-1 and EN 12201-1, Annex A: pressure reduction factors 1.00, 0.87, 0.74 at 20, 30, 40 °C',
    seen: 'from memory',
  },
  gnielinski1976: {
    cite: 'V. Gnielinski, New equations for heat and mass transfer in turbulent pipe and channel flow, International Chemical Engineering 16, 1976',
    seen: 'quoted',
    at: 'ranges on a commercial site, empirical correlations of circular tubes (address withheld); form recalled',
  },
  gnielinski2013: {
    cite: 'V. Gnielinski, On heat transfer in tubes, International Journal of Heat and Mass Transfer 63, 2013',
    seen: 'from memory',
  },
  incroperaInternalFlow: {
    cite: 'F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 8',
    seen: 'quoted',
    at: 'example 8.4 in FOSSEE Python-Textbook-Companions, Fundamentals_of_Heat_and_Mass_Transfer/Chapter_8.ipynb',
  },
} as const;
