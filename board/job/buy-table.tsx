import type { JobDesign } from './job-types.js';
import { Sheet } from './sheet.js';

const rounded = (value: number): number => Math.round(value * 100) / 100;

/** What to buy for the job, in whole pieces as sold; waste and sizes are common practice and meant to be looked at. */
export function BuyTable({ lines }: { readonly lines: JobDesign['buyList'] }) {
  return (
    <Sheet title="To buy" heads={['What', 'Buy', 'Sold as', 'Built in', 'With waste']}>
      {lines.map((line) => (
        <tr key={line.key}>
          <th scope="row">{line.label}</th>
          <td>{line.pieces}</td>
          <td>{line.soldAs}</td>
          <td>
            {rounded(line.measured)} {line.unit}
          </td>
          <td>
            {rounded(line.needed)} {line.unit} ({rounded(line.waste * 100)} %, {line.mark})
          </td>
        </tr>
      ))}
    </Sheet>
  );
}
