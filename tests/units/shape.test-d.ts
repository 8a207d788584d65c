import { describe, it } from 'vitest';
import type { Finding } from '../../src/findings/index.js';
import type { Reference, ReferenceKey } from '../../src/references/index.js';
import { type Band, bandShape, type BandShape, joinedShape, type Moisture, type SoilThermal } from '../../src/states/index.js';
import {
  celsius,
  type Conductivity,
  dayOfYear,
  type DayOfYear,
  diameterMetres,
  type Diffusivity,
  dryBasisPercent,
  type DryBasisMoisture,
  type ElectricPower,
  feet,
  fraction,
  type Head,
  type KinematicViscosity,
  massPercent,
  metres,
  type Length,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  type PipeLength,
  type Pressure,
  type RunFraction,
  type Shape,
  type ShapeNode,
  squareMetresPerSecond,
  type TaggedQuantity,
  type Temperature,
  type TemperatureDifference,
  temperatureDifference,
  type Time,
  trenchMetres,
  type TrenchLength,
  type TrenchResistance,
  unit,
  type VolumeFraction,
  type VolumetricWater,
  watts,
  type WetBasisMoisture,
} from '../../src/units/index.js';

interface Design {
  readonly depth: Length;
  readonly trenches: number;
  readonly note?: string;
  readonly coldest?: Temperature;
  readonly goal: 'heating' | 'cooling';
  readonly moisture: Moisture;
  readonly layers: readonly { readonly top: Length; readonly k: Band<'conductivity'> }[];
  readonly given: { readonly from: 'measured'; readonly k: Conductivity } | { readonly from: 'handbook'; readonly material: string };
}
const band = { low: 'conductivity', estimate: 'conductivity', high: 'conductivity', coverage: 'fraction' } as const;
const good = {
  depth: 'length',
  trenches: 'count',
  note: { optional: 'text' },
  coldest: { optional: 'temperature' },
  goal: ['heating', 'cooling'],
  moisture: { by: 'basis', oneOf: { dry: { value: 'moisture on dry basis' }, wet: { value: 'moisture on wet basis' } } },
  layers: { list: { top: 'length', k: band } },
  given: { by: 'from', oneOf: { measured: { k: 'conductivity' }, handbook: { material: 'text' } } },
} as const;

