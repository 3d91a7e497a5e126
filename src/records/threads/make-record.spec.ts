import { describe, expect, it } from '@jest/globals';
import { phonePicture } from '../../../test/support/pictures.js';
import { readPdf } from '../../../test/support/read-pdf.js';
import { recordFixture } from '../testing/record-fixture.js';
import { makeRecord } from './make-record.js';
import { runRecord } from './run-record.js';

describe('a record on paper', () => {
  const facts = recordFixture();
  const file = makeRecord(facts);
  const read = file.then(readPdf);
  const words = read.then(({ pages }) => pages.map(({ text }) => text).join(' '));

  it('is the same to the byte however often, wherever and whenever it is made', async () => {
    const again = await makeRecord(recordFixture());
    expect(again.equals(await file)).toBe(true);
    expect((await runRecord(facts)).equals(await file)).toBe(true);
  });

  it('is another file where one reading is another', async () => {
    const [set] = facts.job.heatingSets;
    const readings = set!.readings.map((reading, i) => (i === 2 ? { ...reading, ohms: 18.75 } : reading));
    const other = await makeRecord(recordFixture({}, { heatingSets: [{ ...set!, readings }] }));
    expect(other.equals(await file)).toBe(false);
  });

  it('stands on Letter, 8.5 by 11 in, upright', async () => {
    const { pages, title } = await read;
    expect(title).toBe('Closing record of job 101 Larch Street');
    expect(pages.length).toBeGreaterThan(4);
    for (const { size } of pages) expect(size).toEqual([612, 792]);
  });

  it('numbers its pages and names the job on each', async () => {
    const { pages } = await read;
    pages.forEach(({ text }, i) => {
      expect(text).toContain(`page ${i + 1} of ${pages.length}`);
      expect(text).toContain('101 Larch Street, 4 Larch Street. Larkspur Entries');
    });
  });

  it.each([
    ['the label', '3120 W at 240 V, 18.46 Ω at 68 °F'],
    ['every stage of the readings', 'before the hookup'],
    ['a reading', '18.85'],
    ['how it moved', '+1.8 % since the first reading.'],
    ['its limit and source', 'limit: 17.54 to 20.31 Ω (label of the set; rule of the trade)'],
    ['a hold point with who and when', '7 Jan 2031 14:00, T. Hale'],
    ['what was measured at it', 'Depth below grade: 50 in.'],
    ['a waiver with its reason', 'Waived: nothing to see under the snow.'],
    ['an inspection with its result', 'C. Penn: bars tied'],
    ['a clearance', 'T-4471'],
    ['a cure log', '58 °F'],
    ['measured strength with its method', 'equivalent age (published)'],
    ['the control', 'Set points of the control entered'],
    ['the run test', '12.9 A'],
    ['the breaker', 'Breaker, A 20'],
    ['quantities', '212.4'],
    ['a broken rule with its waiver', 'Waived: agreed with the authority by phone.'],
    ['the notes of the company', 'Rock at the north end'],
    ['the journal', 'hold point waived'],
    ['that code and inspector decide', 'It does not replace the local code, the inspector'],
    ['what must not be done to the cable', 'Never cut the heating cable'],
  ])('says %s', async (_what, said) => {
    // Lines break anywhere between words: on paper the same words stand with other spaces.
    expect(flat(await words)).toContain(flat(said));
  });

  it('leaves the journal and the notes of the crews out for the owner of the house', async () => {
    const { pages } = await readPdf(await makeRecord(recordFixture({ audience: 'owner' })));
    const said = flat(pages.map(({ text }) => text).join(' '));
    expect(said).not.toContain(flat('Rock at the north end'));
    expect(said).not.toContain('Journal');
    expect(said).toContain(flat('Depth below grade: 50 in.'));
  });

  it('has its drawings to scale: the landing of the plan, and the inch under each sheet', async () => {
    const { pages } = await read;
    for (const { title, scale } of facts.job.design!.drawings) {
      const sheet = pages.find(({ text }) => text.includes(`${title}, 1 : ${scale}`));
      const near = (value: number, wanted: number) => Math.abs(value - wanted) < 0.1;
      expect(
        sheet!.boxes.filter(({ width, height }) => near(width, 72) && near(height, 0)).length,
      ).toBeGreaterThan(0);
    }
    // The landing of the fixture is 84 in wide and 60 in deep.
    const plan = facts.job.design!.drawings.find(({ key }) => key.startsWith('cable-'))!;
    const sheet = pages.find(({ text }) => text.includes(`${plan.title}, 1 : ${plan.scale}`))!;
    const [wide, deep] = [84, 60].map((inches) => (inches / plan.scale) * 72);
    const landing = sheet.boxes.filter(
      ({ width, height }) => Math.abs(width - wide!) < 0.1 && Math.abs(height - deep!) < 0.1,
    );
    expect(landing).toHaveLength(1);
  });

  it('has nothing that stands beyond the paper', async () => {
    const { pages } = await read;
    for (const { boxes, text } of pages)
      for (const { x, y, width, height } of boxes)
        expect({
          page: text.slice(0, 40),
          out: x < 0 || y < 0 || x + width > 612 || y + height > 792,
        }).toMatchObject({
          out: false,
        });
  });

  it('shows its photos, and says so where there is none', async () => {
    expect(await words).toContain('No photo was taken.');
    const jpeg = await phonePicture();
    const made = await readPdf(await makeRecord(recordFixture({ pictures: [{ photoId: 'f1', jpeg }] })));
    const shown = made.pages.filter(({ pictures }) => pictures > 0);
    expect(shown).toHaveLength(1);
    expect(flat(shown[0]!.text)).toContain(flat('North end, 50 in deep, Dig, 7 Jan 2031 13:00, T. Hale'));
  });

  describe('is not broken by', () => {
    const HOSTILE: [string, string][] = [
      ['a name without end', 'Alder'.repeat(400)],
      ['a word of wide letters', 'W'.repeat(3000)],
      ['many words', 'stone '.repeat(3000)],
      ['letters of other scripts', 'Дом на улице Ольховой, Σπίτι, בית, بيت, 家, घर, บ้าน'],
      ['pictures for letters', '👩‍👩‍👧‍👦 👍🏽 🏠'],
      ['controls and marks of direction', 'a\u0000b\u202ec\u2066d\u200be\ufefff\u0007'],
      ['half characters', '\ud83d and \udc00'],
      ['marks without end', `e${'\u0301'.repeat(500)}`],
      ['words of the file format', ') Tj ET endstream endobj %%EOF << /JS (x) >>'],
      ['markup', '<svg onload="x">&amp;</text><rect/>'],
      ['nothing', ''],
    ];

    it.each(HOSTILE)('%s', async (_what, text) => {
      const base = facts.job;
      const [point] = base.holdPoints;
      const [set] = base.heatingSets;
      const hostile = recordFixture(
        {
          company: { name: text, zone: 'America/New_York' },
          journal: [{ at: '2031-01-06T13:00:00Z', action: text, reason: text, person: { name: text } }],
        },
        {
          name: text,
          ownerName: text,
          site: { ...base.site, address: text, town: text, authority: { name: text } },
          holdPoints: [{ ...point!, title: text, reason: text, decidedBy: { name: text } }],
          heatingSets: [{ ...set!, name: text }],
          design: null,
        },
      );
      const made = await makeRecord(hostile);
      expect(made.equals(await makeRecord(hostile))).toBe(true);
      const { pages } = await readPdf(made);
      expect(pages.length).toBeGreaterThan(2);
      expect(flat(pages.map(({ text: said }) => said).join(' '))).toContain(
        flat('Depth below grade: 50 in.'),
      );
    });

    it('a job of which nothing is on record yet', async () => {
      const bare = recordFixture(
        { asOf: null, cures: [], connections: [], journal: [] },
        {
          design: null,
          areas: [],
          quantities: [],
          findings: [],
          phases: [],
          holdPoints: [],
          inspections: [],
          clearances: [],
          heatingSets: [],
          hookups: [],
          placements: [],
          photos: [],
        },
      );
      const { pages } = await readPdf(await makeRecord(bare));
      const said = pages.map(({ text }) => text).join(' ');
      expect(said).toContain('This job has no heating set.');
      expect(said).toContain('No drawing can be made from the measurement on record.');
    });

    it('a logger that has read ten thousand times, whose table then has one reading an hour', async () => {
      const [placement] = facts.job.placements;
      const start = Date.parse('2031-01-09T14:00:00Z');
      const readings = Array.from({ length: 10_000 }, (_, i) => ({
        at: new Date(start + i * 60_000).toISOString(),
        concreteF: 60,
        airF: null,
        by: null,
        logger: { name: 'Probe 3' },
      }));
      const { pages } = await readPdf(
        await makeRecord(recordFixture({}, { placements: [{ ...placement!, readings }] })),
      );
      expect(pages.length).toBeLessThan(25);
      expect(flat(pages.map(({ text }) => text).join(' '))).toContain(
        flat('Of 10000 readings the first of each hour is shown'),
      );
    });
  });
});

/** A text without its spaces. */
const flat = (text: string): string => text.replaceAll(/\s+/g, '');
