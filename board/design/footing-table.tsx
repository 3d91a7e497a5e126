import { Sheet } from '../job/sheet.js';
import type { Design } from './design-types.js';

/** The footing as measured, and what to look at before the pour. */
export function FootingTable({ footing }: { readonly footing: NonNullable<Design['footing']> }) {
  return (
    <>
      <Sheet title="Footing, before the pour" heads={['Of', 'Look at']}>
        {footing.checklist.map(({ key, text, source }) => (
          <tr key={key}>
            <th scope="row">{key.replaceAll('-', ' ')}</th>
            <td>
              {text} ({source}).
            </td>
          </tr>
        ))}
      </Sheet>
      <p className="job-aside">
        {footing.width} in wide, {footing.thickness} in thick, bottom {footing.bottom} in down; frost goes{' '}
        {footing.frostDepth} in ({footing.frostSource}). {footing.concrete}.
      </p>
    </>
  );
}
