/*
 * What a company that rebuilds entries usually has: common practice, no source. Offered by a press and changed by hand;
 * nothing of it is entered unasked.
 */

/** Trades that a heated entry needs, with the crew that is offered for each. */
export const USUAL_CREWS = [
  { trade: 'labour', name: 'Labour crew', size: 3, from: '07:30', to: '16:00' },
  { trade: 'mason', name: 'Masons', size: 3, from: '07:30', to: '16:00' },
  { trade: 'cable', name: 'Cable crew', size: 2, from: '07:30', to: '16:00' },
  { trade: 'electrician', name: 'Electrician', size: 1, from: '08:00', to: '16:00' },
  { trade: 'office', name: 'Office', size: 1, from: '08:00', to: '17:00' },
] as const;

/** A trade in words: what its crew does on an entry. */
export const TRADE_WORDS: Readonly<Record<string, string>> = {
  labour: 'labour: tear-out, digging, forms',
  mason: 'mason: block, veneer, stone',
  cable: 'cable: mesh, heating cable, readings',
  electrician: 'electrician: hookup, under licence',
  office: 'office: permits, orders, requests',
};

/** Equipment against the cold that the company's template asks for. */
export const USUAL_EQUIPMENT = [
  { kind: 'blanket', name: 'Insulated blankets', unit: 'piece', quantity: 8 },
  { kind: 'enclosure', name: 'Tents', unit: 'piece', quantity: 2 },
  { kind: 'heater', name: 'Heaters', unit: 'piece', quantity: 2 },
] as const;
