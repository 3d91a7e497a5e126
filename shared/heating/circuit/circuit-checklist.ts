import { fromMemory, published, type Source } from '../../entry/source.js';

/** Something the electrician confirms on a circuit. */
export interface ChecklistItem {
  readonly key: string;
  readonly text: string;
  readonly source: Source;
}

/** What every circuit of a heating set has, in the order it is looked at. */
export const CIRCUIT_CHECKLIST: readonly ChecklistItem[] = [
  {
    key: 'disconnect',
    text: 'Disconnect of all ungrounded conductors, readily accessible, marked ON and OFF, lockable where it is out of sight',
    source: fromMemory('NEC 426.50'),
  },
  {
    key: 'ground-fault',
    text: 'Ground-fault protection of equipment, tested after the hookup; it is not shock protection for people',
    source: published('NEC 426.28'),
  },
  {
    key: 'lead-marking',
    text: 'Leads marked by the maker within 3 in of each end: catalog number, volts, watts or amperes',
    source: fromMemory('NEC 426.25'),
  },
  {
    key: 'area-marking',
    text: 'Presence of the heating made evident by signs or markings where they can be seen',
    source: fromMemory('NEC 426.13'),
  },
  {
    key: 'lead-embedded',
    text: 'Cold lead embedded with its joint, 1 to 6 in of it in the same masonry as the cable',
    source: fromMemory('NEC 426.22'),
  },
  {
    key: 'lead-protected',
    text: 'Cold lead in conduit or tubing where it leaves the masonry, with a bushing',
    source: fromMemory('NEC 426.22'),
  },
  { key: 'lead-free', text: 'At least 6 in of cold lead free in the box', source: fromMemory('NEC 426.22') },
  {
    key: 'grounding',
    text: "Braid, sheath or screen of the set bonded to the circuit's equipment grounding conductor",
    source: fromMemory('NEC 426.27 and 250'),
  },
  {
    key: 'directory',
    text: 'Circuit and zone named in the directory of the panel',
    source: fromMemory('NEC 408.4'),
  },
];
