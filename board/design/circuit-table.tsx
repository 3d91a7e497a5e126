import { Sheet } from '../job/sheet.js';
import { type Design, figure } from './design-types.js';

/** Circuits of the heating; a licensed electrician decides. */
export function CircuitTable({ circuits }: { readonly circuits: Design['circuits'] }) {
  if (circuits.length === 0) return null;
  return (
    <Sheet title="Circuits" heads={['Sets', 'Power', 'Load', 'At 125 %', 'Breaker', 'Copper', 'By']}>
      {circuits.map((circuit) => (
        <tr key={circuit.zone}>
          <th scope="row">{circuit.sets.join(', ')}</th>
          <td>{figure(circuit.watts, 0)} W</td>
          <td>{figure(circuit.load)} A</td>
          <td>{circuit.designLoad === null ? '' : `${figure(circuit.designLoad)} A`}</td>
          <td>{circuit.breaker === null ? '' : `${circuit.breaker} A`}</td>
          <td>
            {circuit.conductorAwg === null ? '' : `${circuit.conductorAwg} AWG, ${circuit.terminals} °C`}
          </td>
          <td>
            {circuit.source ? `${circuit.source}. ` : ''}
            {circuit.caution}
          </td>
        </tr>
      ))}
    </Sheet>
  );
}
