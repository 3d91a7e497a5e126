import type { Axis } from './layout/axis.js';
import { type Visit, visitTime } from './layout/visit-time.js';
import { visitWords } from './words/visit-words.js';

interface VisitMarksProps {
  readonly visits: readonly Visit[];
  readonly axis: Axis;
  readonly height: number;
  readonly zone: string;
}

/** Inspection visits of a job: a bubble over a chain line, as drawings mark their axes. Hollow until booked. */
export function VisitMarks({ visits, axis, height, zone }: VisitMarksProps) {
  return (
    <svg className="visits" width={axis.width} height={height} aria-hidden="true">
      {visits.map((visit) => {
        const at = visitTime(visit);
        if (at === null || at < axis.start || at >= axis.end) return null;
        const x = axis.x(at);
        return (
          <g key={visit.id} className={`visit visit-${visit.state}`}>
            <title>{visitWords(visit, zone)}</title>
            <line x1={x} x2={x} y1="19" y2={height} />
            <circle cx={x} cy="11" r="7.5" />
            <text x={x} y="15">
              {visit.state === 'failed' ? '✕' : visit.state === 'passed' ? '✓' : 'i'}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
