import { Sheet } from '../job/sheet.js';
import { type Design, figure } from './design-types.js';

/** Finished risers from the walk up, and the block under each. */
export function RiserTable({ risers }: { readonly risers: NonNullable<Design['risers']> }) {
  return (
    <Sheet title="Risers, from the walk up" heads={['Step', 'Riser', 'Finished at', 'Block to', 'Block']}>
      {risers.steps.map((step, i) => (
        <tr key={step.finished}>
          <th scope="row">{i + 1 === risers.count ? 'Landing' : i + 1}</th>
          <td>{figure(step.riser, 3)} in</td>
          <td>{figure(step.finished, 3)} in</td>
          <td>{figure(step.blockTop, 3)} in</td>
          <td>{step.courses}</td>
        </tr>
      ))}
      {risers.advice.map((text) => (
        <tr key={text}>
          <th scope="row">Advice</th>
          <td colSpan={4}>{text}</td>
        </tr>
      ))}
    </Sheet>
  );
}
