import type { Database } from '../../src/platform/database/database.js';
import { hashPassword } from '../../src/people/passwords.js';
import { ApiClient, type Outcome } from './api-client.js';
import { must } from './hands.js';

/** Password of the demo's people; the sign-in page has a button for each of them as well. */
export const DEMO_PASSWORD = 'flag on the post';

export const ZONE = 'America/New_York';

const PEOPLE = [
  { email: 'office@quillback.example', name: 'Ines Rowe', role: 'office' },
  { email: 'foreman@quillback.example', name: 'Tobias Hale', role: 'foreman' },
  { email: 'electrician@quillback.example', name: 'Mara Voss', role: 'electrician' },
] as const;

/** Makes the invented company and its people; a company is never made through the API. */
export async function makeDemoCompany(database: Database): Promise<void> {
  const passwordHash = await hashPassword(DEMO_PASSWORD);
  await database.company.create({
    data: {
      name: 'Quillback Entries',
      zone: ZONE,
      isDemo: true,
      people: { create: PEOPLE.map((person) => ({ ...person, passwordHash, zone: ZONE })) },
    },
  });
}

/** The people of the demo, signed in at a running service. */
export async function signInDemoPeople(url: string) {
  const [office, foreman, electrician] = await Promise.all(
    PEOPLE.map(({ email }) => ApiClient.signedIn(url, email, DEMO_PASSWORD)),
  );
  if (!office || !foreman || !electrician) throw new Error('The demo has three people');
  return { office, foreman, electrician };
}

const range = (from: string, to: string) => [{ from, to }];
const week = (from: string, to: string, days = ['mon', 'tue', 'wed', 'thu', 'fri']) =>
  days.map((day) => ({ day, hours: range(from, to) }));

const CREWS = [
  { name: 'Diggers', trades: ['labour'], size: 3, week: week('07:30', '16:00') },
  { name: 'Masons Reed', trades: ['mason'], size: 3, week: week('07:30', '16:00') },
  { name: 'Masons Stone', trades: ['mason'], size: 2, week: week('08:00', '16:30') },
  { name: 'Cable hands', trades: ['cable'], size: 2, week: week('08:00', '16:00') },
  { name: 'Voss Electric', trades: ['electrician'], size: 1, week: week('08:00', '16:00') },
  { name: 'Office', trades: ['office'], size: 1, week: week('08:00', '17:00') },
];

const EQUIPMENT = [
  { kind: 'blanket', name: 'Insulated blankets', unit: 'piece', quantity: 8 },
  { kind: 'enclosure', name: 'Tents', unit: 'piece', quantity: 3 },
  { kind: 'heater', name: 'Heaters', unit: 'piece', quantity: 3 },
];

/** Crews, equipment and the authority of the demo, entered by the office. Gives the authority's id. */
export async function enterDemoCompany(office: ApiClient): Promise<string> {
  const { people } = await office.data<{ people: { id: string; role: string }[] }>('{ people { id role } }');
  const idOf = (role: string) => people.filter((person) => person.role === role).map(({ id }) => id);
  for (const crew of CREWS) {
    const memberIds = crew.trades.includes('electrician')
      ? idOf('electrician')
      : crew.trades.includes('office')
        ? idOf('office')
        : idOf('foreman');
    await must(office, 'createCrew', { ...crew, zone: ZONE, memberIds });
  }
  for (const pool of EQUIPMENT) await must(office, 'setEquipment', pool);
  const made: Outcome = await must(
    office,
    'createAuthority',
    {
      name: 'Alder Bend building department',
      noticeHours: 24,
      visitMinutes: 30,
      zone: ZONE,
      week: week('09:00', '15:00'),
      phone: '555-0134',
    },
    '... on AuthorityChanged { authority { id } }',
  );
  return (made as unknown as { authority: { id: string } }).authority.id;
}
