import { WindowList } from '../weather/window-list.js';
import type { Windows } from '../weather/site-weather.js';
import { windowLines } from '../weather/words/window-lines.js';

interface CardWeatherProps {
  readonly windows: Windows;
  readonly planned: { readonly startAt: string; readonly finishAt: string };
  readonly zone: string;
}

/** What the weather closes and asks for while a phase is planned; nothing where it does neither. */
export function CardWeather({ windows, planned, zone }: CardWeatherProps) {
  const [from, to] = [Date.parse(planned.startAt), Date.parse(planned.finishAt)];
  if (windowLines(windows, from, to, zone).length === 0) return null;
  const { protection } = windows;
  return (
    <div className="in-the-way">
      <h4>Weather{protection.length > 0 && `, with ${protection.join(' and ')}`}</h4>
      <WindowList windows={[windows]} from={from} to={to} zone={zone} none="" />
    </div>
  );
}
