import fc from 'fast-check';

/**
 * The properties draw the same values on every run, so that a red gate means a change in the code.
 * `FC_SEED=7 npm test` draws others.
 */
fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? 20_261_126) });
