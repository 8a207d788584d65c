/** Sources of the fluid room. */
export const FLUID_REFERENCES = {
  melinder2010: {
    cite: 'Å. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International Institute of Refrigeration, 2010',
    seen: 'quoted',
    at: 'coefficients as carried by CoolProp (MIT licence, © 2012–2018 Ian H. Bell and other CoolProp developers), dev/incompressible_liquids/json, commit ea27c6394887; the book itself was not read',
  },
  iapwsWater: {
    cite: 'International Association for the Properties of Water and Steam: releases R6-95 (IAPWS-95), R12-08 (viscosity), R15-11 (conductivity) and SR6-08(2011) (liquid water at 0.1 MPa)',
    seen: 'quoted',
    at: 'evaluated with the general steam-table package iapws 1.5.3; the polynomials of this library are fitted to those values',
  },
  ashrae2001Coolants: {
    cite: 'ASHRAE Handbook, Fundamentals, 2001, physical properties of secondary coolants: ethylene and propylene glycol',
    seen: 'quoted',
    at: 'tabulated by M. J. Skovrup (2013) in the data folder of CoolProp, dev/incompressible_liquids/CPIncomp/data/xVolume',
  },
  lange1999: {
    cite: 'J. A. Dean (ed.), Lange’s Handbook of Chemistry, 15th edition, 1999, Table 5.13',
    seen: 'quoted',
    at: 'copy of the table on a site for shared documents (address withheld); minus signs lost in the copy and restored from its column in °F',
  },
  vdiCoolants: {
    cite: 'VDI Heat Atlas, properties of secondary coolants: methanol, calcium chloride, potassium carbonate in water',
    seen: 'quoted',
    at: 'tabulated by M. J. Skovrup (2013) in the data folder of CoolProp, dev/incompressible_liquids/CPIncomp/data/xMass',
  },
  lorentzLorenz: {
    cite: 'Rule of Lorentz and Lorenz: the specific refractions of the parts of a mixture add up by mass; indices of the pure liquids from handbooks',
    seen: 'from memory',
  },
  solutionFlashPoints: {
    cite: 'Closed-cup flash points of mixtures of ethanol and water, 5 to 50 % by mass, and of pure methanol',
    seen: 'original',
    at: 'engineeringtoolbox.com/ethanol-water-d_989.html and /methanol-methyl-alcohol-properties-CH3OH-d_2031.html; mixtures of methanol computed with the rule in L. A. Vidal et al. (2006), Process Safety and Environmental Protection 84(B1) 1–9, read in excerpt',
  },
  nfpa30Classes: {
    cite: 'NFPA 30, Flammable and Combustible Liquids Code, classes of liquids by closed-cup flash point',
    seen: 'quoted',
    at: 'a university’s safety page of the 2003 edition, and a summary of the 2024 edition that agrees',
  },
  fluidHazardTables: {
    cite: 'Tables of oral lethal doses in rats, hazard statements of the globally harmonised system, and German water hazard classes',
    seen: 'from memory',
  },
  waterHazardSheet: {
    cite: 'Groundwater protection with shallow geothermal plants: ethylene and propylene glycol in water hazard class 1',
    seen: 'original',
    at: 'yumpu.com/de/document/view/27525576, p. 6',
  },
  heinonen1997: {
    cite: 'E. W. Heinonen, R. E. Tapscott, M. W. Wildin, A. N. Beall, Assessment of antifreeze solutions for ground-source heat pump systems, ASHRAE research project 908, 1996/97',
    seen: 'quoted',
    at: 'abstract: risks of fire, corrosion, leakage, health and environment compared',
  },
  klotzbucher2007: {
    cite: 'T. Klotzbücher, A. Kappler, K. L. Straub, S. B. Haderlein, Biodegradability and groundwater pollutant potential of organic anti-freeze liquids used in borehole heat exchangers, Geothermics 36 (2007) 348–361',
    seen: 'quoted',
    at: 'abstract: both glycols decay with and without oxygen; inhibitors and biocides can be toxic and slow the decay',
  },
  triazoleProject: {
    cite: 'Research project of the state of Baden-Württemberg on benzotriazole and tolyltriazole in ground water: very persistent',
    seen: 'original',
    at: 'pudi.lubw.de/projektdetailseite/-/project/90435, summary',
  },
  ethanolBrines2017: {
    cite: 'Different ethyl alcohol secondary fluids used for ground-source heat pumps in Europe, 12th IEA Heat Pump Conference, 2017, O.4.1.1',
    seen: 'quoted',
    at: 'abstract: up to 12 % of propanol and butanol in Sweden, up to 4.5 % by volume of ketones elsewhere; heat transfer differs by +10 to −8 %',
  },
  inhibitedGlycolSheets: {
    cite: 'Data sheets of inhibited glycols and heat-pump installation manuals: least volume share 20 % (ethylene glycol), 25 % (propylene glycol)',
    seen: 'original',
    at: 'stated minimum concentration; several sheets agree, addresses withheld because they name products',
  },
  freezeMarginPractice: {
    cite: 'Freeze protection of ground loops: 10 °F below the coldest leaving fluid, or 15 °F below the coldest entering fluid',
    seen: 'original',
    at: 'a utility’s training page for the first, an installation manual for the second (addresses withheld)',
  },
} as const;
