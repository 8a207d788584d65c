import type { FluidName, FluidUse } from '../../fluid/index.js';

/** Fluids by the names people know them by. */
export const FLUID_WORDS: Readonly<Record<FluidName, string>> = {
  water: 'water',
  'propylene-glycol': 'propylene glycol',
  'ethylene-glycol': 'ethylene glycol',
  ethanol: 'ethanol (spirit)',
  methanol: 'methanol (wood alcohol)',
  glycerol: 'glycerol',
  'potassium-carbonate': 'potassium carbonate',
  'potassium-formate': 'potassium formate',
  'potassium-acetate': 'potassium acetate',
  'calcium-chloride': 'calcium chloride',
};

/** Where a fluid may go. */
export const FLUID_USE_WORDS: Readonly<Record<FluidUse, string>> = {
  house: 'units for houses are made for it; the local code still has the last word',
  'check local code': 'poisonous and forbidden in many places: ask the authority in charge before ordering it',
  'written consent': 'not for a house without the written consent of the unit’s maker',
};

/** Hazard statements of the globally harmonised system, in short. */
export const HAZARD_WORDS: Readonly<Record<string, string>> = {
  H225: 'liquid and vapour catch fire easily',
  H301: 'poisonous if swallowed',
  H302: 'harmful if swallowed',
  H311: 'poisonous through the skin',
  H315: 'irritates the skin',
  H319: 'irritates the eyes badly',
  H331: 'poisonous to breathe',
  H335: 'may irritate the airways',
  H370: 'damages organs, the eyes among them',
  H373: 'may damage the kidneys over time',
};

/**
 * What to mind with a fluid beyond its notices: materials after `heinonen1997`, inhibitors after `klotzbucher2007` and
 * `triazoleProject`, denaturants after `ethanolBrines2017`, the rest common practice.
 */
export const HANDLING_WORDS: Readonly<Record<FluidName, readonly string[]>> = /* @__PURE__ */ (() => {
  const glycol = [
    'Keep zinc out of the loop: inhibitors attack galvanised steel. Polyethylene and EPDM seals are not harmed.',
    'Glycol itself decays in ground water, with oxygen and without; benzotriazole and tolyltriazole among its inhibitors do not. Ask for a product without them.',
    'Mix with demineralised water or water low in chloride, and never thin it below the share that its inhibitors need: thin glycol feeds bacteria.',
  ];
  const alcohol = [
    'Iron corrodes in alcohol without an inhibitor. Polyethylene and EPDM seals are not harmed.',
    'Mix outdoors, away from any flame, spark, motor or drain.',
  ];
  const salt = [
    'Salt solutions have a low surface tension and leak at threads that hold water: special sealant, an air-tight system and pump seals made for them are needed.',
    'With air in the loop they corrode; calcium chloride attacks stainless steel and copper alloys.',
  ];
  return {
    water: [],
    'propylene-glycol': glycol,
    'ethylene-glycol': glycol,
    ethanol: [
      'Denatured spirit holds up to 12 % of other alcohols or ketones: its freezing point and density are those of its own sheet.',
      ...alcohol,
    ],
    methanol: alcohol,
    glycerol: ['Thick in the cold, and rare in loops: ask the unit’s maker about seals and pump.'],
    'potassium-carbonate': salt,
    'potassium-formate': salt,
    'potassium-acetate': salt,
    'calcium-chloride': salt,
  };
})();
