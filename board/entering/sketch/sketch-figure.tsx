import type { Values } from '../forms/field.js';
import { entryWords } from './entry-words.js';
import { sectionSketch, type Sketch } from './section-sketch.js';

interface SketchFigureProps {
  readonly values: Values;
  readonly frost: number | null;
}

/** The entry as typed: a section from the wall outwards, and the same in words. */
export function SketchFigure({ values, frost }: SketchFigureProps) {
  const sketch = sectionSketch(values, frost);
  return (
    <figure className="sketch">
      {sketch ? (
        <Drawing sketch={sketch} />
      ) : (
        <p className="limit">The section is drawn here as you type the measures.</p>
      )}
      <figcaption>
        <span className="caption">As typed</span>
        <ul>
          {entryWords(values, frost).map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      </figcaption>
    </figure>
  );
}

function Drawing({ sketch }: { readonly sketch: Sketch }) {
  const { box, profile, foot, footing, frost, labels } = sketch;
  const [left, top, width, height] = box;
  const letter = Math.max(width / 34, 3.5);
  const path = profile.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('');
  return (
    <svg viewBox={`${left} ${top} ${width} ${height}`} aria-hidden="true" className="sketch-drawing">
      <path d={`${path}L${foot} 0L0 0Z`} fill="url(#hatch-masonry)" />
      <path d={`M${left} 0H${left + width}`} className="sketch-thin" />
      <path d={`M0 ${top}V0`} className="sketch-wall" />
      {footing && <rect {...footing} fill="url(#hatch-concrete)" className="sketch-footing" />}
      {frost !== null && <path d={`M${left} ${frost}H${left + width}`} className="sketch-frost" />}
      <path d={path} className="sketch-profile" />
      {labels.map(({ x, y, text }) => (
        <text key={text} x={x} y={y} fontSize={letter}>
          {text}
        </text>
      ))}
    </svg>
  );
}
