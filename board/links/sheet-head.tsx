import type { SheetHeadFieldsFragment } from '../api/documents.js';

interface SheetHeadProps {
  readonly head: SheetHeadFieldsFragment;
  readonly title: string;
  /** What stands over the title. */
  readonly over: string;
}

/** The head of a page that a link opens: whose it is, what it is about, where. */
export function SheetHead({ head, title, over }: SheetHeadProps) {
  return (
    <header className="cell sheet-head">
      <p className="caption">{over}</p>
      <h1>{title}</h1>
      <p>
        {head.address}, {head.town}
      </p>
    </header>
  );
}
