interface NeedListProps {
  readonly title: string;
  readonly needs: readonly { readonly id: string; readonly met: boolean; readonly text: string }[];
}

/** What must be met, each with whether it is. */
export function NeedList({ title, needs }: NeedListProps) {
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      <ul className="needs">
        {needs.map(({ id, met, text }) => (
          <li key={id}>
            <b>{met ? 'met' : 'not met'}</b> {text}
          </li>
        ))}
      </ul>
      {needs.length === 0 && <p>Nothing.</p>}
    </section>
  );
}
