/** A source, and whether the work itself was before us. */
export type Reference = {
  /** Author, year, title and place. */
  readonly cite: string;
} & (
  | {
      /** `original`: the work itself was read; `quoted`: seen quoted in another work. */
      readonly seen: 'original' | 'quoted';
      /** Where in the work, or where it was quoted. */
      readonly at: string;
    }
  | {
      /** Recalled, not re-read; never the only check of a kernel. */
      readonly seen: 'from memory';
    }
);
