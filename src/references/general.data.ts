/** Sources of the general room. */
export const GENERAL_REFERENCES = {
  siUnits: { cite: 'BIPM, The International System of Units (SI), 9th edition, 2019', seen: 'from memory' },
} as const;
