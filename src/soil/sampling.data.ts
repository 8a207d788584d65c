/** What to write down at a pit. */
export type PitNote = (typeof PIT_NOTES)[number];

/** Everything to write down at a pit, in the order in which it is met. */
export const PIT_NOTES = [
  'place and date',
  'weather before',
  'layers',
  'colour and mottling',
  'seepage',
  'stones',
  'roots',
  'smell',
  'how it digs',
  'photograph',
] as const;

/** How to go about a pit and its samples. */
export type SamplingRule = (typeof SAMPLING_RULES)[number];

/** Every rule, in the order of the work. */
export const SAMPLING_RULES = [
  'stay out of the pit',
  'beside the trench lines',
  'sample from the middle of the bucket',
  'clean the auger',
  'seal at once',
  'label inside and out',
  'weigh the same day',
  'density from a core',
  'close the pit the same day',
  'dig again where pits differ',
] as const;

/** How to go about drying. */
export type DryingRule = (typeof DRYING_RULES)[number];

/** Every rule of drying, in the order of the work. */
export const DRYING_RULES = [
  'ventilate',
  'no plastic',
  'organic soil not indoors',
  'gypsum and peat gently',
  'weigh the tray empty',
  'dry to constant mass',
  'cool covered',
] as const;

/** What a depth is sampled for. */
export type DepthPurpose = (typeof DEPTH_PURPOSES)[number];

/** Every purpose: what the trench will be filled with, the way of the heat between it and the pipes, a pipe, the ground below. */
export const DEPTH_PURPOSES = ['later fill', 'heat path', 'pipe', 'below the pipes'] as const;

/** What brings the soil up to where a person stands. */
export type SamplingTool = (typeof SAMPLING_TOOLS)[number];

/** Every tool; a hand auger without extensions ends where only the bucket is left. */
export const SAMPLING_TOOLS = ['bucket or hand auger', 'bucket'] as const;
