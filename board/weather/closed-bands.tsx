import type { Axis } from '../board/layout/axis.js';
import { type BandStretch, commonBand, kindBands } from './layout/closed-bands.js';
import { STRIP } from './layout/strip-measures.js';
import type { Windows } from './site-weather.js';

interface ClosedBandsProps {
  readonly windows: readonly Windows[];
  readonly axis: Axis;
  readonly byKind: boolean;
  /** Where the present stands, in pixels. */
  readonly from: number;
}

/** When the weather closes the work to come: one band for all of it, or one for each kind of work with its name. */
export function ClosedBands({ windows, axis, byKind, from }: ClosedBandsProps) {
  if (!byKind)
    return (
      <g>
        {commonBand(windows, axis).map((stretch) => (
          <Shade key={stretch.left} stretch={stretch} y={STRIP.bandsTop} height={STRIP.band} />
        ))}
      </g>
    );
  return kindBands(windows, axis).map(({ key, name, closed, required, unknown }, row) => {
    const y = STRIP.bandsTop + row * STRIP.kindBand;
    const height = STRIP.kindBand - 3;
    // The name stands before the present, where there is no weather to come; else at the left edge over the hatch.
    const before = from > name.length * 6.5 + 8;
    return (
      <g key={key}>
        {unknown.map(({ left, width }) => (
          <rect key={left} x={left} y={y} width={width} height={height} fill="url(#weather-unknown)" />
        ))}
        {closed.map((stretch) => (
          <Shade key={stretch.left} stretch={stretch} y={y} height={height} />
        ))}
        {required.map(({ left, width }) => (
          <path key={left} className="weather-required" d={`M${left} ${y + height + 1}h${width}`} />
        ))}
        <text
          className="weather-kind"
          x={before ? from - 5 : 4}
          y={y + height - 2}
          textAnchor={before ? 'end' : 'start'}
        >
          {name}
        </text>
      </g>
    );
  });
}

interface ShadeProps {
  readonly stretch: BandStretch;
  readonly y: number;
  readonly height: number;
}

function Shade({ stretch: { left, width, kinds, all }, y, height }: ShadeProps) {
  return (
    <g>
      <title>{`Closed for ${kinds.join(', ')}`}</title>
      <rect className="weather-closed-ground" x={left} y={y} width={width} height={height} />
      <rect
        className="weather-closed"
        x={left}
        y={y}
        width={width}
        height={height}
        fill={`url(#weather-${all ? 'all' : 'some'})`}
      />
    </g>
  );
}
