/**
 * The tiers of tests in the order they are run, with what each needs beside packages: programs of the system, the built service.
 *
 * `workers`: the core is arithmetic and takes every processor; faults and browser measure nothing but need quiet.
 */
export const TIERS = [
  { name: 'core', built: false, needs: [], workers: '100%' },
  { name: 'standards', built: false, needs: [], workers: '100%' },
  { name: 'service', built: false, needs: ['redis-server'], workers: '100%' },
  { name: 'faults', built: true, needs: ['redis-server'], workers: '1' },
  { name: 'browser', built: true, needs: ['chromium'], workers: '1' },
];
