import { describe, expect, it } from '@jest/globals';
import { checkTyped } from './check-typed.js';
import { usualValues } from './field.js';

const FIELDS = [
  { name: 'tread', label: 'Tread depth', unit: 'in', usual: '12' },
  { name: 'owner', label: 'Owner', text: true },
  { name: 'phone', label: 'Telephone', text: true, optional: true },
  { name: 'lead', label: 'Cold lead', unit: 'ft', optional: true },
];

describe('what is typed into a form', () => {
  it('begins with what is usual, and asks for the rest', () => {
    const values = usualValues(FIELDS);
    expect(values).toEqual({ tread: '12', owner: '', phone: '', lead: '' });
    expect(checkTyped(FIELDS, values)).toEqual({ owner: 'Enter the owner.' });
  });

  it('says which field is no number, and how one is typed', () => {
    expect(checkTyped(FIELDS, { tread: 'a foot', owner: 'R. Alder', lead: '9 ft' })).toEqual({
      tread: 'Enter the tread depth as a number such as 7.5 or 7 1/2, in inches.',
      lead: 'Enter the cold lead as a number such as 7.5 or 7 1/2, in feet.',
    });
  });

  it('counts in whole numbers', () => {
    const size = { name: 'size', label: 'Number of people', whole: true };
    expect(checkTyped([size], { size: '2.5' })).toEqual({
      size: 'Enter the number of people as a whole number.',
    });
    expect(checkTyped([size], { size: 'two' })).toEqual({
      size: 'Enter the number of people as a whole number.',
    });
    expect(checkTyped([size], { size: '2' })).toEqual({});
  });

  it('takes blanks for nothing', () => {
    expect(checkTyped(FIELDS, { tread: ' ', owner: '  ' })).toEqual({
      tread: 'Enter the tread depth, in inches.',
      owner: 'Enter the owner.',
    });
  });
});
