import { Sheet } from '../job/sheet.js';
import { type Design, figure } from './design-types.js';

/** Heat that every area asks for, part by part, and what it is given. */
export function HeatTable({ heat }: { readonly heat: Design['heat'] }) {
  if (heat.length === 0) return null;
  const heads = [
    'Area',
    'Warming snow',
    'Melting',
    'Wind and sky',
    'Drying',
    'Ground',
    'Edges',
    'Asked',
    'Given',
  ];
  return (
    <>
      <Sheet title="Heat, W/ft²" heads={[...heads, 'From cold']}>
        {heat.map((area) => (
          <tr key={area.areaKey}>
            <th scope="row">{area.areaName}</th>
            <td>{figure(area.sensible)}</td>
            <td>{figure(area.melting)}</td>
            <td>{figure(area.convectionAndRadiation)}</td>
            <td>{figure(area.evaporation)}</td>
            <td>{figure(area.back)}</td>
            <td>{figure(area.edge)}</td>
            <td>{figure(area.total)}</td>
            <td>{figure(area.given)}</td>
            <td>
              {area.warmUpHours === null
                ? 'never above freezing in the design air'
                : `${figure(area.warmUpHours)} h to above freezing`}
            </td>
          </tr>
        ))}
      </Sheet>
      <p className="job-aside">By {heat[0]?.sources.join('; ')}.</p>
    </>
  );
}
