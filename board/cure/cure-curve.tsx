import type { OutlookFieldsFragment } from '../api/documents.js';
import { isoWords } from '../time/moment-words.js';
import { sourceWords } from '../words/source-words.js';
import { CureTable } from './cure-table.js';
import { type CurveLayout, type Field, FIELD, layOutCurve } from './layout/curve-layout.js';
import './cure-curve.css';

interface CureCurveProps {
  readonly title: string;
  readonly outlook: OutlookFieldsFragment;
  readonly zone: string;
  readonly now: number;
}

/**
 * The course of a cure: temperature above, strength below. Measured is a solid line with its readings, predicted a dashed
 * one, what is needed a dotted level with its name; the same as a table beneath.
 */
export function CureCurve({ title, outlook, zone, now }: CureCurveProps) {
  const points = outlook.points.map(({ at, ...point }) => ({ ...point, at: Date.parse(at) }));
  const layout = layOutCurve(points, outlook.requiredPsi, now);
  return (
    <figure className="cure-curve">
      <div className="cure-scroll" tabIndex={0} role="group" aria-label={`${title}, drawing`}>
        <svg viewBox={`0 0 ${layout.width} ${layout.height}`} role="img" aria-label={inWords(outlook, zone)}>
          <CurveField field={layout.temperature} layout={layout} unit="°F" name={() => 'freezing, 32 °F'} />
          <CurveField
            field={layout.strength}
            layout={layout}
            unit="psi"
            name={(value) =>
              value === outlook.requiredPsi ? `needed, ${value} psi` : `may freeze, ${value} psi`
            }
          />
          <g className="cure-axis">
            {layout.hours.map(({ value, place }) => (
              <text key={value} x={place} y={layout.height - 6} textAnchor="middle">
                {value}
              </text>
            ))}
            <text x={FIELD.left - 8} y={layout.height - 6} textAnchor="end">
              hours
            </text>
          </g>
        </svg>
      </div>
      <figcaption>
        <span className="cure-key">
          <svg width="34" height="8" aria-hidden="true">
            <path className="cure-measured" d="M1 4H33" />
          </svg>{' '}
          measured
        </span>
        <span className="cure-key">
          <svg width="34" height="8" aria-hidden="true">
            <path className="cure-predicted" d="M1 4H33" />
          </svg>{' '}
          predicted, releases nothing
        </span>
        <span>{inWords(outlook, zone)}</span>
      </figcaption>
      <CureTable title={title} outlook={outlook} zone={zone} />
      <p className="cure-source">
        Method: {outlook.method}; {outlook.assumption}. {sourceWords(outlook)}.{' '}
        <b>Caution: {outlook.caution}</b>
      </p>
    </figure>
  );
}

interface CurveFieldProps {
  readonly field: Field;
  readonly layout: CurveLayout;
  readonly unit: string;
  readonly name: (value: number) => string;
}

function CurveField({ field, layout, unit, name }: CurveFieldProps) {
  const right = layout.width - FIELD.right;
  return (
    <g>
      {field.ticks.map(({ value, place }) => (
        <g key={value} className="cure-axis">
          <path d={`M${FIELD.left} ${place}H${right}`} />
          <text x={FIELD.left - 6} y={place + 4} textAnchor="end">
            {value}
          </text>
        </g>
      ))}
      <text className="cure-unit" x={4} y={field.top + FIELD.height / 2}>
        {unit}
      </text>
      <path className="cure-predicted" d={field.predicted} />
      <path className="cure-measured" d={field.measured} />
      {field.marks.map(({ x, y }) => (
        <circle key={`${x} ${y}`} className="cure-mark" cx={x} cy={y} r={3} />
      ))}
      {field.levels.map(({ value, place }) => (
        <g key={value} className="cure-level">
          <path d={`M${FIELD.left} ${place}H${right}`} />
          <text x={FIELD.left + 10} y={place - 4}>
            {name(value)}
          </text>
        </g>
      ))}
      {layout.nowX !== null && (
        <path className="cure-now" d={`M${layout.nowX} ${field.top}V${field.top + FIELD.height}`} />
      )}
    </g>
  );
}

/** The course in a sentence, for those who hear it and under the drawing. */
function inWords(
  { lowest, freezes, firstFreeze, release, requiredPsi }: OutlookFieldsFragment,
  zone: string,
): string {
  const basis = (one: { readonly basis: string }) => (one.basis === 'measured' ? 'measured' : 'predicted');
  const parts = [
    `Lowest ${lowest.coldestF ?? '?'} °F ${isoWords(lowest.at, zone)} (${basis(lowest)})`,
    freezes
      ? `freezes before 500 psi ${isoWords(freezes.at, zone)} with ${Math.floor(freezes.psi ?? 0)} psi (${basis(freezes)})`
      : 'not seen to freeze before 500 psi',
    firstFreeze
      ? `500 psi at its coldest ${isoWords(firstFreeze.at, zone)} (${basis(firstFreeze)})`
      : '500 psi out of sight',
    release
      ? `${requiredPsi} psi ${isoWords(release.at, zone)} (${basis(release)})`
      : `${requiredPsi} psi out of sight`,
  ];
  return `${parts.join('; ')}.`;
}
