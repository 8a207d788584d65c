/** A duty of the unit in plain numbers: heat or cold wanted [J], capacity and electric input [W]. */
export interface Duty {
  readonly energy: number;
  readonly capacity: number;
  readonly power: number;
}

/** What a month asks for, in plain numbers [s, J]. */
export interface MonthAsked {
  readonly time: number;
  readonly heating: Duty;
  readonly cooling: Duty | undefined;
  readonly wanted: number;
  readonly hotWater: Omit<Duty, 'energy'> | undefined;
}

/** What comes of it, in plain numbers [s, J]. */
export interface MonthMade {
  readonly heatingTime: number;
  readonly coolingTime: number;
  readonly hotWaterTime: number;
  readonly heated: number;
  readonly cooled: number;
  readonly byHeating: number;
  readonly byCooling: number;
  readonly byOwnRun: number;
  readonly byResistance: number;
}

/**
 * One month of a unit with a desuperheater, on the mean over the month.
 *
 * Cooling comes first, as its heat is left over anyhow. Then the heating runs as much longer as the hot water takes from it, until the time of
 * the month is used up; at last the unit, if it may, makes the rest of the hot water in what time remains.
 */
export function desuperheaterMonth(share: number, { time, heating, cooling, wanted, hotWater }: MonthAsked): MonthMade {
  const coolingTime = cooling === undefined ? 0 : Math.min(time, cooling.energy / cooling.capacity);
  const rejected = cooling === undefined ? 0 : (cooling.capacity + cooling.power) * coolingTime;
  const byCooling = Math.min(wanted, share * rejected);
  const heat = heatingPart(share, heating, wanted - byCooling, time - coolingTime);
  const rest = wanted - byCooling - heat.byHeating;
  const left = Math.max(0, time - coolingTime - heat.heatingTime);
  const byOwnRun = hotWater === undefined ? 0 : Math.min(rest, hotWater.capacity * left);
  return {
    ...heat,
    coolingTime,
    hotWaterTime: hotWater === undefined ? 0 : Math.min(left, byOwnRun / hotWater.capacity),
    cooled: cooling === undefined ? 0 : Math.min(cooling.energy, cooling.capacity * coolingTime),
    byCooling,
    byOwnRun,
    byResistance: rest - byOwnRun,
  };
}

/** Heating until house and tank have enough, or the time is over; a full tank takes nothing. */
function heatingPart(
  share: number,
  { energy, capacity }: Duty,
  wanted: number,
  time: number,
): Pick<MonthMade, 'heatingTime' | 'heated' | 'byHeating'> {
  const byHeating = Math.min(wanted, (share * energy) / (1 - share));
  const heatingTime = (energy + byHeating) / capacity;
  if (heatingTime <= time) return { heatingTime, heated: energy, byHeating };
  const taken = Math.min(wanted, share * capacity * time);
  return { heatingTime: time, heated: Math.min(energy, capacity * time - taken), byHeating: taken };
}
