import { describe, expect, it } from '@jest/globals';
import { drawing, label } from '../../../shared/drawing/svg.js';
import { paperSvg } from './paper-svg.js';

/** Each letter half as wide as high. */
const half = (text: string): number => text.length * 0.5;
const sheet = (content: string) =>
  paperSvg(drawing({ title: 'Plan', x: 0, y: 0, width: 48, height: 24, scale: 12 }, content), half);

describe('a drawing for paper', () => {
  it('lays a white ground under each text in place of the rim around its letters', () => {
    const svg = sheet(label(10, 20, 'end', { 'font-size': 2 }));
    expect(svg).not.toContain('paint-order');
    expect(svg).toContain(
      '<rect x="10.000" y="18.400" width="3.000" height="2.000" fill="#fff"/><text x="10" y="20" font-size="2">end</text>',
    );
  });

  it('goes by the anchor, the shift and the turn of the text, and by its letters as they are read', () => {
    const turned = { 'font-size': 2, 'text-anchor': 'middle', dy: -1, transform: 'rotate(90 10 20)' };
    expect(sheet(label(10, 20, 'a&b', turned))).toContain(
      '<rect x="8.500" y="17.400" width="3.000" height="2.000" fill="#fff" transform="rotate(90 10 20)"/>',
    );
    expect(sheet(label(10, 20, 'ab', { 'font-size': 1, 'text-anchor': 'end' }))).toContain('<rect x="9.000"');
  });

  it('leaves lines and hatches as they are', () => {
    const line = '<line class="cut" x1="0" y1="0" x2="12" y2="0"/>';
    expect(sheet(line)).toContain(line);
  });
});
