import { ROLE_WORDS } from '../session/role-words.js';
import { useSignedIn } from '../session/session.js';
import type { SitePhase } from './day-sections.js';

/** What stands in the way of a phase, and who can lift it. */
export function InTheWay({ phase }: { readonly phase: SitePhase }) {
  const { me } = useSignedIn();
  if (phase.obstacles.length === 0) return null;
  return (
    <div className="in-the-way">
      <h4>In the way of {phase.state === 'started' ? 'finishing' : 'starting'}</h4>
      <ul>
        {phase.obstacles.map(({ code, message, liftedBy }, index) => (
          <li key={`${code}-${index}`}>
            {message} {liftedBy && <b>Lifted by: {liftedBy === me.role ? 'you' : ROLE_WORDS[liftedBy]}.</b>}
          </li>
        ))}
      </ul>
    </div>
  );
}
