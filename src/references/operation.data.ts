/** Sources of the operation room. */
export const OPERATION_REFERENCES = {
  bose1985: {
    cite: 'Bose, Parker & McQuiston, Design/Data Manual for Closed-Loop Ground-Coupled Heat Pump Systems, ASHRAE, 1985',
    seen: 'from memory',
  },
  kavanaughRafferty1997: {
    cite: 'Kavanaugh & Rafferty, Ground-Source Heat Pumps: Design of Geothermal Systems for Commercial and Institutional Buildings, ASHRAE, 1997',
    seen: 'from memory',
  },
  areaGuideline2001: {
    cite: 'VDI 4640-2, generation of 2001: extraction per area of horizontal collectors by soil, at 1800 and 2400 hours a year',
    seen: 'quoted',
    at: 'reprint in an installation manual, p. 29 (address withheld); the range of damp cohesive soil recalled',
  },
  coilLengthPerTon: {
    cite: 'Energy-management handbook, chapter on spiral loops: 500 to 1000 ft of pipe per cooling ton',
    seen: 'quoted',
    at: 'copy of the chapter on a commercial site (address withheld)',
  },
  straightLengthPerTon: {
    cite: 'Federal consumer rule for horizontal loops: 400 to 600 ft of pipe per ton',
    seen: 'quoted',
    at: 'page of an electric utility (address withheld)',
  },
  layoutLengthPerTon: {
    cite: 'Design notes on horizontal loops: one pipe 350 to 500, two pipes 420 to 600, four pipes 500 to 800 ft of pipe per ton',
    seen: 'quoted',
    at: 'copy on a site for shared documents (address withheld)',
  },
  paterson1952: {
    cite: 'Paterson, Propagation of a boundary of fusion, Proceedings of the Glasgow Mathematical Association 1:42-47, 1952',
    seen: 'from memory',
  },
  casagrande1932: {
    cite: 'Casagrande, Discussion on frost heaving, Proceedings of the Highway Research Board 11:168-172, 1932',
    seen: 'from memory',
  },
} as const;
