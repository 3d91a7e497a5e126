import type { Pairing, TemplateLink } from '../template.js';

const after = (
  from: string,
  to: string,
  pairing: Pairing = 'every',
  lag: TemplateLink['lag'] = 0,
): TemplateLink => ({ from, to, kind: 'finishStart', pairing, lag, lagIn: 'elapsed' });

/** What waits for what. A link whose kinds do not occur in a job is left out of it. */
export const LINKS: readonly TemplateLink[] = [
  after('demo', 'dig'),
  after('dig', 'footing-form'),
  after('footing-form', 'footing-pour'),
  after('footing-pour', 'footing-cure'),
  after('footing-cure', 'block'),
  after('block', 'block-cure'),
  after('block', 'penetrations'),
  after('block-cure', 'mesh'),
  after('block-cure', 'veneer'),
  { ...after('block-cure', 'stone'), where: { kinds: ['landing', 'flight'] } },
  after('mesh', 'cable', 'sameArea'),
  // The walk waits for the heavy work beside it; without landing and steps it follows the tear-out.
  after('demo', 'walk-base'),
  after('demo', 'penetrations'),
  after('block', 'walk-base'),
  after('walk-base', 'base-cure', 'sameArea'),
  after('base-cure', 'cable', 'sameArea'),
  after('base-cure', 'stone', 'sameArea'),
  after('penetrations', 'cable', 'firstOfSet'),
  after('penetrations', 'electrical-rough'),
  after('electrical-rough', 'rough-inspection'),
  after('cable', 'cable-test', 'sameArea'),
  after('cable', 'cable', 'nextInSet'),
  after('cable', 'sealing', 'firstOfSet'),
  after('cable-test', 'veneer', 'sameArea'),
  after('cable-test', 'stone', 'sameArea'),
  after('veneer', 'stone', 'sameArea'),
  // The wiring that runs into the areas is looked at before stone conceals any of it.
  { ...after('rough-inspection', 'stone'), where: { heated: true } },
  after('stone', 'bed-cure', 'sameArea'),
  after('cable-test', 'hookup', 'lastOfSet'),
  after('rough-inspection', 'hookup'),
  after('hookup', 'final-inspection'),
  after('sealing', 'final-inspection'),
  after('bed-cure', 'final-inspection'),
  after('final-inspection', 'energise'),
  after('stone', 'energise', 'sameSet', 'setCureDays'),
  after('final-inspection', 'hand-over'),
  after('energise', 'hand-over'),
];
