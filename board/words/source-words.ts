/** How far a number can be trusted, by its mark. */
export const TRUST_WORDS: Readonly<Record<string, string>> = {
  P: 'published',
  C: 'common practice',
  M: 'from memory',
  T: 'rule of the trade',
};

/** Where a limit comes from and how far it can be trusted, which some sources say of themselves already. */
export function sourceWords({ source, mark }: { readonly source: string; readonly mark: string }): string {
  const trust = TRUST_WORDS[mark] ?? mark;
  return source.toLowerCase().includes(trust) ? source : `${source}; ${trust}`;
}
