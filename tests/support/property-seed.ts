import fc from 'fast-check';

/**
 * The properties draw the same values on every run, so that a red gate means a change in the code.
 * FC_SEED draws others: see `npm run test:drawn`.
 */
fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? 20_261_126) });
