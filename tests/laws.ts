import fc from 'fast-check';

/**
 * Laws are tried on the same random cases in every run, so that a run that passed once passes again. Other cases:
 * `LAWS_SEED=7 npm run test:unit`, or `LAWS_SEED=any` for new ones each time.
 */
const given = process.env.LAWS_SEED ?? '1128';

if (given !== 'any') fc.configureGlobal({ seed: Number(given) });
