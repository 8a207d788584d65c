import { estimateOf, heatCapacityOfCase, lay, type SoilCase } from './soil-case.js';
import { bothTogether, even, type Sides } from './two-sided.js';

/** The properties that a band is made for. */
export type Banded = 'conductivity' | 'heatCapacity' | 'diffusivity';

/** How far the logarithms of the properties move from one case to another. */
export type Shift = Readonly<Record<Banded, number>>;

/** An error of each property, to either side. */
export type PropertySides = Readonly<Record<Banded, Sides>>;

/** What another case would make of the properties of this one, by the same model where it applies. */
export function shiftsFrom(of: SoilCase): (to: SoilCase) => Shift {
  const laid = lay(of);
  const { model, conductivity } = estimateOf(laid);
  const stored = heatCapacityOfCase(laid);
  return (to) => {
    const there = lay(to);
    const k = Math.log(estimateOf(there, model).conductivity / conductivity);
    const c = Math.log(heatCapacityOfCase(there) / stored);
    return { conductivity: k, heatCapacity: c, diffusivity: k - c };
  };
}

/** Errors of the properties from how far they move. */
export function sidesOfShifts(shifts: readonly Shift[], sides: (shifts: readonly number[]) => Sides): PropertySides {
  const of = (property: Banded): Sides => sides(shifts.map((shift) => shift[property]));
  return { conductivity: of('conductivity'), heatCapacity: of('heatCapacity'), diffusivity: of('diffusivity') };
}

/** An error of the conductivity and one of the heat capacity that do not depend on one another. */
export function apart(conductivity: Sides, heatCapacity: Sides = even(0)): PropertySides {
  const { downward, upward } = heatCapacity;
  return { conductivity, heatCapacity, diffusivity: bothTogether([conductivity, { downward: upward, upward: downward }]) };
}

/** Errors that do not depend on one another, property by property. */
export function allTogether(errors: readonly PropertySides[]): PropertySides {
  const of = (property: Banded): Sides => bothTogether(errors.map((error) => error[property]));
  return { conductivity: of('conductivity'), heatCapacity: of('heatCapacity'), diffusivity: of('diffusivity') };
}
