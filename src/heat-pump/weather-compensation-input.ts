import { demand, demandChoice, demandObject, InputError } from '../errors/index.js';
import type { Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';

/** Water of one temperature whenever the unit heats. */
export interface FixedSupply {
  /** How the supply temperature is controlled. */
  readonly control: 'fixed';
  /** Water leaving the unit for the emitters, 20 to 90 [degC]. */
  readonly supplyTemperature: Temperature;
}

/** Water the warmer the colder it is outdoors. */
export interface CompensatedSupply {
  /** How the supply temperature is controlled. */
  readonly control: 'by outdoor temperature';
  /** Outdoor temperature that the design is for, at least 1 K below the balance point [degC]. */
  readonly designOutdoor: Temperature;
  /** Water leaving the unit for the emitters there, 20 to 90 [degC]. */
  readonly designSupply: Temperature;
  /** Outdoor temperature at which no heat is needed, at most the indoor temperature [degC]. */
  readonly balancePoint: Temperature;
  /** Indoor temperature, 5 to 35 [degC]. */
  readonly indoor: Temperature;
  /** Exponent of the emitters, 0.8 to 2; 1, a straight line, when left out [1]. */
  readonly exponent?: Ratio;
  /** Supply minus return at design, 0 to 30; it falls with the load, as at a flow that stays. None when left out, which for an exponent above 1 is on the safe side [K]. */
  readonly waterSpread?: TemperatureDifference;
  /** The control sends no colder water than this [degC]. */
  readonly lowestSupply?: Temperature;
  /** The control sends no warmer water than this [degC]. */
  readonly highestSupply?: Temperature;
}

/** How warm the water is that the unit makes for the emitters. */
export type SupplyControl = FixedSupply | CompensatedSupply;

/** Shape of {@link SupplyControl}. */
export const supplyControlShape: Shape<SupplyControl> = {
  by: 'control',
  oneOf: {
    fixed: { supplyTemperature: 'temperature' },
    'by outdoor temperature': {
      designOutdoor: 'temperature',
      designSupply: 'temperature',
      balancePoint: 'temperature',
      indoor: 'temperature',
      exponent: { optional: 'ratio' },
      waterSpread: { optional: 'temperature difference' },
      lowestSupply: { optional: 'temperature' },
      highestSupply: { optional: 'temperature' },
    },
  },
};

const SUPPLY = { atLeast: 20, atMost: 90 } as const;

/** Exponents that emitters may have [1]. */
export const EXPONENT = { atLeast: 0.8, atMost: 2 } as const;

/** Refuses a control that cannot be. */
export function demandSupplyControl(control: SupplyControl): void {
  demandObject('', control);
  demandChoice('control', control.control, ['fixed', 'by outdoor temperature']);
  if (control.control === 'fixed') {
    demand('supplyTemperature', 'temperature', control.supplyTemperature, SUPPLY);
    return;
  }
  const { designOutdoor, designSupply, balancePoint, indoor, exponent = 1, waterSpread = 0, lowestSupply, highestSupply } = control;
  demand('indoor', 'temperature', indoor, { atLeast: 5, atMost: 35 });
  demand(
    'balancePoint',
    'temperature',
    balancePoint,
    { atLeast: -30, atMost: indoor },
    'gains of the house carry it from there to the indoor temperature',
  );
  demand('designOutdoor', 'temperature', designOutdoor, { atLeast: -75, atMost: balancePoint - 1 });
  demand('designSupply', 'temperature', designSupply, SUPPLY);
  demand('exponent', 'ratio', exponent, EXPONENT);
  demand('waterSpread', 'temperature difference', waterSpread, { atLeast: 0, atMost: 30 });
  if (lowestSupply !== undefined) demand('lowestSupply', 'temperature', lowestSupply, { atLeast: 0, atMost: SUPPLY.atMost });
  if (highestSupply !== undefined) demand('highestSupply', 'temperature', highestSupply, { atLeast: lowestSupply ?? 0, atMost: 95 });
  if (designSupply - waterSpread - indoor >= 0.5) return;
  throw new InputError({
    code: 'impossible',
    argument: 'designSupply',
    value: { kind: 'temperature', value: designSupply },
    allowed: `water that comes back at least 0.5 K warmer than the room, above ${String(indoor + waterSpread + 0.5)} degC`,
  });
}
