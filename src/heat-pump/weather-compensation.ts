import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Ratio, Shape, Temperature } from '../units/index.js';
import { type CompensatedSupply, demandSupplyControl, type SupplyControl } from './weather-compensation-input.js';

/** The water at one outdoor temperature. */
export interface SupplyState {
  /** Outdoor temperature [degC]. */
  readonly outdoor: Temperature;
  /** Load over the design load, from the balance point on; above 1 in weather colder than the design. 1 where the supply is fixed [1]. */
  readonly designLoadRatio: Ratio;
  /** What the emitters ask for at that load [degC]. */
  readonly wantedSupply: Temperature;
  /** What the control sends, within its limits [degC]. */
  readonly supplyTemperature: Temperature;
  /** Which limit of the control holds it. */
  readonly heldBy: 'nothing' | 'lowest supply' | 'highest supply';
}

/** Shape of {@link SupplyState}. */
export const supplyStateShape: Shape<SupplyState> = {
  outdoor: 'temperature',
  designLoadRatio: 'ratio',
  wantedSupply: 'temperature',
  supplyTemperature: 'temperature',
  heldBy: ['nothing', 'lowest supply', 'highest supply'],
};

/** Supply temperature over the outdoor temperature. */
export interface HeatingCurve {
  /** What the control sends at design, within its limits [degC]. */
  readonly designSupply: Temperature;
  /** Supply temperature at an outdoor temperature [degC], −75 to 60 [degC]. */
  readonly supplyAt: (outdoor: Temperature) => Temperature;
  /** The same with what led to it. */
  readonly at: (outdoor: Temperature) => SupplyState;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/**
 * Supply temperature over the outdoor temperature: fixed, or compensated by the weather.
 *
 * The load goes with balance point minus outdoor temperature, and an emitter gives what its mean excess temperature over the room, raised to its exponent, lets it. So
 * the excess goes with the load to the power of 1/exponent from the design down to nothing at the balance point, where the curve meets the indoor temperature. With the exponent 1
 * and no spread that is a straight line; in radiators' 1.3 it bends above it, and a line sends water too cool in mild weather.
 *
 * @param control - fixed temperature, or design point, balance point, exponent and limits
 * @returns the curve
 * @throws InputError when a temperature is out of its range, or the water at design would not warm the room
 * @remarks
 * x = (balance point − outdoor)/(balance point − design outdoor), not below 0; supply = indoor + (design supply − spread/2 − indoor) x^(1/n) + spread x/2: mean excess to the power
 * of the load at constant flow. The mean is arithmetic; at spreads up to half of the excess the logarithmic one differs by less than 3 %. Source: `en442Emitters`.
 *
 * Invariants: design supply at design; never rises with the outdoor temperature; within the limits; indoor temperature at the balance point where no limit holds it.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference, ratio } = await import('../units/index.js');
 * const design = { control: 'by outdoor temperature', designOutdoor: celsius(-12), designSupply: celsius(50), balancePoint: celsius(16), indoor: celsius(20) } as const;
 * expect(heatingCurve(design).supplyAt(celsius(2))).toBeCloseTo(35, 12);
 * const radiators = heatingCurve({ ...design, exponent: ratio(1.3), waterSpread: kelvinDifference(10), lowestSupply: celsius(25) });
 * expect(radiators.supplyAt(celsius(2))).toBeCloseTo(20 + 25 * 0.5 ** (1 / 1.3) + 2.5, 12);
 * expect(radiators.at(celsius(15)).heldBy).toBe('lowest supply');
 * ```
 */
export function heatingCurve(control: SupplyControl): HeatingCurve {
  demandSupplyControl(control);
  const at = (outdoor: Temperature): SupplyState => {
    demand('outdoor', 'temperature', outdoor, { atLeast: -75, atMost: 60 });
    if (control.control === 'by outdoor temperature') return compensated(control, outdoor);
    const { supplyTemperature } = control;
    return { outdoor, designLoadRatio: 1 as Ratio, wantedSupply: supplyTemperature, supplyTemperature, heldBy: 'nothing' };
  };
  if (control.control === 'fixed') {
    return { designSupply: control.supplyTemperature, supplyAt: (outdoor) => at(outdoor).supplyTemperature, at, findings: [] };
  }
  const design = at(control.designOutdoor);
  const values = { designSupply: design.wantedSupply, highestSupply: design.supplyTemperature };
  return {
    designSupply: design.supplyTemperature,
    supplyAt: (outdoor) => at(outdoor).supplyTemperature,
    at,
    findings: design.heldBy === 'highest supply' ? [{ code: 'supply-above-unit', level: 'warning', values, source: 'common practice' }] : [],
  };
}

function compensated(control: CompensatedSupply, outdoor: Temperature): SupplyState {
  const {
    designOutdoor,
    designSupply,
    balancePoint,
    indoor,
    exponent = 1,
    waterSpread = 0,
    lowestSupply = -Infinity,
    highestSupply = Infinity,
  } = control;
  const load = Math.max(0, (balancePoint - outdoor) / (balancePoint - designOutdoor));
  const designExcess = designSupply - waterSpread / 2 - indoor;
  const wanted = load === 1 ? designSupply : indoor + designExcess * load ** (1 / exponent) + (waterSpread / 2) * load;
  const sent = Math.min(Math.max(wanted, lowestSupply), highestSupply);
  return {
    outdoor,
    designLoadRatio: load as Ratio,
    wantedSupply: wanted as Temperature,
    supplyTemperature: sent as Temperature,
    heldBy: sent > wanted ? 'lowest supply' : sent < wanted ? 'highest supply' : 'nothing',
  };
}
