import type { PlacedFaults } from './forms/place-faults.js';

/** What is wrong with a form over its button: how many fields are marked, and what no single field can mend. */
export function FormFaults({ faults }: { readonly faults: PlacedFaults }) {
  const marked = Object.keys(faults.at).length;
  return (
    <div role="alert" className="form-faults" tabIndex={-1}>
      {marked > 0 && (
        <p className="fault">
          Not entered: {marked === 1 ? 'one field is marked' : `${marked} fields are marked`} above. What you
          typed is kept.
        </p>
      )}
      {faults.rest.map((fault) => (
        <p key={fault} className="fault">
          {fault}
        </p>
      ))}
    </div>
  );
}
