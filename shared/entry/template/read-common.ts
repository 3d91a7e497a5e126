import type { AreaKind } from '../measurement/area.js';
import type { Reader } from '../read/reader.js';
import { MARKS, type Source } from '../source.js';
import type { AreaFilter } from './template.js';

/** Reads a mark and the text that goes with it. */
export function readSource(reader: Reader): Source {
  reader.object(['mark', 'text']);
  return { mark: reader.at('mark').oneOf(MARKS), text: reader.at('text').text() };
}

/** Reads a filter of areas as a part to be spread into its owner: nothing where there is none. */
export function readWhere(reader: Reader): { where?: AreaFilter } {
  if (reader.missing) return {};
  reader.object(['kinds', 'heated']);
  const kinds = reader.at('kinds');
  const heated = reader.at('heated');
  const words = (): AreaKind[] =>
    kinds.list(1).map((kind) => kind.oneOf<AreaKind>(['landing', 'flight', 'walk']));
  return {
    where: {
      ...(kinds.missing ? {} : { kinds: words() }),
      ...(heated.missing ? {} : { heated: heated.flag() }),
    },
  };
}
