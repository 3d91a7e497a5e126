import type { OutboxFile } from '../sends/outbox/outbox-record.js';
import { fitInside } from './fit-inside.js';

/** Longest side of a photo as it is sent, in pixels, and how much of its detail is kept. */
const LONGEST = 1600;
const QUALITY = 0.82;

/** The file cannot be read as a picture on this device; the message says what to do. */
export class UnreadablePicture extends Error {
  constructor(name: string) {
    super(
      `${name || 'This file'} cannot be read as a picture here. Take it with the camera, or save it as JPEG.`,
    );
    this.name = 'UnreadablePicture';
  }
}

/**
 * Draws a picture anew, upright and small enough for a weak signal. Only what is drawn is kept: the place, the time and the
 * device that a camera writes into its files do not leave the phone.
 *
 * @throws UnreadablePicture when the browser cannot read the file.
 */
export async function shrinkPicture(file: File): Promise<OutboxFile> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => {
    throw new UnreadablePicture(file.name);
  });
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = fitInside(picture.width, picture.height, LONGEST);
  const pencil = canvas.getContext('2d');
  if (!pencil) throw new UnreadablePicture(file.name);
  pencil.fillStyle = '#fff';
  pencil.fillRect(0, 0, canvas.width, canvas.height);
  pencil.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
  if (!blob) throw new UnreadablePicture(file.name);
  return { type: 'image/jpeg', bytes: await blob.arrayBuffer() };
}
