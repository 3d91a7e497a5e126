import { describe, expect, it } from '@jest/globals';
import { pictureType } from './picture-type.js';

const bytes = (hex: string, tail = '00'.repeat(16)): Buffer => Buffer.from(hex + tail, 'hex');
const text = (said: string): Buffer => Buffer.from(said, 'latin1');

describe('the kind of a picture', () => {
  it.each([
    ['jpeg', bytes('ffd8ffe0')],
    ['jpeg', bytes('ffd8ffe1')],
    ['png', bytes('89504e470d0a1a0a')],
    ['webp', text('RIFF\u0010\u0000\u0000\u0000WEBPVP8 ')],
  ])('%s is told by its first bytes', (type, content) => {
    expect(pictureType(content)).toBe(type);
  });

  it.each([
    ['nothing', Buffer.alloc(0)],
    ['two bytes of a JPEG', bytes('ffd8', '')],
    ['a PNG whose line ends were changed on the way', bytes('89504e470a1a0a')],
    ['a sound in the same container as WebP', text('RIFF\u0010\u0000\u0000\u0000WAVEfmt ')],
    ['a drawing', text('<svg xmlns="http://www.w3.org/2000/svg"/>')],
    ['a page', text('<!doctype html><script>alert(1)</script>')],
    ['an animated picture of another kind', text('GIF89a')],
    ['a document', text('%PDF-1.7')],
  ])('%s is none', (_name, content) => {
    expect(pictureType(content)).toBeNull();
  });
});
