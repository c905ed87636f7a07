import fc from 'fast-check';

/** Properties are tried on the same cases in every run; new ones are looked for by `npm run fuzz`. */
fc.configureGlobal({ seed: 20_260_801 });
