/** Every cause of error of a conductivity. */
export const ERROR_CAUSES = ['model', 'texture', 'quartz', 'density', 'moisture', 'season', 'place', 'measurement'] as const;

/** What an error of a conductivity comes from; `measurement` is a probe or a laboratory. */
export type ErrorCause = (typeof ERROR_CAUSES)[number];
