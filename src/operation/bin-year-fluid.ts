import { type WeatherBin, weatherBinShape } from '../building/index.js';
import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Shape, Temperature } from '../units/index.js';

/** Time at an outdoor temperature, with the fluid that the loop gives then. */
export interface FluidBin extends WeatherBin {
  /** Fluid entering the heat pump, −40 to 60; not looked at where there is no load [degC]. */
  readonly enteringFluid: Temperature;
  /** Temperature supplied to the load, −50 to 150; only for a unit of several levels whose maps ask for it [degC]. */
  readonly supplyTemperature?: Temperature;
}

/** Fluid that enters the heat pump at an outdoor temperature. */
export interface FluidPlace {
  /** Outdoor temperature, −95 to 65 [degC]. */
  readonly outdoor: Temperature;
  /** Fluid entering the heat pump, −40 to 60 [degC]. */
  readonly enteringFluid: Temperature;
}

/** What {@link fluidAlongLine} needs. */
export interface FluidLineInput {
  /** Bins of outdoor temperature, 1 to 10 000. */
  readonly bins: readonly WeatherBin[];
  /** The fluid that the loop is designed for at the outdoor design temperature. */
  readonly atDesign: FluidPlace;
  /** The fluid when the season begins: about the soil at pipe depth then, autumn for heating, at the balance point of the building; 1 K or more away. */
  readonly atBalance: FluidPlace;
}

/** Shape of {@link FluidBin}. */
export const fluidBinShape: Shape<FluidBin> = /* @__PURE__ */ joinedShape(weatherBinShape, {
  enteringFluid: 'temperature',
  supplyTemperature: { optional: 'temperature' },
});

/** Shape of {@link FluidLineInput}. */
export const fluidLineInputShape: Shape<FluidLineInput> = {
  bins: { list: weatherBinShape },
  atDesign: { outdoor: 'temperature', enteringFluid: 'temperature' },
  atBalance: { outdoor: 'temperature', enteringFluid: 'temperature' },
};

/** Bounds against absurd input [degC]. */
export const OUTDOOR = { atLeast: -95, atMost: 65 } as const;
/** As rating points have it [degC]. */
export const ENTERING = { atLeast: -40, atMost: 60 } as const;

/**
 * Gives every bin of outdoor temperature the fluid on a straight line between the design day and the begin of the season.
 *
 * A rough way for a first look. The fluid of a loop in soil lags weeks behind the weather: a mild day in March has colder fluid than the same day in
 * November, and the line knows one fluid for both. Bins of one month each, with the fluid of that month from a simulation, avoid that.
 *
 * @param input - bins and the two ends of the line
 * @returns the bins with their entering fluid [degC], the line led on beyond its ends
 * @throws InputError for a value out of its range, or ends less than 1 K apart
 * @remarks Invariants tested: the ends are met; straight between.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours } = await import('../units/index.js');
 * const bins = [-10, 3, 16].map((outdoor) => ({ outdoor: celsius(outdoor), time: hours(10) }));
 * const atDesign = { outdoor: celsius(-10), enteringFluid: celsius(0) };
 * const atBalance = { outdoor: celsius(16), enteringFluid: celsius(8) };
 * expect(fluidAlongLine({ bins, atDesign, atBalance }).map(({ enteringFluid }) => enteringFluid)).toEqual([0, 4, 8]);
 * ```
 */
export function fluidAlongLine({ bins, atDesign, atBalance }: FluidLineInput): readonly FluidBin[] {
  demandCount('bins', bins, 1, 10_000);
  demandPlace('atDesign', atDesign);
  demandPlace('atBalance', atBalance);
  const span = atBalance.outdoor - atDesign.outdoor;
  if (Math.abs(span) < 1) {
    throw new InputError({
      code: 'impossible',
      argument: 'atBalance.outdoor',
      value: { kind: 'temperature', value: atBalance.outdoor },
      allowed: `1 K or more from the design outdoor temperature, ${String(atDesign.outdoor)} degC`,
    });
  }
  return bins.map((bin, index) => {
    demandWeather(`bins.${String(index)}`, bin);
    const share = (bin.outdoor - atDesign.outdoor) / span;
    const enteringFluid = atDesign.enteringFluid + share * (atBalance.enteringFluid - atDesign.enteringFluid);
    return { outdoor: bin.outdoor, time: bin.time, enteringFluid: enteringFluid as Temperature };
  });
}

/** Refuses a bin that no weather has. */
export function demandWeather(argument: string, bin: WeatherBin): void {
  demandObject(argument, bin);
  demand(`${argument}.outdoor`, 'temperature', bin.outdoor, OUTDOOR);
  demand(`${argument}.time`, 'time', bin.time, { atLeast: 0, atMost: 1e9 });
}

function demandPlace(argument: string, place: FluidPlace): void {
  demandObject(argument, place);
  demand(`${argument}.outdoor`, 'temperature', place.outdoor, OUTDOOR);
  demand(`${argument}.enteringFluid`, 'temperature', place.enteringFluid, ENTERING);
}
