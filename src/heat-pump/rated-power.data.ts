/** A part of what a unit and its loop draw. */
export type PowerPart =
  | 'compressor'
  | 'controls'
  | 'loop circulator, resistance of the unit'
  | 'loop circulator, resistance of the loop'
  | 'indoor fan, resistance of the unit'
  | 'indoor fan, resistance of the ducts'
  | 'load-side pump, resistance of the unit'
  | 'load-side pump, resistance of the heating circuit';

/** What the electric input of a rating holds. */
export interface RatedPowerContents {
  /** The rule. */
  readonly rule: 'ISO 13256-1' | 'ISO 13256-2' | 'EN 14511' | 'closed loop before 2000';
  /** What it counts. */
  readonly counted: readonly PowerPart[];
  /** What it leaves out, to be added where a bill or a season is reckoned. */
  readonly leftOut: readonly PowerPart[];
  /** What it rests on. */
  readonly source: 'iso13256' | 'en14511' | 'closedLoopPenalty';
}

/**
 * What the electric input of a rating holds, by the rule it was made by. No rule counts the whole loop circulator; `ratedPumpPower` gives what is counted and
 * `ratingAtBoundary` moves the boundary.
 */
export const RATED_POWER: readonly RatedPowerContents[] = [
  {
    rule: 'ISO 13256-1',
    counted: ['compressor', 'controls', 'loop circulator, resistance of the unit', 'indoor fan, resistance of the unit'],
    leftOut: ['loop circulator, resistance of the loop', 'indoor fan, resistance of the ducts'],
    source: 'iso13256',
  },
  {
    rule: 'ISO 13256-2',
    counted: ['compressor', 'controls', 'loop circulator, resistance of the unit', 'load-side pump, resistance of the unit'],
    leftOut: ['loop circulator, resistance of the loop', 'load-side pump, resistance of the heating circuit'],
    source: 'iso13256',
  },
  {
    rule: 'EN 14511',
    counted: ['compressor', 'controls', 'loop circulator, resistance of the unit', 'load-side pump, resistance of the unit'],
    leftOut: ['loop circulator, resistance of the loop', 'load-side pump, resistance of the heating circuit'],
    source: 'en14511',
  },
  {
    // The loop by a fixed 17 ft of water, whatever the loop is.
    rule: 'closed loop before 2000',
    counted: ['compressor', 'controls', 'loop circulator, resistance of the unit', 'loop circulator, resistance of the loop'],
    leftOut: ['indoor fan, resistance of the ducts'],
    source: 'closedLoopPenalty',
  },
];
