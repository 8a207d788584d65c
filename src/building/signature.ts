import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Conductance, Power, Shape, Temperature } from '../units/index.js';
import { DEGF, demandSignature, FORMS, INDOOR, LOAD, MODES, OUTDOOR } from './checks.js';

/**
 * How a heating load falls from the design load to nothing at the balance point.
 *
 * - `gains as offset`: the slope is the building's own, design load over (indoor − design outdoor), and gains from people, appliances
 *   and sun lower the whole line. For the heat of a year.
 * - `anchored at design`: the line passes through the full design load, with no credit for gains in the coldest hour, hence is
 *   steeper. For sizing.
 */
export type SignatureForm = 'gains as offset' | 'anchored at design';

/** What both kinds of load have. */
interface DesignLoad {
  /** Heat loss or heat gain at the outdoor design temperature, from a room-by-room calculation, 0.001 to 1e9 [W]. */
  readonly designLoad: Power;
  /** Outdoor temperature the design load is for [degC]. */
  readonly designOutdoor: Temperature;
  /** Indoor temperature the design load is for, 0 to 50 [degC]. */
  readonly indoor: Temperature;
  /** Outdoor temperature at which the load begins, at least 1 K from the design outdoor temperature [degC]. */
  readonly balancePoint: Temperature;
}

/** A load at design, in either mode. */
export type SignatureInput =
  | (DesignLoad & {
      readonly mode: 'heating';
      /** Which of the two lines. */
      readonly form: SignatureForm;
    })
  | (DesignLoad & {
      /** A design gain holds people, appliances and sun already; its line is always anchored at design. */
      readonly mode: 'cooling';
    });

/** The load of a building as a line over the outdoor temperature. */
export interface EnergySignature {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Which of the two lines. */
  readonly form: SignatureForm;
  /** Load per kelvin beyond the balance point [W/K]. */
  readonly slope: Conductance;
  /** Outdoor temperature at which the load begins [degC]. */
  readonly balancePoint: Temperature;
  /** Load given for the design outdoor temperature [W]. */
  readonly designLoad: Power;
  /** Outdoor temperature the design load is for [degC]. */
  readonly designOutdoor: Temperature;
  /** Load that the line has there [W]. */
  readonly loadAtDesign: Power;
  /** Gains taken off the design load; 0 on a line anchored at design [W]. */
  readonly gainsTakenOff: Power;
}

/** Shape of {@link SignatureInput}. */
export const signatureInputShape: Shape<SignatureInput> = {
  by: 'mode',
  oneOf: {
    heating: {
      designLoad: 'power',
      designOutdoor: 'temperature',
      indoor: 'temperature',
      balancePoint: 'temperature',
      form: FORMS,
    },
    cooling: { designLoad: 'power', designOutdoor: 'temperature', indoor: 'temperature', balancePoint: 'temperature' },
  },
};

/** Shape of {@link EnergySignature}. */
export const energySignatureShape: Shape<EnergySignature> = {
  mode: MODES,
  form: FORMS,
  slope: 'conductance',
  balancePoint: 'temperature',
  designLoad: 'power',
  designOutdoor: 'temperature',
  loadAtDesign: 'power',
  gainsTakenOff: 'power',
};

/** Closer than this no line can be drawn from the balance point to the design load [K]. */
const LEAST_SPAN = 1;

