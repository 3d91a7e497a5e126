/** What the owner of the house is told of one kind of work. */
export interface WorkWords {
  /** What happens, in a sentence. */
  readonly doing: string;
  /** What the people of the house should do or leave; null when nothing. */
  readonly keepClear: string | null;
}

/** What holds from the digging until masons build in the hole, on days without work too. */
export const OPEN_HOLE =
  'A hole stands open in front of the door, at night too: use the other door, and keep children and pets away.';
const WET = 'Do not step on it, and leave the blankets where they lie.';
const CABLE = 'Keep off: a foot or a dropped tool can damage the cable.';
const INDOORS =
  'Clear the way to the electrical panel and the wall where the leads come in; somebody must be at home to open.';

/** The kinds of work of an entry in the words of a neighbour; common practice, no source. */
const WORDS: Readonly<Record<string, WorkWords>> = {
  demo: {
    doing: 'The old steps, porch and walk are broken out and carted away.',
    keepClear:
      'Move cars away from the front, and keep children and pets indoors while machines load and reverse.',
  },
  dig: { doing: 'The ground is dug out to below the depth of frost.', keepClear: OPEN_HOLE },
  'footing-form': { doing: 'Forms and steel are set for the footing.', keepClear: OPEN_HOLE },
  'footing-pour': {
    doing: 'Concrete is delivered and poured for the footing.',
    keepClear: 'Keep the drive free for the concrete truck.',
  },
  'footing-cure': { doing: 'The footing hardens; nobody works on it.', keepClear: WET },
  block: {
    doing: 'Masons build the landing and the steps in block.',
    keepClear: 'Leave the way from the drive to the door free: block and mortar are carried there.',
  },
  'block-cure': { doing: 'The block work hardens; nobody works on it.', keepClear: WET },
  penetrations: {
    doing: 'Holes for the leads of the heating cable are drilled through the wall of the house.',
    keepClear: 'Clear the inside of that wall; it is loud and dusty for an hour or two.',
  },
  'walk-base': {
    doing: 'The base of the walk is made, with steel mesh in it.',
    keepClear: 'Keep the drive free for deliveries, and stay off the walk.',
  },
  'base-cure': { doing: 'The base of the walk hardens; nobody works on it.', keepClear: WET },
  mesh: { doing: 'Steel mesh is laid for the heating cable.', keepClear: 'Keep off the mesh.' },
  cable: { doing: 'The heating cable is laid and tied to the mesh.', keepClear: CABLE },
  'cable-test': { doing: 'The heating cable is measured before anything covers it.', keepClear: CABLE },
  veneer: {
    doing: 'Stone is set on the risers and the sides.',
    keepClear: 'Keep off the steps: stone that was just set comes loose.',
  },
  stone: {
    doing: 'The treads and the walk are bedded in stone.',
    keepClear: 'Stay off the stone, and put no salt or other de-icer on it.',
  },
  'bed-cure': {
    doing: 'The bed under the stone hardens; nobody works on it.',
    keepClear:
      'Stay off the stone, put no salt or other de-icer on it, and leave the blankets where they lie.',
  },
  sealing: { doing: 'The holes in the wall of the house are sealed.', keepClear: null },
  'electrical-rough': { doing: 'The electrician runs the wiring inside the house.', keepClear: INDOORS },
  'rough-inspection': { doing: 'The inspector looks at the wiring.', keepClear: INDOORS },
  hookup: { doing: 'The electrician connects the heating cable.', keepClear: INDOORS },
  'final-inspection': { doing: 'The inspector looks at the finished work.', keepClear: INDOORS },
  energise: {
    doing: 'The electrician switches the heat on for the first time and tests it.',
    keepClear: INDOORS,
  },
  'hand-over': { doing: 'The work is handed over to you, with its record.', keepClear: null },
};

const OTHER: WorkWords = {
  doing: 'Other work at the entry.',
  keepClear: 'Leave the way from the drive to the door free.',
};

/** What to say of a kind; kinds of a company's own are said in general words, for their names were not meant for owners. */
export const workWords = (kind: string): WorkWords => WORDS[kind] ?? OTHER;