describe('what must not compile', () => {
  it('holds each case by the compiler alone', () => {
    // @ts-expect-error a temperature is no length
    const depth: Length = celsius(6);
    // @ts-expect-error a unit of another kind
    const wrongUnit = unit('length', 'degC');
    // @ts-expect-error a finding with another code's values
    const finding: Finding = { code: 'field-too-small', level: 'note', values: { coldest: celsius(1) }, source: 'common practice' };
    // @ts-expect-error an unknown source
    const source: ReferenceKey = 'nobody1900';
    const shape: Shape<Design> = good;
    // @ts-expect-error a shape with a wrong kind
    const wrongKind: Shape<Design> = { ...good, depth: 'temperature' };
    const { depth: _depth, ...rest } = good;
    // @ts-expect-error a shape with a missing key
    const missing: Shape<Design> = rest;
    // @ts-expect-error a shape with a surplus key
    const surplus: Shape<{ readonly depth: Length }> = { depth: 'length', width: 'length' };
    // @ts-expect-error an optional field taken for a required one
    const required: Shape<Design> = { ...good, note: 'text' };
    // @ts-expect-error a union with a missing member
    const member: Shape<Design> = { ...good, given: { by: 'from', oneOf: { measured: { k: 'conductivity' } } } };
    // @ts-expect-error a quoted reference must say where
    const reference: Reference = { cite: 'x', seen: 'quoted' };
    void [depth, wrongUnit, finding, source, shape, wrongKind, missing, surplus, required, member, reference, feet(1), _depth];
  });

  it('keeps apart the quantities that the trade mixes up', () => {
    // @ts-expect-error trenches are not measured in metres of pipe
    const trench: TrenchLength = pipeMetres(100);
    // @ts-expect-error nor pipe in metres of trench
    const pipe: PipeLength = trenchMetres(100);
    // @ts-expect-error a length along something is neither
    const along: PipeLength = metres(100);
    // @ts-expect-error a bore is no length
    const bore: Length = diameterMetres(0.03);
    // @ts-expect-error water over moist soil is not water over dry soil
    const wet: WetBasisMoisture = dryBasisPercent(12);
    // @ts-expect-error nor a share of volume
    const water: VolumetricWater = dryBasisPercent(12);
    // @ts-expect-error a bare share does not say on which basis
    const dry: DryBasisMoisture = fraction(0.12);
    // @ts-expect-error a moisture with the value of the other basis
    const moisture: Moisture = { basis: 'wet', value: dryBasisPercent(12) };
    // @ts-expect-error per metre of each pipe is not per metre of trench
    const resistance: TrenchResistance = pipeMetreKelvinPerWatt(0.1);
    // @ts-expect-error heat does not spread as momentum does
    const viscosity: KinematicViscosity = squareMetresPerSecond(1e-6);
    // @ts-expect-error litres are not kilograms
    const share: VolumeFraction = massPercent(25);
    // @ts-expect-error a share of time is not any share
    const running: RunFraction = fraction(0.5);
    // @ts-expect-error a day of the year is no duration
    const duration: Time = dayOfYear(32);
    // @ts-expect-error nor the other way round
    const day: DayOfYear = unit('time', 'd')(32);
    // @ts-expect-error a temperature is no difference
    const difference: TemperatureDifference = celsius(5);
    // @ts-expect-error a difference is no temperature
    const temperature: Temperature = temperatureDifference(celsius(7), celsius(2));
    // @ts-expect-error heat is no electricity
    const electric: ElectricPower = watts(500);
    // @ts-expect-error metres of head are not pascals
    const pressure: Pressure = unit('head', 'm')(3);
    // @ts-expect-error nor metres of length
    const head: Head = metres(3);
    // @ts-expect-error a plain number has no unit
    const plain: Length = 1.5;
    // @ts-expect-error a sum has lost its kind and gets it back where it is returned
    const sum: Length = metres(1) + metres(2);
    // @ts-expect-error a reader of feet reads lengths only
    const read: number = feet.of(celsius(1));
    const whole: number = metres(1) + metres(2);
    void [trench, pipe, along, bore, wet, water, dry, moisture, resistance, viscosity, share, running, duration, day, difference, temperature];
    void [electric, pressure, head, plain, sum, read, whole];
  });

  it('keeps apart bands, lists and objects of unlike kinds', () => {
    const conductivities: Shape<Band<'conductivity'>> = bandShape('conductivity');
    // @ts-expect-error the shape of a band of another kind
    const wrongBand: Shape<Band<'conductivity'>> = bandShape('diffusivity');
    // @ts-expect-error a band without its coverage
    const bare: Shape<Band<'length'>> = { low: 'length', estimate: 'length', high: 'length' };
    // @ts-expect-error a band whose limits are of another kind
    const mixed: BandShape<'length'> = { ...bandShape('length'), high: 'diameter' };
    const lengthBand = (given: Band<'length'>): Band<'length'> => given;
    // @ts-expect-error a band of trench length is no band of length
    const other = (given: Band<'trench length'>): Band<'length'> => lengthBand(given);
    const nested: Shape<readonly (readonly Length[])[]> = { list: { list: 'length' } };
    // @ts-expect-error one level of list too few
    const flat: Shape<readonly (readonly Length[])[]> = { list: 'length' };
    // @ts-expect-error a list of another kind inside
    const inner: Shape<readonly (readonly Length[])[]> = { list: { list: 'diameter' } };
    // @ts-expect-error a list taken for one
    const single: Shape<readonly Length[]> = 'length';
    const flags: Shape<{ readonly paved: boolean; readonly note: string; readonly pits: number; readonly seen: TaggedQuantity }> = {
      paved: 'flag',
      note: 'text',
      pits: 'count',
      seen: 'tagged',
    };
    // @ts-expect-error a choice that is none of the field's
    const choice: Shape<{ readonly goal: 'heating' | 'cooling' }> = { goal: ['heating', 'drying'] };
    // @ts-expect-error a text where the field has fixed choices
    const text: Shape<{ readonly goal: 'heating' | 'cooling' }> = { goal: 'text' };
    // @ts-expect-error a union told apart by a key that its members have not
    const by: Shape<Moisture> = { by: 'kind', oneOf: { dry: { value: 'moisture on dry basis' }, wet: { value: 'moisture on wet basis' } } };
    // @ts-expect-error a union whose members have each other's kinds
    const swapped: Shape<Moisture> = { by: 'basis', oneOf: { dry: { value: 'moisture on wet basis' }, wet: { value: 'moisture on dry basis' } } };
    // @ts-expect-error diffusivity and conductivity interchanged
    const soil: Shape<SoilThermal> = { conductivity: 'diffusivity', heatCapacity: 'heat capacity', diffusivity: 'conductivity' };
    const thermal = (diffusivity: Diffusivity): Diffusivity => diffusivity;
    const node: ShapeNode = good;
    // @ts-expect-error a kind that does not exist
    const unknown: ShapeNode = { depth: 'lenght' };
    void [conductivities, wrongBand, bare, mixed, other, nested, flat, inner, single, flags, choice, text, by, swapped, soil, thermal, node, unknown];
  });

  it('demands the same of a shape joined to another', () => {
    interface Drained extends Design {
      readonly fall?: RunFraction;
    }
    const drained: Shape<Drained> = joinedShape(good, { fall: { optional: 'run fraction' } });
    // @ts-expect-error a key left out
    const missing: Shape<Drained> = joinedShape(good, {});
    // @ts-expect-error a key too many
    const surplus: Shape<Drained> = joinedShape(good, { fall: { optional: 'run fraction' }, width: 'length' });
    // @ts-expect-error a further field of another kind
    const kind: Shape<Drained> = joinedShape(good, { fall: { optional: 'fraction' } });
    // @ts-expect-error joined to the shape of something else
    const other: Shape<Drained> = joinedShape({ ...good, depth: 'diameter' } as const, { fall: { optional: 'run fraction' } });
    void [drained, missing, surplus, kind, other];
  });
});
