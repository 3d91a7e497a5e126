import type { Axis } from './layout/axis.js';
import type { HoldStretch } from './layout/hold-stretches.js';

interface HoldShadesProps {
  readonly holds: readonly HoldStretch[];
  readonly axis: Axis;
  readonly height: number;
}

/** Stretches closed by weather, shaded: rising lines where a person called it, falling ones where the forecast did. */
export function HoldShades({ holds, axis, height }: HoldShadesProps) {
  if (holds.length === 0) return null;
  return (
    <svg className="holds" width={axis.width} height={height} aria-hidden="true">
      {holds.map(({ hold, left, width, top, height: tall }) => (
        <g key={`${hold.id}-${top}`}>
          <title>{hold.reason}</title>
          <rect className="hold-ground" x={left} y={top} width={width} height={tall} />
          <rect
            className="hold-shade"
            x={left}
            y={top}
            width={width}
            height={tall}
            fill={`url(#hold-${hold.cause})`}
          />
        </g>
      ))}
    </svg>
  );
}
