/** Kinds of picture that are taken in. */
export type PictureType = 'jpeg' | 'png' | 'webp';

const PNG = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/**
 * What a picture is by its first bytes, whatever it calls itself; null for everything else. The signatures are those of
 * ISO/IEC 10918-1 (JPEG), ISO/IEC 15948 (PNG) and RFC 9649 (WebP).
 */
export function pictureType(bytes: Buffer): PictureType | null {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'jpeg';
  if (bytes.subarray(0, 8).equals(PNG)) return 'png';
  const riff = bytes.toString('latin1', 0, 4) === 'RIFF' && bytes.toString('latin1', 8, 12) === 'WEBP';
  return riff ? 'webp' : null;
}
