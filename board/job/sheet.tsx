import type { ReactNode } from 'react';

interface SheetProps {
  readonly title: string;
  readonly heads: readonly string[];
  readonly children: ReactNode;
}

/** A titled table that scrolls sideways, by keyboard too, where the screen is narrow. */
export function Sheet({ title, heads, children }: SheetProps) {
  return (
    <section className="job-sheet" aria-label={title}>
      <h2>{title}</h2>
      <div className="job-scroll" tabIndex={0} role="group" aria-label={`${title}, table`}>
        <table>
          <thead>
            <tr>
              {heads.map((head) =>
                head ? (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ) : (
                  <td key="blank" />
                ),
              )}
            </tr>
          </thead>
          <tbody>{children}</tbody>
        </table>
      </div>
    </section>
  );
}
