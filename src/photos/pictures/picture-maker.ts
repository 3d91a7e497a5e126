import { Injectable } from '@nestjs/common';
import { makePicture, type Picture } from './make-picture.js';

/** Makes one picture at a time: however many are sent at once, the memory of one is taken. */
@Injectable()
export class PictureMaker {
  private last: Promise<unknown> = Promise.resolve();

  /** @throws PictureFault as `makePicture` does. */
  make(sent: Buffer): Promise<Picture> {
    const made = this.last.then(() => makePicture(sent));
    this.last = made.catch(() => undefined);
    return made;
  }
}
