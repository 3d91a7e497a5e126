/** Says that a page of a link cannot be shown, and what to do. */
export function SheetFault({ message, again }: { readonly message: string; readonly again: () => void }) {
  return (
    <div className="page-note" role="alert">
      <h1>This page cannot be shown</h1>
      <p>{message}</p>
      <button type="button" className="act act-strong" onClick={again}>
        Try again
      </button>
    </div>
  );
}
