import sharp from 'sharp';

/*
 * Pictures as phones make them: real JPEGs with a place, a time and a device in them, made by the library's writer.
 */

/** A picture of stripes; another `seed` is another picture. */
function stripes(width: number, height: number, seed: number) {
  const row = Buffer.alloc(width * 3);
  for (let x = 0; x < row.length; x += 1) row[x] = (x * 7 + seed * 53) % 256;
  return sharp(Buffer.concat(Array.from({ length: height }, () => row)), {
    raw: { width, height, channels: 3 },
  });
}

/** A JPEG that tells where and when it was taken, and with what. */
export function phonePicture({ width = 800, height = 600, seed = 1, orientation = 1 } = {}): Promise<Buffer> {
  return stripes(width, height, seed)
    .jpeg({ quality: 90 })
    .withExif({
      IFD0: { Make: 'Invented', Model: 'Pocket 3' },
      IFD2: { DateTimeOriginal: '2031:01:06 08:30:00' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '40/1 26/1 46/1',
        GPSLongitudeRef: 'W',
        GPSLongitude: '79/1 58/1 56/1',
      },
    })
    .withMetadata({ orientation })
    .toBuffer();
}

/** A picture in another format. */
export const pictureAs = (format: 'png' | 'webp' | 'gif' | 'tiff', seed = 1): Promise<Buffer> =>
  stripes(64, 48, seed).toFormat(format).toBuffer();

/** A PNG whose head speaks of a size that its body has not: a few bytes that ask for gigabytes. */
export async function pixelFlood(width: number, height: number): Promise<Buffer> {
  const png = await pictureAs('png');
  png.writeUInt32BE(width, 16);
  png.writeUInt32BE(height, 20);
  png.writeUInt32BE(crc32(png.subarray(12, 29)), 29);
  return png;
}

/** CRC-32 of ISO/IEC 15948, annex D. */
function crc32(bytes: Buffer): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
