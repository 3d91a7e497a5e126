import type { MouseEvent, ReactNode } from 'react';
import { goTo } from './location.js';

interface PageLinkProps {
  readonly to: string;
  readonly children: ReactNode;
  readonly className?: string;
}

/** A link to another page of the client; opens in a new tab like any link when asked to. */
export function PageLink({ to, children, className }: PageLinkProps) {
  const follow = (event: MouseEvent) => {
    if (event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    event.preventDefault();
    goTo(to);
  };
  return (
    <a href={to} onClick={follow} className={className}>
      {children}
    </a>
  );
}
