/** Sources of the soil room. */
export const SOIL_REFERENCES = {
  astmD2216: {
    cite: 'ASTM D2216, Laboratory Determination of Water (Moisture) Content of Soil and Rock by Mass',
    seen: 'quoted',
    at: 'scope of the editions of 2005 and 2019 on sites for shared documents (addresses withheld): water over solids, 110 °C; the limit of 0.1 % for constant mass recalled',
  },
  astmD2216Masses: {
    cite: 'ASTM D2216, table of the least mass of a specimen by its largest particle',
    seen: 'from memory',
  },
  iso17892Part1: { cite: 'ISO 17892-1, Laboratory testing of soil, Part 1: Determination of water content, 2014', seen: 'from memory' },
  astmD1556: { cite: 'ASTM D1556, Density and Unit Weight of Soil in Place by Sand-Cone Method', seen: 'from memory' },
  astmD4718: {
    cite: 'ASTM D4718, Correction of Unit Weight and Water Content for Soils Containing Oversize Particles',
    seen: 'quoted',
    at: 'scope of several editions on a site for shared documents (address withheld): both directions, up to 40 % above 4.75 mm; the equations are masses and volumes added up',
  },
  soilMechanicsTexts: { cite: 'Phase relations and particle densities as in every textbook of soil mechanics', seen: 'from memory' },
  kersten1949: {
    cite: 'M. S. Kersten, Thermal Properties of Soils, University of Minnesota Engineering Experiment Station Bulletin 28, 1949',
    seen: 'quoted',
    at: 'SI coefficients in two public codes (CoLM202X main/MOD_SoilThermalParameters.F90 and frozen-soil functions of a university); inch-pound form recalled, both agree',
  },
  johansen1975: {
    cite: 'O. Johansen, Thermal Conductivity of Soils, dissertation, Trondheim, 1975',
    seen: 'quoted',
    at: 'CoLM202X main/MOD_SoilThermalParameters.F90 (github.com/CoLM-SYSU/CoLM202X) and other public land models',
  },
  farouki1981: {
    cite: 'O. T. Farouki, Thermal Properties of Soils, CRREL Monograph 81-1, 1981, and Trans Tech, 1986',
    seen: 'quoted',
    at: 'DHSVM sourcecode/CalcKhDry.c (github.com/eli-mtnhydro/DHSVM-MtnHydro), which cites § 3.3.2: dry soil, 0.135, ± 20 %',
  },
  ramires1995: {
    cite: 'M. L. V. Ramires and others, Standard reference data for the thermal conductivity of water, Journal of Physical and Chemical Reference Data 24, 1995',
    seen: 'from memory',
  },
  campbell1994: {
    cite: 'G. S. Campbell, J. D. Jungbauer, W. R. Bidlake and R. D. Hungerford, Predicting the effect of temperature on soil thermal conductivity, Soil Science 158, 1994',
    seen: 'quoted',
    at: 'water and air against temperature in modules/cryoGridSoil/conductionDevries.m, github.com/CryoGrid/CryoGrid3',
  },
  permafrostToolbox: {
    cite: 'Conductivity of ice against temperature in a public toolbox for heat in permafrost',
    seen: 'original',
    at: 'src/props/arch/misc/heat1d_toolbox/kiT.m, github.com/volkerrath/BTI_2021',
  },
  coteKonrad2005: {
    cite: 'J. Côté and J.-M. Konrad, A generalized thermal conductivity model for soils and construction materials, Canadian Geotechnical Journal 42, 2005',
    seen: 'quoted',
    at: 'CoLM202X main/MOD_SoilThermalParameters.F90 (github.com/CoLM-SYSU/CoLM202X) and frozen-soil functions of a university; both agree',
  },
  lu2007: {
    cite: 'S. Lu, T. Ren, Y. Gong and R. Horton, An improved model for predicting soil thermal conductivity from water content at room temperature, Soil Science Society of America Journal 71, 2007',
    seen: 'quoted',
    at: 'first page on a site for shared documents (address withheld): soils and errors; coefficients recalled and confirmed by the scores on kansasCores2022',
  },
  lu2014: {
    cite: 'Y. Lu, S. Lu, R. Horton and T. Ren, An empirical model for estimating soil thermal conductivity from texture, water content, and bulk density, Soil Science Society of America Journal 78, 2014',
    seen: 'quoted',
    at: 'abstract, and CoLM202X main/MOD_SoilThermalParameters.F90 (github.com/CoLM-SYSU/CoLM202X)',
  },
  ballandArp2005: {
    cite: 'V. Balland and P. A. Arp, Modeling soil thermal conductivities over a wide range of conditions, Journal of Environmental Engineering and Science 4, 2005',
    seen: 'quoted',
    at: 'src/Land/Model/SoilHeatParameterizations.jl, github.com/CliMA/ClimateMachine.jl, and CoLM202X; contact of dry grains, 0.053, recalled',
  },
  campbell1985: {
    cite: 'G. S. Campbell, Soil Physics with BASIC, Elsevier, 1985',
    seen: 'quoted',
    at: 'thermalconductivitysimulat.f90, github.com/AgriculturalModelExchangeInitiative/SoilTemperatureModels: coefficients of A, B and D; B, C and the exponents recalled, confirmed by the scores on kansasCores2022',
  },
  ewenThomas1987: {
    cite: 'J. Ewen and H. R. Thomas, The thermal probe: a new method and its use on an unsaturated sand, Géotechnique 37, 1987',
    seen: 'quoted',
    at: 'Kersten number in CoLM202X main/MOD_SoilThermalParameters.F90 (github.com/CoLM-SYSU/CoLM202X)',
  },
  andersonTice1972: {
    cite: 'D. M. Anderson and A. R. Tice, Predicting unfrozen water contents in frozen soils from surface area measurements, Highway Research Record 393, 1972',
    seen: 'quoted',
    at: 'form by volume in frozen-soil functions of a university; form by mass recalled, the constants agree',
  },
  deVries1963: {
    cite: 'D. A. de Vries, Thermal properties of soils, in W. R. van Wijk (ed.), Physics of Plant Environment, 1963',
    seen: 'quoted',
    at: 'coefficients 2.51, 4.18 and 1.88 in CoLM202X; 1.92 of minerals recalled, the same code has 1.925',
  },
  landModelSoils: {
    cite: 'Soil table of a public weather model, texture class by class: porosity and quartz; soil thermal parameters of a public land model',
    seen: 'original',
    at: 'run/SOILPARM.TBL, block STAS, github.com/wrf-model/WRF; CoLM202X main/MOD_SoilThermalParameters.F90',
  },
  petersLidard1998: {
    cite: 'C. D. Peters-Lidard and others, The effect of soil thermal conductivity parameterization on surface energy fluxes and temperatures, Journal of the Atmospheric Sciences 55, 1998',
    seen: 'quoted',
    at: 'column QTZ of run/SOILPARM.TBL, github.com/wrf-model/WRF',
  },
  kansasCores2022: {
    cite: 'N. Parker, G. J. Kluitenberg, C. Redmond and A. Patrignani, Soil Science Society of America Journal 86, 2022, 1495–1508, doi:10.1002/saj2.20465: undisturbed cores of Kansas stations by heat pulse',
    seen: 'original',
    at: 'the data behind it, docs/kansas-soil-data.js of github.com/soilwater/heat-pulse-sensor; 144 readings of 37 cores carried in tests/fixtures',
  },
  needleSurvey2012: {
    cite: 'W. King, D. Banks and J. Findlay, Field determination of shallow soil thermal conductivity, Quarterly Journal of Engineering Geology and Hydrogeology 45, 2012',
    seen: 'original',
    at: 'abstract: 12 to 16 readings averaged geometrically, about 15 %',
  },
  textureByFeel2017: {
    cite: 'Soil Science Society of America annual meeting 2017, paper 109107: texture by feel against the laboratory',
    seen: 'original',
    at: 'abstract: professionals name the class in 66 % of cases and within one class in 91 %, seasonal staff in 38 and 71 %',
  },
  vdi4640of2000: {
    cite: 'VDI 4640 Part 1, Thermal use of the underground, 2000, Table 1',
    seen: 'quoted',
    at: 'extract in a consultancy report of 2014 (address withheld): recommended values and heat capacities; lower and upper values recalled',
  },
  vdi4640of2010: { cite: 'VDI 4640 Part 1, Thermal use of the underground, 2010, Table 1', seen: 'from memory' },
  salomoneMarlowe1989: {
    cite: 'L. A. Salomone and J. I. Marlowe, Soil and Rock Classification According to Thermal Conductivity, 1989, as the apparent-conductivity table of ASHRAE',
    seen: 'quoted',
    at: 'table of rocks and soil on a commercial site (address withheld)',
  },
  ashraeSoils: {
    cite: 'ASHRAE Handbook, HVAC Applications, geothermal chapter, thermal properties of soils by density and moisture',
    seen: 'from memory',
  },
  busby2016: {
    cite: 'J. Busby, Thermal conductivity and diffusivity estimations for shallow geothermal systems, Quarterly Journal of Engineering Geology and Hydrogeology 49, 2016',
    seen: 'original',
    at: 'nora.nerc.ac.uk/id/eprint/513767, medians of UK weather stations',
  },
  heatLossPractice278: {
    cite: 'Method 278 of a ministry of energy, appendix 5.3, Table 5.3: soils for the heat loss of buried pipes',
    seen: 'quoted',
    at: 'a public data set of the table, github.com/omega1x/pipenostics',
  },
  kujala2008: {
    cite: 'K. Kujala, M. Seppälä and T. Holappa, Physical properties of peat and palsa formation, Cold Regions Science and Technology 52, 2008',
    seen: 'original',
    at: 'abstract, search.isc.ac inventory 2271791',
  },
  layeredLineSource: {
    cite: 'Line source of heat in a half-space of layers, by cosine transform along the layers and admittances across them',
    seen: 'original',
    at: 'derived for this library; checked against finite elements and two-layer images in tests/fixtures',
  },
  facesOfFill: {
    cite: 'Lines of heat in a half-space of several grounds, by charges on the faces where two of them meet, each with its mirror image',
    seen: 'original',
    at: 'equation of the faces derived from continuity of heat for this library; checked against finite elements (tests/fixtures/fem-d-layers.csv) and the sum over layers',
  },
  logResistanceRule: {
    cite: 'Conductivity about a buried pipe weighted by the logarithm of the distance, its own layer up to twice the distance to the next one',
    seen: 'original',
    at: 'rule and its errors from finite elements of two layers, tests/fixtures/fem-d-layers.csv',
  },
  usdaTexture: {
    cite: 'Soil Survey Division Staff, Soil Survey Manual, USDA Handbook 18, 2017, chapter 3: texture classes and sizes of grain',
    seen: 'quoted',
    at: 'the same inequalities in three public codes and, for part of the classes, in the glossary of the Soil Science Society of America; limits of clay after the manual as recalled',
  },
  topsoilDensities: {
    cite: 'Bulk density of agricultural topsoil by texture class, a table of the USDA extension service',
    seen: 'quoted',
    at: 'gardenguides.com/facts_6331779_bulk-density-values-soil-types.html',
  },
  astmD2487: {
    cite: 'ASTM D2487, Classification of Soils for Engineering Purposes (Unified Soil Classification System)',
    seen: 'quoted',
    at: 'scope of the edition of 2017 and a page with the table of groups; limits within it recalled',
  },
  astmD2488: { cite: 'ASTM D2488, Description and Identification of Soils (Visual-Manual Procedures)', seen: 'from memory' },
  thien1979: {
    cite: 'S. J. Thien, A flow diagram for teaching texture-by-feel analysis, Journal of Agronomic Education 8, 1979, 54–55',
    seen: 'quoted',
    at: 'a page that relays it by way of the USDA and an extension service, herbandveginfo.blogspot.com; the steps of sand and loamy sand recalled',
  },
  feelProficiency: {
    cite: 'An evaluation of student proficiency in field estimation of soil texture: students after a term right in 45 %, professionals in 46 % of cases',
    seen: 'original',
    at: 'abstract, discovery.researcher.life',
  },
  stokes1851: {
    cite: 'G. G. Stokes, On the effect of the internal friction of fluids on the motion of pendulums, Transactions of the Cambridge Philosophical Society 9, 1851; drag beyond it after C. W. Oseen, 1910',
    seen: 'from memory',
  },
} as const;
