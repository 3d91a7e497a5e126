import { KEY } from '../read/key.js';
import type { Reader } from '../read/reader.js';
import type { AreaKind, MeasuredArea } from './area.js';
import { readFeet, readInches } from './read-length.js';

const COMMON = ['key', 'kind', 'name', 'heated'];
const OWN: Record<AreaKind, readonly string[]> = {
  landing: ['lengthInches', 'widthInches', 'heightInches'],
  flight: ['riserCount', 'riserInches', 'treadInches', 'widthInches'],
  walk: ['lengthFeet', 'widthInches'],
};

/** Reads one area; the limits are wide enough for any entry and narrow enough to catch a slip of the pen. */
export function readArea(reader: Reader): MeasuredArea {
  const kind = reader.at('kind').oneOf<AreaKind>(['landing', 'flight', 'walk']);
  reader.object([...COMMON, ...OWN[kind]]);
  const common = {
    key: reader.at('key').text(KEY),
    name: reader.at('name').text(),
    heated: reader.at('heated').flag(),
    width: readInches(reader.at('widthInches'), 24, 480),
  };
  switch (kind) {
    case 'landing':
      return {
        ...common,
        kind,
        length: readInches(reader.at('lengthInches'), 24, 480),
        height: readInches(reader.at('heightInches'), 0, 144),
      };
    case 'flight':
      return {
        ...common,
        kind,
        riserCount: reader.at('riserCount').number({ min: 2, max: 24, whole: true }),
        riser: readInches(reader.at('riserInches'), 4, 7.75, '4 to 7¾'),
        tread: readInches(reader.at('treadInches'), 10, 24),
      };
    case 'walk':
      return { ...common, kind, length: readFeet(reader.at('lengthFeet'), 1, 400) };
  }
}
