import { createHash } from 'node:crypto';
import sharp from 'sharp';
import { PictureFault } from './picture-fault.js';
import { pictureType } from './picture-type.js';

/** Largest body of a photo, in bytes: a phone sends a tenth of it. */
export const MOST_BYTES = 10 * 1024 * 1024;
/** Most pixels that are read, whatever the file says of itself: no more than phones take. */
export const MOST_PIXELS = 50_000_000;
/** Longest side of a picture as it is kept, and of the small one, in pixels. */
const LONGEST = 1600;
const SMALL = 320;

// Only these three readers of the library may run, whatever a file makes it believe.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'],
});
sharp.cache(false);

/** A picture as it is kept. */
export interface Picture {
  /** SHA-256 of the bytes, in hexadecimal. */
  readonly hash: string;
  readonly bytes: Buffer;
  readonly width: number;
  readonly height: number;
  readonly small: Buffer;
}

/**
 * Makes a picture anew from what was sent: upright, no larger than needed, JPEG, with nothing but the picture in it (no
 * place, no time, no name of a device).
 *
 * @throws PictureFault when it is no picture, is damaged, or has more pixels than are read.
 */
export async function makePicture(sent: Buffer): Promise<Picture> {
  if (pictureType(sent) === null)
    throw new PictureFault(
      415,
      'This file is no JPEG, PNG or WebP picture. Take it with the camera, or save it as JPEG.',
    );
  await demandFewPixels(sent);
  const [kept, small] = await read(() => Promise.all([scaled(sent, LONGEST, 80), scaled(sent, SMALL, 70)]));
  return {
    hash: createHash('sha256').update(kept.data).digest('hex'),
    bytes: kept.data,
    width: kept.info.width,
    height: kept.info.height,
    small: small.data,
  };
}

async function demandFewPixels(sent: Buffer): Promise<void> {
  const { width, height } = await read(() => sharp(sent, { limitInputPixels: false }).metadata());
  if (width * height <= MOST_PIXELS) return;
  throw new PictureFault(
    422,
    `The picture has ${Math.round((width * height) / 1e6)} million pixels; at most ${MOST_PIXELS / 1e6} million are taken. Make it smaller and send it again.`,
  );
}

function scaled(sent: Buffer, side: number, quality: number) {
  return sharp(sent, { limitInputPixels: MOST_PIXELS, failOn: 'error', pages: 1, sequentialRead: true })
    .autoOrient()
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#fff' })
    .jpeg({ quality, mozjpeg: true })
    .toBuffer({ resolveWithObject: true });
}

/** What the library cannot read is damaged: it passed the look at its kind. */
async function read<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    throw new PictureFault(
      422,
      'The picture is damaged or cut off, so it cannot be read. Take it again, or send the file anew.',
    );
  }
}
