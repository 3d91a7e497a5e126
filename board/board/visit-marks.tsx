import type { Axis } from './layout/axis.js';
import { visitPlace } from './layout/visit-bubble.js';
import type { Visit } from './layout/visit-time.js';
import { visitWords } from './words/visit-words.js';

interface VisitMarksProps {
  readonly visits: readonly Visit[];
  readonly axis: Axis;
  readonly height: number;
  readonly zone: string;
}

/** What stands in the bubble: passed, failed, or simply a visit to come. */
const SIGNS: Readonly<Partial<Record<Visit['state'], string>>> = { passed: '✓', failed: '✕' };

/**
 * Inspection visits of a job: a bubble on a leader to a chain line, as drawings mark their axes. Broken until booked.
 */
export function VisitMarks({ visits, axis, height, zone }: VisitMarksProps) {
  return (
    <svg className="visits" width={axis.width} height={height} aria-hidden="true">
      {visits.map((visit) => {
        const place = visitPlace(visit, axis);
        if (!place) return null;
        const { at, bubble } = place;
        return (
          <g key={visit.id} className={`visit visit-${visit.state}`}>
            <title>{visitWords(visit, zone)}</title>
            <path d={`M${bubble} 9L${at} 18V${height}`} />
            <circle cx={bubble} cy="9" r="7.5" />
            <text x={bubble} y="13">
              {SIGNS[visit.state] ?? 'i'}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