/**
 * The load of a building as a straight line over the outdoor temperature.
 *
 * A design load comes from a room-by-room calculation by a competent person; it is never made here from floor area. The line is
 * good for months and years; an hour of sun or wind it does not know. Cooling is the weaker half: gains by sun and moisture do
 * not follow the outdoor temperature, and a year of it is good to 25 or 30 %.
 *
 * @param input - design load [W], outdoor, indoor and balance temperature [degC], in heating the form of the line
 * @returns slope [W/K], balance point, and the load at design conditions
 * @throws InputError unless indoor ≥ balance point > outdoor in heating, and balance point ≤ indoor and < outdoor in cooling
 * @remarks
 * `gains as offset`: K = Φ/(θi − θe), L = K (θbal − θo). `anchored at design`: m = Φ/(θbal − θe), L = m (θbal − θo). Nothing below zero.
 * For one balance point the two differ by the constant ratio (θbal − θe)/(θi − θe). Sources: `en12831`, `en14825`.
 *
 * Invariants: a line anchored at design has exactly the design load there; gains taken off + load at design = design load.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts } = await import('../units/index.js');
 * const house = { designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21), balancePoint: celsius(16) };
 * const forSizing = energySignature({ mode: 'heating', form: 'anchored at design', ...house });
 * const forEnergy = energySignature({ mode: 'heating', form: 'gains as offset', ...house });
 * expect(kilowatts.of(loadAt(forSizing, celsius(0)))).toBeCloseTo(6.194, 3);
 * expect(kilowatts.of(loadAt(forEnergy, celsius(0)))).toBeCloseTo(5.333, 3);
 * ```
 */
export function energySignature(input: SignatureInput): EnergySignature {
  const { mode, designLoad, designOutdoor, indoor, balancePoint } = input;
  demandChoice('mode', mode, MODES);
  const form = input.mode === 'heating' ? input.form : 'anchored at design';
  demandChoice('form', form, FORMS);
  demand('designLoad', 'power', designLoad, LOAD);
  demand('designOutdoor', 'temperature', designOutdoor, OUTDOOR);
  demand('indoor', 'temperature', indoor, INDOOR, DEGF);
  demand('balancePoint', 'temperature', balancePoint, OUTDOOR);
  const span = mode === 'heating' ? balancePoint - designOutdoor : designOutdoor - balancePoint;
  if (span < LEAST_SPAN) refuseBalancePoint(balancePoint, `at least 1 K ${mode === 'heating' ? 'above' : 'below'} the design outdoor temperature`);
  if (balancePoint > indoor) refuseBalancePoint(balancePoint, `at most the indoor temperature, ${String(indoor)} degC`);
  const slope = designLoad / (form === 'gains as offset' ? indoor - designOutdoor : span);
  const loadAtDesign = form === 'gains as offset' ? slope * span : designLoad;
  return {
    mode,
    form,
    slope: slope as Conductance,
    balancePoint,
    designLoad,
    designOutdoor,
    loadAtDesign: loadAtDesign as Power,
    gainsTakenOff: (form === 'gains as offset' ? slope * (indoor - balancePoint) : 0) as Power,
  };
}

function refuseBalancePoint(value: Temperature, allowed: string): never {
  throw new InputError({
    code: 'impossible',
    argument: 'balancePoint',
    value: { kind: 'temperature', value },
    allowed,
    hint: 'indoor, balance and outdoor temperature may be interchanged',
  });
}

/**
 * The load at one outdoor temperature.
 *
 * @param signature - the building
 * @param outdoor - outdoor temperature, −95 to 65 [degC]
 * @returns load, 0 or more [W]
 * @throws InputError when a number is impossible
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts } = await import('../units/index.js');
 * const cooling = { designLoad: kilowatts(7), designOutdoor: celsius(33), indoor: celsius(25), balancePoint: celsius(20) };
 * const signature = energySignature({ mode: 'cooling', ...cooling });
 * expect(loadAt(signature, celsius(33))).toBe(kilowatts(7));
 * expect(loadAt(signature, celsius(18))).toBe(0);
 * ```
 */
export function loadAt(signature: EnergySignature, outdoor: Temperature): Power {
  demandSignature(signature);
  demand('outdoor', 'temperature', outdoor, OUTDOOR);
  const { mode, slope, balancePoint } = signature;
  const beyond = mode === 'heating' ? balancePoint - outdoor : outdoor - balancePoint;
  return (slope * Math.max(0, beyond)) as Power;
}
