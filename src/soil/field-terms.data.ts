import type { FinesGroup } from './unified-soil.js';

/** How wet a soil is, by a word. */
export type MoistureWord = (typeof MOISTURE_WORDS)[number];

/** Dusty, dry to the touch; damp without visible water; visible free water. Source: `astmD2488`. */
export const MOISTURE_WORDS = ['dry', 'moist', 'wet'] as const;

/** Saturation from which each word holds, up to the next and in the end to full pores; a judgement, the standard has words only (`common practice`) [1]. */
export const SATURATION_FROM: Readonly<Record<MoistureWord, number>> = { dry: 0, moist: 0.2, wet: 0.85 };

/** How hard a dried lump is to crush between the fingers, weakest first. */
export type DryStrength = (typeof DRY_STRENGTHS)[number];
/** Every dry strength: crumbles of itself; to powder by a little pressure; by much; only on a hard surface; not at all. */
export const DRY_STRENGTHS = ['none', 'low', 'medium', 'high', 'very high'] as const;

/** How soon water shows on a shaken pat of wet soil and goes again when it is squeezed, slowest first. */
export type Dilatancy = (typeof DILATANCIES)[number];
/** Every dilatancy. */
export const DILATANCIES = ['none', 'slow', 'rapid'] as const;

/** How firm a thread of 3 mm is near the plastic limit, weakest first. */
export type Toughness = (typeof TOUGHNESSES)[number];
/** Every toughness; the first where no thread can be rolled. */
export const TOUGHNESSES = ['no thread', 'low', 'medium', 'high'] as const;

/** How well a thread can be rolled and rolled again, least first. */
export type Plasticity = (typeof PLASTICITIES)[number];
/** Every plasticity. */
export const PLASTICITIES = ['nonplastic', 'low', 'medium', 'high'] as const;

/** Range of a sign on its scale. */
type Range<Sign> = readonly [from: Sign, to: Sign];

/** What is usual of a group of fines. */
export interface GroupSigns {
  readonly dryStrength: Range<DryStrength>;
  readonly dilatancy: Range<Dilatancy>;
  readonly toughness: Range<Toughness>;
  readonly plasticity: Range<Plasticity>;
}

/** Signs by group, after `astmD2488`. */
export const GROUP_SIGNS: Readonly<Record<Exclude<FinesGroup, 'CL-ML'>, GroupSigns>> = {
  ML: { dryStrength: ['none', 'low'], dilatancy: ['slow', 'rapid'], toughness: ['no thread', 'low'], plasticity: ['nonplastic', 'low'] },
  CL: { dryStrength: ['medium', 'high'], dilatancy: ['none', 'slow'], toughness: ['medium', 'medium'], plasticity: ['low', 'medium'] },
  MH: { dryStrength: ['low', 'medium'], dilatancy: ['none', 'slow'], toughness: ['low', 'medium'], plasticity: ['low', 'medium'] },
  CH: { dryStrength: ['high', 'very high'], dilatancy: ['none', 'none'], toughness: ['high', 'high'], plasticity: ['high', 'high'] },
};

/** A sign that a soil is organic. */
export type OrganicSign = (typeof ORGANIC_SIGNS)[number];

/** Dark colour, a smell of decay, and fibres that can be seen. */
export const ORGANIC_SIGNS = ['dark', 'smell', 'fibres'] as const;

/** Gravel from which a soil is called by it (`astmD2488`) [kg/kg]. */
export const GRAVELLY = 0.15;

/** Gravel beyond which a soil is mostly gravel (`astmD2488`) [kg/kg]. */
export const MOSTLY_GRAVEL = 0.5;
