/** The body was longer than it may be. */
export class BodyTooLong extends Error {}

/**
 * The body of an answer as text.
 *
 * @throws BodyTooLong as soon as more than `most` bytes have come; the rest is not read.
 * @throws Error when the connection ends before the body does.
 */
export async function boundedText(response: Response, most: number): Promise<string> {
  if (!response.body) return '';
  const reader = response.body.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    const part = read.value as Uint8Array;
    length += part.byteLength;
    if (length > most) {
      await reader.cancel().catch(() => undefined);
      throw new BodyTooLong(`more than ${most} bytes`);
    }
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}
