/** Line ends and tabs count as a space; other controls, marks of direction and joiners show nothing and are left out. */
const SPACE = /[\t\n\r\u2028\u2029\u00a0]/u;
/** Half of a character, as a text has it that was cut in the wrong place. */
const LONE = /\p{Cs}/u;
const UNSEEN = /[\p{Cc}\p{Cf}\ufe00-\ufe0f]/u;

/**
 * A text as paper can show it. A character that the font has not is written as its code point, such as [U+6728]: a name is
 * not lost in a row of empty boxes, and two names stay apart.
 *
 * @param has whether the font has a character, by its code point.
 */
export function printable(text: string, has: (codePoint: number) => boolean): string {
  let shown = '';
  for (const letter of text.normalize('NFC')) {
    const code = LONE.test(letter) ? 0xfffd : (letter.codePointAt(0) ?? 0xfffd);
    if (SPACE.test(letter)) shown += ' ';
    else if (UNSEEN.test(letter)) continue;
    else
      shown += has(code)
        ? String.fromCodePoint(code)
        : `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
  }
  return shown.replaceAll(/ {2,}/g, ' ').trim();
}
