import type { JobOfPage } from './job-types.js';
import { Sheet } from './sheet.js';

/** Amounts of work and material from the measurements. */
export function QuantityTable({ quantities }: { readonly quantities: JobOfPage['quantities'] }) {
  return (
    <Sheet title="Quantities" heads={['What', 'Amount']}>
      {quantities.map(({ key, label, value, unit }) => (
        <tr key={key}>
          <th scope="row">{label}</th>
          <td>
            {Math.round(value * 100) / 100} {unit}
          </td>
        </tr>
      ))}
    </Sheet>
  );
}
