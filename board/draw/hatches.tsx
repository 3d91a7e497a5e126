import type { ReactNode } from 'react';
import { type Hatch as MaterialHatch, HATCHES as MATERIALS } from '../../shared/entry/template/words.js';

/** A material with a hatch of its own. */
export type Hatch = Exclude<MaterialHatch, 'none'>;

/** The materials that have a hatch of their own. */
export const HATCHES: readonly Hatch[] = MATERIALS.filter((hatch) => hatch !== 'none');

/** What each hatch stands for, as the legend says it. */
export const HATCH_WORDS: Readonly<Record<Hatch, string>> = {
  earth: 'earth',
  concrete: 'concrete',
  masonry: 'block, masonry',
  mesh: 'mesh',
  mortar: 'mortar',
  stone: 'stone',
  sealant: 'sealant',
  electrical: 'cable, electrical',
};

/** Fill of a hatch that `HatchDefinitions` has put into the document; null for phases without a material. */
export function hatchFill(hatch: string): string | null {
  return HATCHES.some((known) => known === hatch) ? `url(#hatch-${hatch})` : null;
}

/**
 * The hatches as section drawings have them: earth in turned groups of strokes, concrete as stone in sand, masonry in
 * slanted double strokes, mesh as wires with crossings, mortar stippled, stone in courses, sealant cross-hatched,
 * and the heating cable as the wave it is laid in. Drawn in the text colour, so forced colours keep them.
 */
export function HatchDefinitions() {
  return (
    <svg width="0" height="0" aria-hidden="true" style={{ position: 'absolute' }}>
      <defs>
        <Pattern hatch="earth" width={20} height={20}>
          <path d="M1 9 9 1M1 14 14 1M5 15 15 5M11 11 19 19M11 16 14 19M16 11 19 14" />
        </Pattern>
        <Pattern hatch="concrete" width={24} height={20}>
          <path d="M3 8 9 6 6 12ZM15 15 21 13 18 19Z" />
          <path
            d="M14 4h.1M19 7h.1M3 16h.1M10 17h.1M12 10h.1M21 2h.1M2 2h.1M9 1h.1M23 17h.1"
            strokeWidth={1.8}
          />
        </Pattern>
        <Pattern hatch="masonry" width={10} height={10}>
          <path d="M-2 12 12-2M-2 2 2-2M8 12 12 8M-5 12 9-2M2 12 16-2" />
        </Pattern>
        <Pattern hatch="mesh" width={14} height={10}>
          <path d="M0 5H14M4 2 10 8M4 8 10 2" />
        </Pattern>
        <Pattern hatch="mortar" width={9} height={9}>
          <path d="M2 2h.1M6.5 4h.1M3 7h.1M8 8h.1M8.2 1h.1" strokeWidth={1.7} />
        </Pattern>
        <Pattern hatch="stone" width={28} height={20}>
          <path d="M0 .5H28M0 10.5H28M8 0V10M22 10V20M2 8 6 3M13 7 17 3M9 18 14 13M25 17 27 14" />
        </Pattern>
        <Pattern hatch="sealant" width={6} height={6}>
          <path d="M0 0 6 6M6 0 0 6" />
        </Pattern>
        <Pattern hatch="electrical" width={16} height={10}>
          <path d="M0 5C2-1 6-1 8 5S14 11 16 5" strokeWidth={1.5} />
        </Pattern>
        <pattern id="hold-called" width={7} height={7} patternUnits="userSpaceOnUse">
          <path d="M0 7 7 0" className="hold-line" />
        </pattern>
        <pattern id="hold-forecast" width={7} height={7} patternUnits="userSpaceOnUse">
          <path d="M0 0 7 7" className="hold-line" />
        </pattern>
        <pattern id="weather-some" width={6} height={6} patternUnits="userSpaceOnUse">
          <path d="M0 0 6 6" className="weather-hatch" />
        </pattern>
        <pattern id="weather-all" width={5} height={5} patternUnits="userSpaceOnUse">
          <path d="M0 0 5 5M0 5 5 0" className="weather-hatch" />
        </pattern>
        <pattern id="weather-rain" width={3} height={6} patternUnits="userSpaceOnUse">
          <path d="M1.5 0V4" className="weather-hatch" />
        </pattern>
        <pattern id="weather-unknown" width={11} height={9} patternUnits="userSpaceOnUse">
          <path d="M3 3h.1M8.5 7.5h.1" className="weather-dots" />
        </pattern>
      </defs>
    </svg>
  );
}

interface PatternProps {
  readonly hatch: Hatch;
  readonly width: number;
  readonly height: number;
  readonly children: ReactNode;
}

function Pattern({ hatch, width, height, children }: PatternProps) {
  return (
    <pattern id={`hatch-${hatch}`} width={width} height={height} patternUnits="userSpaceOnUse">
      <g fill="none" stroke="currentColor" strokeWidth={0.9} strokeLinecap="round">
        {children}
      </g>
    </pattern>
  );
}

/** A small field of a hatch, for legends and lists. */
export function HatchSwatch({ hatch, wait = false }: { readonly hatch: string; readonly wait?: boolean }) {
  const fill = wait ? null : hatchFill(hatch);
  return (
    <svg className="swatch" width="34" height="18" aria-hidden="true">
      <rect
        x="0.75"
        y="0.75"
        width="32.5"
        height="16.5"
        fill={fill ?? 'none'}
        stroke="currentColor"
        strokeWidth={1.2}
        strokeDasharray={wait ? '1.5 3' : undefined}
        strokeLinecap="round"
      />
    </svg>
  );
}
