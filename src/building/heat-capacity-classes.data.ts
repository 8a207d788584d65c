/** How heavy a building is inside: timber and board, brick inside a frame, concrete floors and masonry. */
export type HeatCapacityClass = 'very light' | 'light' | 'medium' | 'heavy' | 'very heavy';

/** The classes, for lists and shapes. */
export const HEAT_CAPACITY_CLASSES: readonly HeatCapacityClass[] = ['very light', 'light', 'medium', 'heavy', 'very heavy'];

/** Heat capacity that follows a day, per floor area [J/(m2.K)]; `iso13790`. */
export const FLOOR_HEAT_CAPACITY: Readonly<Record<HeatCapacityClass, number>> = {
  'very light': 80_000,
  light: 110_000,
  medium: 165_000,
  heavy: 260_000,
  'very heavy': 370_000,
};
