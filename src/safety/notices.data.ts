import type { Source } from '../references/index.js';

/** A situation that calls for a safety notice. */
export type Situation = (typeof SITUATIONS)[number];

/** Every situation, for lists and shapes. */
export const SITUATIONS = [
  'always',
  'digging',
  'trench-deeper-than-protection-depth',
  'test-pit',
  'pressure-test',
  'antifreeze',
  'alcohol-antifreeze',
  'ethylene-glycol-antifreeze',
  'salt-antifreeze',
  'electrical',
  'refrigerant',
  'oven-drying',
  'pipe-fusion',
  'hot-water',
] as const;

/** A safety notice: when it is shown, what it says, and what it rests on. Notices can be added to, never switched off. */
export interface Notice {
  /** Stable code, for programs and translators. */
  readonly code: string;
  /** When it is shown. */
  readonly situation: Situation;
  /** What it says, with measures in both unit systems. */
  readonly text: string;
  /** What it rests on. */
  readonly source: Source;
}

/** The notices, in the order in which the work meets them. */
export const NOTICES: readonly Notice[] = [
  {
    code: 'local-rules',
    situation: 'always',
    source: 'common practice',
    text: 'Permits, registration, setbacks and antifreeze rules differ from place to place. Ask the authority in charge before digging; its rules override anything computed here.',
  },
  {
    code: 'qualified-heat-loss',
    situation: 'always',
    source: 'common practice',
    text: 'The design heat loss and heat gain must come from a qualified calculation for this house, not from its floor area.',
  },
  {
    code: 'locate-utilities',
    situation: 'digging',
    source: 'common practice',
    text: 'Have every public line located and marked before the first bucket, trace private lines (outbuildings, gas tanks, irrigation, septic) yourself, and dig by hand near the marks.',
  },
  {
    code: 'test-pit',
    situation: 'test-pit',
    source: 'common practice',
    text: 'Never climb into a test pit, to sample it or for any other reason: its walls collapse without warning. Take the soil from the bucket once it is set down, or with a hand auger from the surface, stay back from the edge, and fill or fence the pit the same day.',
  },
  {
    code: 'trench-collapse',
    situation: 'digging',
    source: 'common practice',
    text: 'Trench walls collapse without warning, and a cubic metre (35 cubic feet) of soil weighs one and a half to two tonnes. Lay pipe from the surface, or slope or shore the walls before anyone enters. Keep spoil and machines back from the edge, provide a ladder, and never work alone.',
  },
  {
    code: 'trench-protection-depth',
    situation: 'trench-deeper-than-protection-depth',
    source: 'common practice',
    text: 'This trench is deeper than the depth from which wall protection is required. Nobody may enter it unless it is sloped, shored or shielded as local law requires.',
  },
  {
    code: 'oven-drying',
    situation: 'oven-drying',
    source: 'common practice',
    text: 'Dry soil at 105 to 110 °C (221 to 230 °F) in a well ventilated place, in metal or heatproof glass and never in plastic, with somebody near; never in a microwave unattended. Keep organic, smelling or contaminated soil out of a kitchen oven: it smokes, and the smoke is harmful.',
  },
  {
    code: 'oven-gently',
    situation: 'oven-drying',
    source: 'astmD2216',
    text: 'Peat, dark or smelling soil and soil with gypsum lose more than water in a hot oven. Dry them at no more than 60 °C (140 °F), outside the house or in a laboratory, and write down that they were dried so.',
  },
  {
    code: 'pipe-fusion',
    situation: 'pipe-fusion',
    source: 'common practice',
    text: 'Fusion plates run near 260 °C (500 °F) and strapped coils spring open when cut. Follow the pipe maker’s heating and cooling times; some places want a certified person for buried joints.',
  },
  {
    code: 'pressure-test',
    situation: 'pressure-test',
    source: 'common practice',
    text: 'Test with water, never with air or gas, before backfilling. Stand clear of pipe and joints under pressure. Stay below the rating of the weakest part at its temperature, unless the rule you test by allows more, never more than 1.5 times the rating, and every part is made for it.',
  },
  {
    code: 'antifreeze',
    situation: 'antifreeze',
    source: 'common practice',
    text: 'Use only an antifreeze that the local authority and the unit’s maker accept, keep it out of drains and drinking water, protect filling lines against backflow, and read its safety data sheet.',
  },
  {
    code: 'alcohol',
    situation: 'alcohol-antifreeze',
    source: 'solutionFlashPoints',
    text: 'Alcohols burn, and mixed with water they still do: ethanol of 19 % by mass gives off a vapour that a spark lights from about 37 °C (99 °F), stronger mixtures sooner. Methanol is poisonous by mouth, skin and breath. No open flame or spark while mixing or filling; ventilate; many places forbid them.',
  },
  {
    code: 'alcohol-drums',
    situation: 'alcohol-antifreeze',
    source: 'common practice',
    text: 'Keep drums of alcohol outdoors, never in a cellar, and ground drum and pump to each other before pouring. Let the concentrate in below the surface of the water, or buy it mixed.',
  },
  {
    code: 'ethylene-glycol',
    situation: 'ethylene-glycol-antifreeze',
    source: 'common practice',
    text: 'Ethylene glycol tastes sweet and kills: a mouthful can be deadly to a child or a dog. Keep it locked away, mop up every spill, and call a poison centre at once if any is swallowed.',
  },
  {
    code: 'salt-solution',
    situation: 'salt-antifreeze',
    source: 'heinonen1997',
    text: 'Salt solutions creep through threaded joints and attack zinc, and some of them copper alloys and stainless steel. Fill one only where the unit’s maker agrees in writing and seals, pump and sealant are made for it.',
  },
  {
    code: 'antifreeze-label',
    situation: 'antifreeze',
    source: 'common practice',
    text: 'Label the loop at the unit with fluid, concentration, freezing point and date. Catch what is drained and dispose of it by a permitted route; never mix kinds of antifreeze.',
  },
  {
    code: 'electrical',
    situation: 'electrical',
    source: 'common practice',
    text: 'Circuits, disconnects and the service check belong to a licensed electrician where the law says so. Switch off and lock out before opening a unit.',
  },
  {
    code: 'refrigerant',
    situation: 'refrigerant',
    source: 'common practice',
    text: 'Work on the refrigerant circuit needs a certified technician.',
  },
  {
    code: 'legionella',
    situation: 'hot-water',
    source: 'hseHsg274',
    text: 'Legionella multiply in warm standing water, most between 20 and 45 °C (68 and 113 °F), and kill by the spray of a shower. Guidance commonly asks for storage at 60 °C (140 °F) and 50 °C (122 °F) at the taps. The local code decides; unused pipes and lukewarm preheat tanks need a look of their own.',
  },
  {
    code: 'scalding',
    situation: 'hot-water',
    source: 'common practice',
    text: 'Water hot enough against legionella scalds: at 60 °C (140 °F) within seconds, children and old people sooner. Where the local code asks for it, a mixing valve guards the taps. Tanks under pressure need their safety valve and expansion; piping, valves and any heater in the tank belong to licensed trades.',
  },
];
