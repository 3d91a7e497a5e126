import { useState } from 'react';
import { flushSync } from 'react-dom';
import type { BoardView } from './board-view.js';
import { kindsOf, narrows, NO_FILTERS } from './layout/filters.js';
import type { BoardData } from './layout/rows.js';

interface FiltersBlockProps {
  readonly view: BoardView;
  readonly board: BoardData;
  /** How many phases are left, and of how many. */
  readonly left: number;
  readonly all: number;
}

/** What the board is narrowed to; all of it stands in the address, so that a link shows the same. */
export function FiltersBlock({ view, board, left, all }: FiltersBlockProps) {
  const { filters, change } = view;
  const sites = new Map(board.jobs.map(({ site }) => [site.id, `${site.address}, ${site.town}`]));
  return (
    <search className="filters" aria-label="Show only">
      <label>
        Find{' '}
        <input
          type="search"
          value={filters.search}
          placeholder="job, address, phase"
          onChange={({ target }) => change({ search: target.value })}
        />
      </label>
      <Choose
        name="Crew"
        value={filters.crew}
        options={board.crews.map(({ id, name }) => [id, name])}
        choose={(crew) => change({ crew })}
      />
      <Choose name="Site" value={filters.site} options={[...sites]} choose={(site) => change({ site })} />
      <Choose
        name="Work"
        value={filters.kind}
        options={kindsOf(board).map((kind) => [kind, kind === 'wait' ? 'waits' : kind])}
        choose={(kind) => change({ kind })}
      />
      <label className="filters-check">
        <input
          type="checkbox"
          checked={filters.onlyConflicts}
          onChange={({ target }) => change({ onlyConflicts: target.checked })}
        />{' '}
        only conflicts
      </label>
      <span role="status">{narrows(filters) && `${left} of ${all} phases`}</span>
      {narrows(filters) && (
        <button type="button" className="act" onClick={() => change(NO_FILTERS)}>
          show all
        </button>
      )}
    </search>
  );
}

interface ChooseProps {
  readonly name: string;
  readonly value: string | null;
  readonly options: readonly (readonly [string, string])[];
  readonly choose: (value: string) => void;
}

/** One thing to narrow to. A value of the address that is not on this board is offered as it is, or it could not be taken away. */
function Choose({ name, value, options, choose }: ChooseProps) {
  // Hundreds of sites stand in the page only while somebody chooses among them.
  const [open, setOpen] = useState(false);
  const shown = open ? options : options.filter(([id]) => id === value);
  const known = value === null || options.some(([id]) => id === value);
  return (
    <label>
      {name}{' '}
      <select
        value={value ?? ''}
        onPointerDown={() => flushSync(() => setOpen(true))}
        onFocus={() => setOpen(true)}
        onBlur={() => setOpen(false)}
        onChange={({ target }) => choose(target.value)}
      >
        <option value="">all</option>
        {!known && <option value={value}>not in these days</option>}
        {shown.map(([id, words]) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}
