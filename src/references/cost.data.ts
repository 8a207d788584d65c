/** Sources of the cost room. */
export const COST_REFERENCES = {
  handbook135: {
    cite: 'S. K. Fuller and S. R. Petersen, Life-Cycle Costing Manual for the Federal Energy Management Program, NIST Handbook 135, 1995',
    seen: 'from memory',
  },
  cfr98TableC1: {
    cite: 'Code of Federal Regulations, title 40 part 98, subpart C, table C-1: default high heat values of fuels',
    seen: 'quoted',
    at: 'docest.com/doc/637161, copy of tables C-1 and C-2',
  },
  ipcc2006: {
    cite: 'IPCC Guidelines for National Greenhouse Gas Inventories 2006, volume 2 chapter 1: net calorific values beside gross ones',
    seen: 'from memory',
  },
} as const;
