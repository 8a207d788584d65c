import type { DepthPurpose, DryingRule, FieldConsequence, PitNote, SamplingRule, SamplingTool } from '../../soil/index.js';
import type { UnitSystem } from '../show.js';

/** Words for a person, in the units he reads. */
export type Written = (system: UnitSystem) => string;

/** What to write down at a pit. */
export const PIT_NOTE_WORDS: Readonly<Record<PitNote, string>> = {
  'place and date': 'Number of the pit, where it lies (measured from two fixed points), date, and who looked.',
  'weather before': 'Rain, frost and drought of the weeks before: water in the ground today is not that of every season.',
  layers: 'From which depth to which depth the soil looks and digs alike; where topsoil ends and whether ground was filled in.',
  'colour and mottling':
    'Colour of the moist soil. Rusty or grey spots tell that water stands there at times; write down the highest depth that has them.',
  seepage: 'At which depth water comes in, how fast, and where it stands when the pit is closed.',
  stones: 'How many, how large, round or sharp; share of the soil by eye; rock and the depth where it begins.',
  roots: 'How deep they go.',
  smell: 'Earth, rot, fuel or nothing. If it smells of fuel or chemicals, stop and ask the authority in charge.',
  'how it digs': 'Easily, stiffly, only in lumps; whether the walls stand or fall in.',
  photograph: 'Walls and spoil with a rule in the picture, taken from the edge and not from inside.',
};

/** How to go about a pit and its samples. */
export const SAMPLING_RULE_WORDS: Readonly<Record<SamplingRule, string>> = {
  'stay out of the pit': 'Nobody goes into the pit, not for a moment and however firm its walls look. Everything is done from the surface.',
  'beside the trench lines': 'Dig between the lines of the trenches, so that no pipe will lie on loosened soil.',
  'sample from the middle of the bucket':
    'Have the bucket set down away from the edge and the machine stopped. Take soil from the middle of a lump, not what touched steel or has dried.',
  'clean the auger': 'Bored samples: clean the auger between two depths and throw away the top of what it brings up; that fell in from above.',
  'seal at once': 'Fill a tight bag or jar at once, press the air out and keep it in the shade: soil that dries on the way is taken for dry ground.',
  'label inside and out': 'Write pit, depth and date on the bag and on a slip inside it.',
  'weigh the same day': 'Weigh the moist soil on the day it is taken, with its container, and write down what the container weighs.',
  'density from a core':
    'Soil from a bucket, a bag or an auger is loose and tells no density. Push a thin tube into firm ground at the surface of a bench or strip, keep a whole clod, or have it measured.',
  'close the pit the same day': 'Fill the pit the same day, in layers, or fence it so that no child and no animal can fall in.',
  'dig again where pits differ': 'Where two pits differ by more than neighbouring textures, dig one more between them; that one tells most.',
};

/** How to go about drying. */
export const DRYING_RULE_WORDS: Readonly<Record<DryingRule, string>> = {
  ventilate: 'Open the windows, and let nobody sleep in the room.',
  'no plastic': 'Dry in metal or heatproof glass. No plastic, no lids, no bags.',
  'organic soil not indoors': 'Peat, dark or smelling soil does not go into a kitchen oven: it smokes. Give it to a laboratory.',
  'gypsum and peat gently':
    'Soil with gypsum and peat lose more than water in a hot oven; they are dried at the lower temperature, and that is written down.',
  'weigh the tray empty': 'Weigh each tray empty, then with the moist soil, then dry.',
  'dry to constant mass': 'Weigh, dry on, weigh again, until it loses no more than the limit.',
  'cool covered': 'Let the tray cool covered before each weighing: dry soil draws water from the air.',
};

/** What a depth is sampled for. */
export const PURPOSE_WORDS: Readonly<Record<DepthPurpose, string>> = {
  'later fill': 'what the trench will be filled with',
  'heat path': 'on the way of the heat',
  pipe: 'a pipe lies here',
  'below the pipes': 'below the lowest pipe',
};

/** What brings the soil up. */
export const TOOL_WORDS: Readonly<Record<SamplingTool, string>> = {
  'bucket or hand auger': 'from the bucket, or by hand auger',
  bucket: 'from the bucket',
};

/** What gravel or organic matter changes. */
export const CONSEQUENCE_WORDS: Readonly<Record<FieldConsequence, string>> = {
  'texture of the fine earth only': 'Feel, jar and triangle tell of what passes 2 mm (0.08 in); sieve the gravel out, and weigh it.',
  'larger sample': 'Take a larger sample: one stone more or less must not decide how wet the soil is.',
  'take as gravel': 'More than half is gravel: no texture class describes it. Look up gravel in the handbook values, or have it measured.',
  'dry at low temperature': 'Dry it gently and outside the house: it loses more than water in a hot oven, and it smokes.',
  'measure organic matter': 'Have the organic matter measured by loss on ignition; the models of mineral soil hold for little of it only.',
  'take as peat': 'This is peat: a poor ground for a loop, and soft to dig in. Use the handbook values of peat, or look for other ground.',
};
