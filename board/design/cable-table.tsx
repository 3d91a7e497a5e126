import { Sheet } from '../job/sheet.js';
import { type Design, figure } from './design-types.js';

/** What was measured of a heating set on the plan, piece of surface by piece. */
export function CableTable({ cable }: { readonly cable: Design['cables'][number] }) {
  const { setName, asMeasured, feet, closest, tightestBend, coldLeadOutside, fields } = cable;
  if (feet === null) return <p className="fault">{setName} cannot be laid; the findings say why.</p>;
  const title = asMeasured ? `Cable of ${setName} on the plan` : `${feet} ft in place of ${setName}`;
  return (
    <>
      <Sheet title={title} heads={['Surface', 'Cable', 'Power', 'Widest gap', 'Mean spacing']}>
        {fields.map((field) => (
          <tr key={field.key}>
            <th scope="row">{field.key}</th>
            <td>{figure(field.feet)} ft</td>
            <td>{figure(field.wattsPerSquareFoot)} W/ft²</td>
            <td>{figure(field.widestGap)} in</td>
            <td>{field.meanSpacing === null ? 'no cable' : `${figure(field.meanSpacing, 2)} in`}</td>
          </tr>
        ))}
      </Sheet>
      <p className="job-aside">
        {figure(feet)} ft, uncut; runs no closer than {figure(closest ?? 0, 2)} in on centres; tightest bend{' '}
        {figure(tightestBend ?? 0, 2)} in; {figure(coldLeadOutside ?? 0)} in of the cold lead outside the
        wall.
        {asMeasured ? '' : ' The measured set does not fit: nothing is ordered or laid by this plan.'}
      </p>
    </>
  );
}
