const WORDS: Readonly<Record<string, string>> = {
  P: 'published',
  C: 'common practice',
  M: 'from memory, to be verified',
  T: 'rule of the trade',
};

/** How far a limit can be trusted, in words. */
export function markWords(mark: string): string {
  return WORDS[mark] ?? mark;
}
