import { useState } from 'react';
import { WorkingNote } from '../working/working-note.js';

/** Stands where the design will, while the service works it out. */
export function WorkingOut() {
  const [since] = useState(Date.now);
  return (
    <section className="job-sheet" aria-label="Design, being worked out">
      <WorkingNote since={since}>
        Working out the design: heat, cable on the plan, circuits, risers and footing.
      </WorkingNote>
    </section>
  );
}
