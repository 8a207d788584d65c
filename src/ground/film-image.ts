import { gaussLegendre } from '../numerics/index.js';

/** How far above a mirror image something lies [m2, squared distance from the pipe], and how much of it there is [1]. */
export interface FilmPlace {
  readonly square: number;
  readonly weight: number;
}

/** Past this many added depths, what lies there is below the rounding of the rest. */
const REACH = 40;
/** Widest part taken by sixteen points, in added depths; within it the decay is a polynomial to them. */
const WIDEST = 8;

/**
 * What a film does to a pipe's mirror image. Above a sealed surface the image gives off as much heat as the pipe; what the film lets through is taken off
 * again, twice, along a line straight up from the image, where it fades as exp(−height/added depth). All weights together are 1, and as the film gets
 * perfect all of them come to lie in the image, which leaves the isothermal surface.
 *
 * @param image - squared distance to the mirror image [m2]
 * @param across - the part of it that is sideways [m2]
 * @param added - added depth, conductivity over coefficient [m]
 * @returns the places, nearest first
 */
export function filmImage(image: number, across: number, added: number): readonly FilmPlace[] {
  const height = Math.sqrt(image - across);
  const places: FilmPlace[] = [];
  for (let from = 0; from < REACH; ) {
    // As wide as the image is off, so that what is smooth past the image is smooth within the part.
    const to = Math.min(REACH, from + Math.min(WIDEST, from + height / added));
    gaussLegendre(from, to, (place, width) => {
      places.push({ square: across + (height + place * added) ** 2, weight: width * Math.exp(-place) });
    });
    from = to;
  }
  return places;
}

/** {@link filmImage} that remembers what it was asked: the places depend on neither time nor rate. */
export function filmImages(added: number): (image: number, across: number) => readonly FilmPlace[] {
  const known = new Map<number, Map<number, readonly FilmPlace[]>>();
  return (image, across) => {
    const row = known.get(image) ?? new Map<number, readonly FilmPlace[]>();
    known.set(image, row);
    const places = row.get(across) ?? filmImage(image, across, added);
    row.set(across, places);
    return places;
  };
}
