import { describe, expect, it } from '@jest/globals';
import type { ItemFieldsFragment } from '../api/documents.js';
import { measuredValues } from './measured-values.js';

const item = (id: string, unit: string | null, many = false): ItemFieldsFragment => ({
  id,
  label: id,
  unit,
  many,
  limitText: '',
  required: true,
  mark: 'C',
  source: '',
});

function form(entries: Readonly<Record<string, string>>): FormData {
  const data = new FormData();
  for (const [name, value] of Object.entries(entries)) data.set(name, value);
  return data;
}

describe('what was entered at a check', () => {
  it('is a number, all numbers of a row of places, or a confirmation', () => {
    const items = [item('depth', 'in', true), item('temp', '°F'), item('spoil', null), item('ladder', null)];
    expect(measuredValues(items, form({ depth: '48 49,5  50', temp: '61.5', spoil: 'on' }))).toEqual([
      { itemId: 'depth', values: [48, 49.5, 50] },
      { itemId: 'temp', value: 61.5 },
      { itemId: 'spoil', confirmed: true },
      { itemId: 'ladder', confirmed: false },
    ]);
  });

  it('is left out when it is no number, so that the service names it as missing', () => {
    const items = [item('temp', '°F'), item('depth', 'in', true)];
    expect(measuredValues(items, form({ temp: 'warm', depth: '48 deep' }))).toEqual([]);
    expect(measuredValues(items, form({ temp: '', depth: ' ' }))).toEqual([]);
  });
});
