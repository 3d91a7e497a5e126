import { sentence } from '../words/finding-words.js';
import type { Windows } from './site-weather.js';
import { windowLines } from './words/window-lines.js';

interface WindowListProps {
  readonly windows: readonly Windows[];
  readonly from: number;
  readonly to: number;
  readonly zone: string;
  /** Said when nothing is closed, asked for or unknown. */
  readonly none: string;
}

/** What the weather closes and asks for between two moments, line by line. */
export function WindowList({ windows, from, to, zone, none }: WindowListProps) {
  const lines = windows.flatMap((one) => windowLines(one, from, to, zone));
  if (lines.length === 0) return <p>{none}</p>;
  return (
    <>
      <ul className="window-lines">
        {lines.map(({ key, kind, head, text }) => (
          <li key={key} className={`window-${kind}`}>
            <b>{head}:</b> {sentence(text)}
          </li>
        ))}
      </ul>
      <p className="window-caution">
        Limits defer to the local code and to the instructions of what is built in; the weather on site
        decides.
      </p>
    </>
  );
}
