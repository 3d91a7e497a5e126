import type { ItemFieldsFragment } from '../api/documents.js';
import { sourceWords } from '../words/source-words.js';

/** One thing to measure or to confirm, with its limit and how far the limit can be trusted. */
export function CheckItem({ item }: { readonly item: ItemFieldsFragment }) {
  const hint = `limit-${item.id}`;
  return (
    <div className="check-item">
      {item.unit === null ? (
        <label className="confirm">
          <input type="checkbox" name={item.id} aria-describedby={hint} />
          {item.label}
        </label>
      ) : (
        <label>
          {item.label}
          <span className="measured">
            <input
              name={item.id}
              inputMode={item.many ? 'text' : 'decimal'}
              autoComplete="off"
              aria-describedby={hint}
            />
            {item.unit}
          </span>
        </label>
      )}
      <p id={hint} className="limit">
        {item.many && 'All values, with spaces between. '}Limit: {item.limitText} ({sourceWords(item)}).
        {!item.required && ' May be left out.'}
      </p>
    </div>
  );
}
