import type { GroundResponse } from '../ground/index.js';
import {
  type FluidConvention,
  type HandbookLength,
  handbookLengthShape,
  handbookPipeLength,
  type MonthlyLength,
  monthlyLengthShape,
  monthlyPipeLength,
  type ThreePulseLength,
  threePulseLengthShape,
  threePulsePipeLength,
} from '../operation/index.js';
import type { PipeResistance, Power, Ratio, RunFraction, Shape, Time } from '../units/index.js';
import type { GroundAtPipes } from './ground-at-pipes.js';
import type { ModeDesign } from './mode-design.js';
import { monthEnd, monthTime, seasonBefore } from './months.js';

/** Where and with what a length is asked for. */
export interface LengthQuestion {
  readonly design: ModeDesign;
  readonly ground: GroundAtPipes;
  readonly response: GroundResponse;
  readonly pipeResistance: PipeResistance;
  /** How long the unit runs without a pause at the end of the design month [s]. */
  readonly peakTime: Time;
}

/** The pipe that one mode asks for in closed form, three ways. */
export interface PipeNeeded {
  /** Length by the course of the months with a spell of hard running at the end of each; it proposes, the hours decide. */
  readonly monthly: MonthlyLength;
  /** Length by three pulses, season, month and full load, in the month that binds. */
  readonly threePulse: ThreePulseLength;
  /** Handbook length with the mean fluid temperature. */
  readonly handbookMeanFluid: HandbookLength;
  /** Handbook length with the entering fluid temperature; absent where that reaches the ground's. */
  readonly handbookEnteringFluid?: HandbookLength;
  /** Length by months over handbook length with the mean fluid [1]. */
  readonly ratioToHandbook: Ratio;
}

/** Shape of {@link PipeNeeded}. */
export const pipeNeededShape: Shape<PipeNeeded> = {
  monthly: monthlyLengthShape,
  threePulse: threePulseLengthShape,
  handbookMeanFluid: handbookLengthShape,
  handbookEnteringFluid: { optional: handbookLengthShape },
  ratioToHandbook: 'ratio',
};

/** 365 days [s]. */
const YEAR = 31_536_000;

/** Years of operation followed; a shallow loop repeats itself after three or four. */
const YEARS = 5;

/** Closer than this to the ground no length is computed [K]. */
const LEAST_MARGIN = 0.01;

/**
 * The pipe that one mode asks for. The heat of the other mode is not counted, neither for nor against.
 *
 * @param question - the unit and its months, the ground, the response of the pipes
 * @returns the length by months, with the three-pulse and the handbook length beside it
 */
export function pipeNeeded(question: LengthQuestion): PipeNeeded {
  const monthly = byMonths(question);
  const handbookMeanFluid = byHandbook(question, 'mean fluid');
  const { unit } = question.design;
  const { lowest, highest } = question.ground;
  const entersBeyondGround = unit.mode === 'heating' ? unit.fluid.entering < lowest - LEAST_MARGIN : unit.fluid.entering > highest + LEAST_MARGIN;
  return {
    monthly,
    threePulse: byThreePulses(question, monthly.bindingMonth),
    handbookMeanFluid,
    ...(entersBeyondGround ? { handbookEnteringFluid: byHandbook(question, 'entering fluid') } : {}),
    ratioToHandbook: (monthly.pipe / handbookMeanFluid.pipe) as Ratio,
  };
}

const meanHeat = ({ unit }: ModeDesign, fraction: RunFraction | number): Power => (unit.performance.groundHeat * fraction) as Power;

function byMonths({ design, ground, response, pipeResistance, peakTime }: LengthQuestion): MonthlyLength {
  const { unit, runFractions } = design;
  return monthlyPipeLength({
    mode: unit.mode,
    months: runFractions.map((fraction, index) => ({
      meanHeat: meanHeat(design, fraction),
      peakHeat: meanHeat(design, fraction > 0 ? Math.max(fraction, design.shareAtDesign) : 0),
      runningHeat: meanHeat(design, fraction > 0 ? 1 : 0),
      groundTemperature: ground.onDay(monthEnd(index + 1)),
    })),
    startMonth: design.startMonth,
    years: YEARS,
    peakTime,
    riseAfter: response.riseAfter,
    pipeResistance,
    fluidTemperature: unit.fluid.mean,
    pipePerTrench: response.layout.pipesPerTrench as Ratio,
  });
}

function byThreePulses({ design, ground, response, pipeResistance, peakTime }: LengthQuestion, month: number): ThreePulseLength {
  const { unit, runFractions } = design;
  const season = seasonBefore(runFractions, month);
  return threePulsePipeLength({
    mode: unit.mode,
    seasonHeat: meanHeat(design, season.runFraction),
    monthHeat: meanHeat(design, runFractions[month - 1] ?? 0),
    peakHeat: unit.performance.groundHeat,
    seasonTime: season.time,
    monthTime: monthTime(month),
    peakTime,
    riseAfter: response.riseAfter,
    pipeResistance,
    groundTemperature: ground.onDay(monthEnd(month)),
    fluidTemperature: unit.fluid.mean,
    pipePerTrench: response.layout.pipesPerTrench as Ratio,
  });
}

function byHandbook({ design, ground, response, pipeResistance }: LengthQuestion, convention: FluidConvention): HandbookLength {
  const { unit, runFractions } = design;
  return handbookPipeLength({
    mode: unit.mode,
    capacity: unit.performance.capacity,
    cop: unit.performance.cop,
    pipeResistance,
    groundResistance: response.riseAfter(YEAR as Time),
    runFraction: Math.max(...runFractions) as RunFraction,
    groundTemperature: unit.mode === 'heating' ? ground.lowest : ground.highest,
    convention,
    fluidTemperature: convention === 'mean fluid' ? unit.fluid.mean : unit.fluid.entering,
    pipePerTrench: response.layout.pipesPerTrench as Ratio,
  });
}
