import type { Fraction } from '../units/index.js';
import { together } from './band-around.js';
import type { ChanceShift } from './chance-band.js';
import type { ErrorCause } from './error-causes.js';
import type { ReadMoisture } from './moisture-evidence.js';
import { modelError } from './model-error.js';
import { asTexture, lay, type SoilCase, withWater } from './soil-case.js';
import { TYPICAL_DENSITY_ERROR } from './sample-density.js';
import type { TextureShare } from './textures-within.js';
import { even, type Sides, sidesOf, sidesOfChances, sidesOfInterval } from './two-sided.js';
import { typicalSoilRange } from './typical-range.js';
import { allTogether, apart, type Banded, type PropertySides, type Shift, shiftsFrom, sidesOfShifts } from './what-if.js';

/** How well each part of a case is known. */
export interface CaseKnowledge {
  readonly possible: readonly TextureShare[];
  readonly densityError: number;
  readonly moisture: ReadMoisture;
  /** Error of the logarithm of the water that comes of carrying it to another season; 0 on the day of the sample. */
  readonly season: number;
  /** Whether the band is for the ground about the sample, not for the sample itself. */
  readonly ground: boolean;
}

/** What the errors of a case are. */
export interface CaseErrors {
  /** What the properties may be instead, by texture and the word for moisture. */
  readonly chances: (property: Banded) => readonly ChanceShift[];
  /** The same if the texture were certain. */
  readonly certain: (property: Banded) => readonly ChanceShift[];
  /** Errors on top, all together. */
  readonly onTop: PropertySides;
  /** Each cause apart, those of the chances as their standard deviation. */
  readonly causes: readonly { readonly cause: ErrorCause; readonly sides: PropertySides }[];
}

/** Two cores of one place and state scatter by 9 % each, a survey by needle probe by 10 to 15 % (`kansasCores2022`, `needleSurvey2012`). */
export const PLACE = 0.1;

/** Moisture differs by so much between the sample and the ground a few steps aside, and in dry soil by a part of itself (`common practice`) [kg/kg]. */
const STEPS_ASIDE = 0.02;
const PART_ASIDE = 0.25;

/** Heat capacities of the cores scatter by 15 % about the sum of the constituents (`kansasCores2022`). */
const HEAT_CAPACITY_MODEL = 0.15;

/** Quartz that was measured leaves so much (`common practice`); typical quartz of fine soils leaves less, since it changes little. */
const QUARTZ_MEASURED = 0.05;

/** What each cause adds to the error of a case. */
export function caseErrors(of: SoilCase, known: CaseKnowledge): CaseErrors {
  const { possible, densityError, moisture, season, ground } = known;
  const shift = shiftsFrom(of);
  const between = (low: SoilCase, high: SoilCase): PropertySides => sidesOfShifts([low, high].map(shift), sidesOf);
  const water = of.water.value;
  const held = lay(of).moisture;
  const aside = together(moisture.error, ground ? Math.min(STEPS_ASIDE, PART_ASIDE * held) : 0) * (of.water.per === 'pores' ? water / held : 1);
  const packed = (by: number): PropertySides => between({ ...of, packing: 1 - by }, { ...of, packing: 1 + by });
  const [density, typical] = [packed(densityError), packed(TYPICAL_DENSITY_ERROR)];
  const waters = moisture.chances.length === 0 ? [{ value: water, share: 1 }] : moisture.chances;
  const marginal = (cases: readonly SoilCase[], shares: readonly number[]): PropertySides =>
    sidesOfShifts(cases.map(shift), (shifts) => sidesOfChances(shifts.map((each, index) => ({ shift: each, share: shares[index] ?? 0 }))));
  const word = marginal(
    waters.map(({ value }) => withWater(of, value)),
    waters.map(({ share }) => share),
  );
  const onTop = {
    model: apart(modelError(lay(of)), even(HEAT_CAPACITY_MODEL)),
    quartz: apart(quartzError(of, shift)),
    density,
    moisture: beyond(between(withWater(of, water - aside), withWater(of, water + aside)), word),
    season: between(withWater(of, water * Math.exp(-season)), withWater(of, water * Math.exp(season))),
    place: apart(ground ? placeError(density.conductivity, typical.conductivity) : even(0)),
  };
  const textures = possible.map(({ texture, share }) => ({ soil: texture === of.texture ? of : asTexture(of, texture), share }));
  const texture = marginal(
    textures.map(({ soil }) => soil),
    textures.map(({ share }) => share),
  );
  const jointly = (soils: typeof textures): ((property: Banded) => readonly ChanceShift[]) => {
    const cases = soils.flatMap(({ soil, share }) => waters.map((each) => [shift(withWater(soil, each.value)), share * each.share] as const));
    return (property) => cases.map(([shifts, share]) => ({ shift: shifts[property], share }));
  };
  return {
    chances: jointly(textures),
    certain: jointly([{ soil: of, share: 1 as Fraction }]),
    onTop: allTogether(Object.values(onTop)),
    causes: [
      { cause: 'texture', sides: texture },
      ...Object.entries({ ...onTop, moisture: allTogether([onTop.moisture, word]) }).map(([cause, sides]) => ({ cause, sides })),
    ] as CaseErrors['causes'],
  };
}

/** Quartz as the customs for a class differ, or as much of it as a measurement leaves. */
function quartzError(of: SoilCase, shift: (to: SoilCase) => Shift): Sides {
  const { quartzFractionLow, quartzFractionHigh } = typicalSoilRange(of.texture);
  const as = (quartzFraction: Fraction | undefined): number => shift({ ...of, quartzFraction }).conductivity;
  const typical = as(undefined);
  const { downward, upward } = sidesOfInterval([as(quartzFractionLow) - typical, as(quartzFractionHigh) - typical]);
  const most = of.quartzFraction === undefined ? Infinity : QUARTZ_MEASURED;
  return { downward: Math.min(most, downward), upward: Math.min(most, upward) };
}

/**
 * One place against the next. The densities of a texture scatter over places too: the less the density is known, the more of this error its own
 * holds already, and all of it where the typical density stands in.
 */
function placeError(density: Sides, typical: Sides): Sides {
  const of = (side: keyof Sides): number => PLACE * Math.sqrt(Math.max(0, 1 - (density[side] / Math.max(typical[side], PLACE)) ** 2));
  return { downward: of('downward'), upward: of('upward') };
}

/** What is left of one error where another holds a part of it already: a word for moisture that of the ground a few steps aside. */
function beyond(error: PropertySides, held: PropertySides): PropertySides {
  const left = (property: Banded, side: keyof Sides): number => Math.sqrt(Math.max(0, error[property][side] ** 2 - held[property][side] ** 2));
  const of = (property: Banded): Sides => ({ downward: left(property, 'downward'), upward: left(property, 'upward') });
  return { conductivity: of('conductivity'), heatCapacity: of('heatCapacity'), diffusivity: of('diffusivity') };
}
