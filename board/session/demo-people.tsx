import { useEffect, useState } from 'react';
import { ask } from '../api/ask.js';
import { DemoPeopleDocument } from '../api/documents.js';
import { ROLE_WORDS } from './role-words.js';
import type { Me } from './session.js';

interface DemoPeopleProps {
  readonly busy: boolean;
  readonly choose: (personId: string) => void;
}

/** One button for each person of the demo; nothing where no demo is loaded. */
export function DemoPeople({ busy, choose }: DemoPeopleProps) {
  const [people, setPeople] = useState<readonly Me[]>([]);
  useEffect(() => {
    let shown = true;
    ask(DemoPeopleDocument, {}).then(
      ({ demoPeople }) => shown && setPeople(demoPeople),
      // The form above still works; a service that is out of reach says so when it is used.
      () => undefined,
    );
    return () => {
      shown = false;
    };
  }, []);

  if (people.length === 0) return null;
  return (
    <section className="cell">
      <h2>Or look around in the demo</h2>
      <p>The company, its people and its sites are invented.</p>
      <ul className="demo-people">
        {people.map(({ id, name, role }) => (
          <li key={id}>
            <button type="button" className="act" disabled={busy} onClick={() => choose(id)}>
              {name}, {ROLE_WORDS[role]}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
