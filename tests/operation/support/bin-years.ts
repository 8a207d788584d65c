import fc from 'fast-check';
import { type EnergySignature, energySignature } from '../../../src/building/index.js';
import type { BinYearInput, PartLoadForm, FluidBin } from '../../../src/operation/index.js';
import { celsius, electricWatts, fraction, hours, kilowatts } from '../../../src/units/index.js';
import { inventedChiller, inventedLevel, inventedStages, inventedUnit } from './invented-unit.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** A house by its design load [kW] at −10 °C. */
export const house = (load: number): EnergySignature =>
  energySignature({
    mode: 'heating',
    form: 'anchored at design',
    designLoad: kilowatts(load),
    designOutdoor: celsius(-10),
    indoor: celsius(20),
    balancePoint: celsius(16),
  });
/** A flat that is cooled. */
export const flat: EnergySignature = energySignature({
  mode: 'cooling',
  designLoad: kilowatts(12),
  designOutdoor: celsius(34),
  indoor: celsius(25),
  balancePoint: celsius(20),
});
/** A bin by outdoor temperature [degC], hours and entering fluid [degC]. */
export const bin = (outdoor: number, time: number, enteringFluid: number): FluidBin => ({
  outdoor: celsius(outdoor),
  time: hours(time),
  enteringFluid: celsius(enteringFluid),
});

const anyBins = (coldest: number, warmest: number, fluid: readonly [number, number]): fc.Arbitrary<readonly FluidBin[]> =>
  fc
    .array(fc.tuple(between(coldest, warmest), between(1, 500), between(...fluid)), { minLength: 1, maxLength: 30 })
    .map((rows) => rows.map((row) => bin(...row)));
const anyCycling: fc.Arbitrary<PartLoadForm | undefined> = fc.oneof(
  fc.constant(undefined),
  between(0, 0.5).map((share): PartLoadForm => ({ form: 'degradation', degradation: fraction(share) })),
  between(0.5, 1).map((share): PartLoadForm => ({ form: 'load share', loadShare: fraction(share) })),
);
/** Any season of the invented unit, in either mode. */
export const anyYear: fc.Arbitrary<BinYearInput> = fc
  .oneof(
    fc.record({
      signature: between(1, 30).map(house),
      bins: anyBins(-20, 25, [-6, 20]),
      unit: fc.constant(inventedUnit),
      cycling: anyCycling,
      pumpPower: between(0, 400).map(electricWatts),
      auxiliaryEfficiency: between(0.5, 1).map(fraction),
    }),
    fc.record({
      signature: between(1, 30).map(house),
      bins: anyBins(-20, 25, [-6, 20]),
      unit: fc.constantFrom(inventedLevel, inventedStages),
      cycling: fc.constant(undefined),
      pumpPower: between(0, 400).map(electricWatts),
    }),
    fc.record({ signature: fc.constant(flat), bins: anyBins(15, 42, [4, 41]), unit: fc.constant(inventedChiller), cycling: anyCycling }),
  )
  .map(({ cycling, ...rest }) => ({ ...rest, ...(cycling && { cycling }) }));
