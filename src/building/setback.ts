import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Energy, Fraction, Power, Temperature, Time } from '../units/index.js';
import { demandOwnSlope, LOAD, OUTDOOR } from './checks.js';
import type { Setback, SetbackInput, SetbackResult } from './setback-result.js';

const DAY = 86_400 as Time;

/**
 * What a night or absence set-back saves, and what the reheat asks for.
 *
 * The house is one body of one temperature: heavy walls behind a quick room follow later than this says, so that the room falls faster at first and the saving is smaller than
 * it looks from the room. A heat pump that is sized to the load has little to reheat with; what it lacks is made by other heat, at full price, and may cost more than the set-back saves.
 *
 * @param input - line of the building, weather, schedule and time constant; the capacity of the unit where the reheat is to be held against it
 * @returns mean and lowest indoor temperature [degC], heat saved [J], load of the reheat [W], and what the unit lacks
 * @throws InputError when a number is impossible: no load in this weather, a schedule longer than its cycle, or a line anchored at design
 * @remarks
 * With K the slope, θf = outdoor + gains/K the temperature without heat and τ the time constant, the house falls as θ = θf + (θi − θf) e^(−t/τ) down to the lowered temperature, is held there,
 * and rises in the reheat time t under an even load K (θi − θf − (θ0 − θf) e^(−t/τ))/(1 − e^(−t/τ)). After a cycle the house is as it was, so that its heat is K (mean θ − θf) · cycle and the
 * saving K (θi − mean θ) · cycle. Source: own derivation, checked against the equation integrated step by step.
 *
 * Invariants: saving + energy = steady load · cycle; a deeper or longer set-back saves no less and asks for no less load; a heavier house saves less.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, kilowatts } = await import('../units/index.js');
 * const { energySignature } = await import('./signature.js');
 * const house = { designLoad: kilowatts(10), designOutdoor: celsius(-15), indoor: celsius(20), balancePoint: celsius(16) };
 * const signature = energySignature({ mode: 'heating', form: 'gains as offset', ...house });
 * const night = { signature, lowered: celsius(16), setbackTime: hours(8), reheatTime: hours(2), timeConstant: hours(40) };
 * const { savedShare, reheatLoad, steadyLoad } = setback({ ...night, outdoor: celsius(0) });
 * expect(savedShare).toBeCloseTo(0.0387, 4);
 * expect(reheatLoad).toBeGreaterThan(2 * steadyLoad);
 * ```
 */
export function setback(input: SetbackInput): SetbackResult {
  const { signature, outdoor, lowered, setbackTime, reheatTime, cycleTime = DAY, timeConstant, capacity } = input;
  demandOwnSlope(signature);
  const { slope, balancePoint, gainsTakenOff } = signature;
  demand('outdoor', 'temperature', outdoor, { atLeast: OUTDOOR.atLeast, below: balancePoint }, 'there is nothing to save without a load');
  const indoor = balancePoint + gainsTakenOff / slope;
  demand('lowered', 'temperature', lowered, { atLeast: 0, below: indoor });
  demand('timeConstant', 'time', timeConstant, { atLeast: 3600, atMost: 3_600_000 });
  demand('cycleTime', 'time', cycleTime, { atLeast: 3600, atMost: 31_622_400 });
  demand('reheatTime', 'time', reheatTime, { atLeast: 60, atMost: cycleTime });
  demand('setbackTime', 'time', setbackTime, { atLeast: 60, atMost: cycleTime - reheatTime }, 'set-back and reheat must fit into the cycle');
  if (capacity !== undefined) demand('capacity', 'power', capacity, LOAD);
  const unheated = outdoor + gainsTakenOff / slope;
  const [top, floor] = [indoor - unheated, lowered - unheated];
  const fallTime = floor > 0 ? Math.min(setbackTime, timeConstant * Math.log(top / floor)) : setbackTime;
  const bottom = top * Math.exp(-fallTime / timeConstant);
  const kept = -Math.expm1(-reheatTime / timeConstant);
  // The temperature that the reheat would end at if it went on: it reaches the usual one at the end of its time.
  const reheat = bottom + (top - bottom) / kept;
  const below =
    top * fallTime -
    timeConstant * (top - bottom) +
    (top - bottom) * (setbackTime - fallTime) +
    (top - reheat) * reheatTime +
    timeConstant * (reheat - bottom) * kept;
  const [steadyLoad, reheatLoad] = [slope * top, slope * reheat];
  const savedEnergy = slope * below;
  const without = steadyLoad * cycleTime;
  const result: Setback = {
    indoor: indoor as Temperature,
    unheatedIndoor: unheated as Temperature,
    lowestIndoor: (unheated + bottom) as Temperature,
    meanIndoor: (indoor - below / cycleTime) as Temperature,
    steadyLoad: steadyLoad as Power,
    energy: (without - savedEnergy) as Energy,
    savedEnergy: savedEnergy as Energy,
    savedShare: (savedEnergy / without) as Fraction,
    reheatLoad: reheatLoad as Power,
    ...(capacity === undefined ? {} : byCapacity(input, { top, bottom, reheatLoad, cycleTime }, capacity)),
  };
  return { ...result, findings: setbackFindings(result, capacity) };
}

/** What the unit lacks in the reheat, and how long it takes alone. */
function byCapacity(
  { signature: { slope }, setbackTime, reheatTime, timeConstant }: SetbackInput,
  { top, bottom, reheatLoad, cycleTime }: Readonly<Record<'top' | 'bottom' | 'reheatLoad' | 'cycleTime', number>>,
  capacity: Power,
): Pick<Setback, 'unmetEnergy' | 'reheatTimeByCapacity'> {
  const unmetEnergy = (Math.max(0, reheatLoad - capacity) * reheatTime) as Energy;
  const end = capacity / slope;
  const alone = end > top ? timeConstant * Math.log((end - bottom) / (end - top)) : Infinity;
  return { unmetEnergy, ...(alone <= cycleTime - setbackTime ? { reheatTimeByCapacity: alone as Time } : {}) };
}

function setbackFindings({ steadyLoad, reheatLoad, savedEnergy, unmetEnergy }: Setback, capacity: Power | undefined): readonly Finding[] {
  if (capacity === undefined || unmetEnergy === undefined || unmetEnergy <= 0) return [];
  const values = { capacity, steadyLoad, reheatLoad, unmetEnergy, savedEnergy };
  return [{ code: 'setback-reheat-short', level: 'warning', values, source: 'common practice' }];
}
