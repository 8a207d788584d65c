import type { FeelAnswer, FeelQuestion } from '../../soil/index.js';
import type { Written } from './soil-words.js';

/** What to do and to ask at each step of judging a soil by hand. */
export const FEEL_QUESTION_WORDS: Readonly<Record<FeelQuestion, Written>> = {
  ball: () =>
    'Pick stones and roots out of a handful of soil, wet it little by little and knead it until it is like putty. Press it in your fist. Does it stay together as a ball?',
  ribbon: () =>
    'Push the soil between thumb and forefinger over the edge of the finger, so that it comes out as an even band. Let the band hang down. How long does it get before it breaks?',
  'grain of a loam': () => RUB,
  'grain of a clay loam': () => RUB,
  'grain of a clay': () => RUB,
};

const RUB = 'Wet a pinch of the soil very much in the palm of the hand and rub it with a finger of the other. What do you feel most?';

/** What each answer means. */
export const FEEL_ANSWER_WORDS: Readonly<Record<FeelAnswer, Written>> = {
  'no ball': () => 'It falls apart as soon as the hand opens.',
  ball: () => 'It stays together when it is handled with care.',
  'no ribbon': () => 'There is no band; it crumbles at once.',
  'ribbon under 25 mm': (system) => `It breaks before it is ${system === 'us' ? '1 inch' : '25 mm'} long.`,
  'ribbon of 25 to 50 mm': (system) => `It breaks between ${system === 'us' ? '1 and 2 inches' : '25 and 50 mm'}.`,
  'ribbon over 50 mm': (system) => `It gets longer than ${system === 'us' ? '2 inches' : '50 mm'}.`,
  gritty: () => 'Grit: single grains scratch.',
  smooth: () => 'Smoothness, as of flour or soap.',
  neither: () => 'Neither of the two more than the other.',
};
