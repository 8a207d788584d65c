import { likelyCauses, MASS_SLIPS, unitSlips, type Slip } from './likely-cause.js';

interface Weighed {
  readonly moistMass: number;
  readonly dryMass: number;
  readonly tareMass: number;
}

/** Water that no mineral soil exceeds by much; a mistake is believed undone below it [kg/kg]. */
const BELIEVABLE = 1;

/** Most soil that is believed to have been dried [kg]. */
const BELIEVABLE_MASS = 100;

/** The mistakes that would explain weighings which cannot be. */
export function weighingHint(weighed: Weighed): string | undefined {
  const { moistMass, dryMass, tareMass } = weighed;
  const contained: readonly Slip<Weighed>[] = [
    { cause: 'the masses may be without the container already', undone: { ...weighed, tareMass: 0 } },
    { cause: 'the dry mass may be without the container', undone: { ...weighed, dryMass: dryMass + tareMass } },
    { cause: 'the moist mass may be without the container', undone: { ...weighed, moistMass: moistMass + tareMass } },
  ];
  return likelyCauses<Weighed>(
    [
      { cause: 'the two weighings may be interchanged', undone: { ...weighed, moistMass: dryMass, dryMass: moistMass } },
      ...(tareMass > 0 ? contained : []),
      ...unitSlips('the dry mass', dryMass, MASS_SLIPS, (mass) => ({ ...weighed, dryMass: mass })),
      ...unitSlips('the moist mass', moistMass, MASS_SLIPS, (mass) => ({ ...weighed, moistMass: mass })),
      ...unitSlips('the container', tareMass, MASS_SLIPS, (mass) => ({ ...weighed, tareMass: mass })),
    ],
    believable,
  );
}

function believable({ moistMass, dryMass, tareMass }: Weighed): boolean {
  const solids = dryMass - tareMass;
  // A container far heavier than the soil in it, or of next to nothing, is a mistake of its own.
  const contained = tareMass === 0 || (solids > 0.1 * tareMass && solids < 500 * tareMass);
  return contained && solids > 0 && moistMass >= dryMass && (moistMass - dryMass) / solids <= BELIEVABLE;
}

/** The likely mistake behind a mass that no sample has. */
export function massHint(mass: number): string | undefined {
  return likelyCauses(unitSlips('it', mass, MASS_SLIPS, Number), (undone) => undone > 0 && undone < BELIEVABLE_MASS && mass > BELIEVABLE_MASS);
}

/** The likely mistake behind a share of water that no soil holds; `beyond` where it is simply too large. */
export function shareHint(share: number, beyond: string): string | undefined {
  if (share < 0) return 'the two weighings may be interchanged';
  return share / 100 <= BELIEVABLE && share > 2 ? 'per cent given as a share?' : beyond;
}
