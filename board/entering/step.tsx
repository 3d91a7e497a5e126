import type { ReactNode } from 'react';
import type { StepKey } from './still-missing.js';

interface StepProps {
  readonly step: StepKey;
  readonly number: number;
  readonly title: string;
  readonly done: boolean;
  /** What there is, in a line or a list. */
  readonly standing: ReactNode;
  /** What the folded form enters when all that is needed is there. */
  readonly more: string;
  readonly children: ReactNode;
}

/** A numbered note of the page: open while something is missing, a line with what there is when nothing is. */
export function Step({ step, number, title, done, standing, more, children }: StepProps) {
  return (
    <li className={done ? 'step step-done' : 'step'}>
      <div className="step-head">
        <span className="step-number" aria-hidden="true">
          {number}
        </span>
        <h2 id={`step-${step}`} tabIndex={-1}>
          {title}
        </h2>
        <span className="caption">{done ? 'entered' : 'to be entered'}</span>
      </div>
      <div className="step-body">
        {standing}
        {done ? (
          <details>
            <summary>{more}</summary>
            {children}
          </details>
        ) : (
          children
        )}
      </div>
    </li>
  );
}
