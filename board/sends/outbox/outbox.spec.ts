import 'fake-indexeddb/auto';
import { randomUUID } from 'node:crypto';
import { beforeEach, describe, expect, it } from '@jest/globals';
import { openDB } from 'idb';
import { openDevice } from '../../device/device-database.js';
import { type Delivered, Outbox } from './outbox.js';
import { fromFirst, type OutboxRecord, type StoredRecord } from './outbox-record.js';
import { deviceStore, memoryStore, type OutboxStore } from './outbox-store.js';
import { takeFirstRecords } from './first-records.js';

const DONE: Delivered = { state: 'done', message: 'Recorded.', details: [] };
const GONE: Delivered = { state: 'unreachable', message: 'No signal.' };
const NO: Delivered = { state: 'refused', message: 'Not yet.', details: ['The footing is open.'] };
const BOTH: Delivered = {
  state: 'conflict',
  message: 'Choose.',
  conflict: {
    field: 'note of Dig',
    theirs: '“Rock”',
    mine: '“Water”',
    standing: 'Rock',
    changedBy: 'I. Rowe',
    currentRevision: 4,
  },
};

const PERSON = 'p1';
const made = (title: string, change = 'notePhase') => ({ personId: PERSON, change, title, input: { title } });

describe('an outbox', () => {
  let name: string;
  /** What the service answers, in turn; the last answer goes on. */
  let answers: Delivered[];
  let sent: string[];
  let brought: (ArrayBuffer | null)[];
  /** Locks and words between the pages of one device. */
  let line: Promise<void>;
  let pages: Outbox[];

  beforeEach(() => {
    name = randomUUID();
    answers = [DONE];
    sent = [];
    brought = [];
    line = Promise.resolve();
    pages = [];
  });

  const storeOf = (personId = PERSON): OutboxStore => deviceStore(() => openDevice(name), personId);
  const openPage = async (store: OutboxStore = storeOf()): Promise<Outbox> => {
    const page = new Outbox({
      store,
      deliver: async ({ title }, bytes) => {
        sent.push(title);
        brought.push(bytes);
        return (answers.length > 1 ? answers.shift() : answers[0]) ?? DONE;
      },
      alone: (work) => (line = line.then(work)),
      announce: () => pages.filter((other) => other !== page).forEach((other) => void other.refresh()),
      newKey: randomUUID,
      ofTheSite: (change) => change !== 'commitJob',
    });
    pages.push(page);
    await page.open();
    return page;
  };
  const shown = (page: Outbox) => page.snapshot().sends.map(({ title, state }) => [title, state]);

  it('keeps a change before it sends it, and lets it go when it is done', async () => {
    const store = storeOf();
    const kept: number[] = [];
    const page = await openPage({
      ...store,
      add: async (record) => {
        await store.add(record);
        kept.push((await store.all()).records.length, sent.length);
      },
    });
    expect(await page.send(made('one'))).toBe('done');
    expect(kept).toEqual([1, 0]);
    expect(shown(page)).toEqual([['one', 'done']]);
    expect((await store.all()).records).toEqual([]);
  });

  it('sends in the order of making, and stops the line at the first without an answer', async () => {
    answers = [GONE];
    const page = await openPage();
    for (const title of ['one', 'two', 'three']) expect(await page.send(made(title))).toBe('unsent');
    expect(sent).toEqual(['one', 'one', 'one']);
    expect(page.snapshot().unsent).toBe(3);
    sent = [];
    answers = [DONE];
    await page.drain();
    expect(sent).toEqual(['one', 'two', 'three']);
    expect(page.snapshot().unsent).toBe(0);
  });

  it('goes on behind a refusal and a conflict, and keeps both until the person puts them away', async () => {
    answers = [NO, BOTH, DONE];
    const page = await openPage();
    const states = await Promise.all(['one', 'two', 'three'].map((title) => page.send(made(title))));
    expect(states).toEqual(['refused', 'conflict', 'done']);
    const again = await openPage();
    expect(shown(again)).toEqual([
      ['two', 'conflict'],
      ['one', 'refused'],
    ]);
    expect(again.snapshot().sends.map(({ details }) => details)).toEqual([[], ['The footing is open.']]);
    expect(again.snapshot().unsent).toBe(0);
    for (const { key } of again.snapshot().sends) await again.dismiss(key);
    expect(shown(await openPage())).toEqual([]);
  });

  it('puts the own value over the other as a new change under a new key', async () => {
    answers = [BOTH, DONE];
    const page = await openPage();
    await page.send(made('note'));
    const [conflict] = page.snapshot().sends;
    expect(await page.replace(conflict!.key, { note: 'Water', seen: 'Rock' })).toBe('done');
    const [done] = page.snapshot().sends;
    expect(done).toMatchObject({ state: 'done', input: { note: 'Water', seen: 'Rock' } });
    expect(done!.key).not.toBe(conflict!.key);
    expect((await storeOf().all()).records).toEqual([]);
  });

  it('sends a picture after what is small, and keeps its bytes with it until it is answered', async () => {
    answers = [GONE];
    const killed = await openPage();
    const bytes = new Uint8Array([0xff, 0xd8, 0xff, 0xe0]).buffer;
    await killed.send({ ...made('photo', 'addPhoto'), file: { type: 'image/jpeg', bytes } });
    await killed.send(made('note'));
    expect(killed.snapshot().unsent).toBe(2);
    const { records } = await storeOf().all();
    expect(records.map(({ file }) => file)).toEqual([{ type: 'image/jpeg' }, null]);
    answers = [DONE];
    [sent, brought] = [[], []];
    const page = await openPage();
    await page.drain();
    expect(sent).toEqual(['note', 'photo']);
    expect(brought.map((one) => one && [...new Uint8Array(one)])).toEqual([null, [0xff, 0xd8, 0xff, 0xe0]]);
    expect(await (await openDevice(name)).count('files')).toBe(0);
  });

  it('lets the bytes of a picture go with one that is given up, and takes them along to a new key', async () => {
    answers = [BOTH, GONE];
    const page = await openPage();
    const bytes = new Uint8Array([1, 2, 3]).buffer;
    await page.send({ ...made('photo', 'addPhoto'), file: { type: 'image/jpeg', bytes } });
    const [first] = page.snapshot().sends;
    await page.replace(first!.key, { title: 'again' });
    const device = await openDevice(name);
    const [second] = page.snapshot().sends;
    expect(await device.getAllKeys('files')).toEqual([second!.key]);
    expect([...new Uint8Array((await device.get('files', second!.key))!)]).toEqual([1, 2, 3]);
    await page.dismiss(second!.key);
    expect(await device.count('files')).toBe(0);
  });

  it('takes up what an earlier version of the client has kept on the device', async () => {
    const record = fromFirst({ key: 'k1', change: 'notePhase', title: 'old', input: {} }, PERSON);
    const earlier = await openDB(name, 1, {
      upgrade: (database) => {
        const outbox = database.createObjectStore('outbox', { keyPath: 'seq', autoIncrement: true });
        outbox.createIndex('key', 'key', { unique: true });
        database.createObjectStore('answers');
      },
    });
    await earlier.add('outbox', record);
    earlier.close();
    const page = await openPage();
    await page.drain();
    expect(sent).toEqual(['old']);
  });

  it('takes up after a killed page where that had left, with the same keys', async () => {
    answers = [GONE];
    const killed = await openPage();
    await killed.send(made('one'));
    const keys = killed.snapshot().sends.map(({ key }) => key);
    answers = [DONE];
    const page = await openPage();
    expect(page.snapshot().sends.map(({ key }) => key)).toEqual(keys);
    await page.drain();
    expect(shown(page)).toEqual([['one', 'done']]);
  });

  it('leaves what an earlier page wanted of the plan to the person', async () => {
    answers = [GONE];
    await (await openPage()).send(made('commit', 'commitJob'));
    answers = [DONE];
    sent = [];
    const page = await openPage();
    await page.send(made('one'));
    expect(sent).toEqual(['one']);
    const commit = page.snapshot().sends.find(({ title }) => title === 'commit');
    expect(commit).toMatchObject({ state: 'unsent', held: true });
    await page.tryAgain(commit!.key);
    expect(sent).toEqual(['one', 'commit']);
  });

  it('lets others pass a change at which the service fails again and again', async () => {
    answers = [{ state: 'failed', message: 'Something went wrong on our side.' }];
    const page = await openPage();
    await page.send(made('bad'));
    for (let tries = 0; tries < 6; tries += 1) await page.drain();
    expect(sent).toHaveLength(5);
    answers = [DONE];
    expect(await page.send(made('good'))).toBe('done');
    expect(shown(page)).toEqual([
      ['bad', 'unsent'],
      ['good', 'done'],
    ]);
    await page.tryAgain(page.snapshot().sends[0]!.key);
    expect(page.snapshot().unsent).toBe(0);
  });

  it('is sent by one page at a time, and seen by all', async () => {
    answers = [GONE];
    const one = await openPage();
    await one.send(made('one'));
    await one.send(made('two'));
    const two = await openPage();
    answers = [DONE];
    sent = [];
    await Promise.all([one.drain(), two.drain(), one.drain()]);
    expect(sent).toEqual(['one', 'two']);
    expect([one.snapshot().unsent, two.snapshot().unsent]).toEqual([0, 0]);
  });

  it('does not bring back what was given up while it was on its way', async () => {
    let answer: (delivered: Delivered) => void = () => undefined;
    const store = storeOf();
    const page = new Outbox({
      store,
      deliver: () => new Promise((resolve) => (answer = resolve)),
      alone: (work) => work(),
      announce: () => undefined,
      newKey: () => 'k',
      ofTheSite: () => true,
    });
    const sending = new Promise<void>((resolve) => {
      page.subscribe(() => page.snapshot().sends[0]?.state === 'sending' && resolve());
    });
    void page.send(made('one'));
    await sending;
    await page.dismiss('k');
    const quiet = new Promise<void>((resolve) => page.subscribe(resolve));
    answer(NO);
    await quiet;
    expect((await store.all()).records).toEqual([]);
  });

  it("shows and sends nobody else's", async () => {
    answers = [GONE];
    await (await openPage()).send(made('mine'));
    answers = [DONE];
    sent = [];
    const other = await openPage(storeOf('p2'));
    await other.drain();
    expect([sent, shown(other)]).toEqual([[], []]);
    expect((await storeOf().all()).records).toHaveLength(1);
  });

  it('counts what a newer version has left, and leaves it as it is', async () => {
    const newer: StoredRecord = { version: 3, key: 'k3', personId: PERSON, steps: [1, 2] };
    await (await openDevice(name)).add('outbox', newer);
    const page = await openPage();
    expect(page.snapshot()).toEqual({ sends: [], unsent: 1, unreadable: 1 });
    await page.drain();
    expect(sent).toEqual([]);
    expect(await (await openDevice(name)).getAll('outbox')).toMatchObject([newer]);
  });

  describe('that follows on the first version of the client', () => {
    const KEY = `flagway.unsent.${PERSON}`;
    const storage = (text: string): Storage => {
      const kept = new Map([[KEY, text]]);
      return {
        getItem: (item: string) => kept.get(item) ?? null,
        setItem: (item: string, value: string) => void kept.set(item, value),
        removeItem: (item: string) => void kept.delete(item),
      } as Storage;
    };
    const first = (key: string) => ({
      key,
      change: 'startPhase',
      title: `Start ${key}`,
      input: { phaseId: 'x', revision: 7 },
      state: 'unsent',
      message: '',
      details: [],
    });

    it('takes its changes over with key and input as they were, the oldest first', async () => {
      const kept = storage(JSON.stringify([first('b'), first('a')]));
      const store = storeOf();
      await takeFirstRecords(store, PERSON, kept);
      await takeFirstRecords(store, PERSON, kept);
      const { records } = await store.all();
      expect(records.map(({ seq: _, ...record }) => record)).toEqual(
        ['a', 'b'].map((key) => fromFirst(first(key), PERSON)),
      );
      expect(records[0]).toMatchObject({ version: 2, key: 'a', input: { phaseId: 'x', revision: 7 } });
      expect(kept.getItem(KEY)).toBeNull();
    });

    it('sets aside what was cut off in the middle', async () => {
      const kept = storage('[{"key":"a","cha');
      await takeFirstRecords(storeOf(), PERSON, kept);
      expect(kept.getItem(`${KEY}.unreadable`)).toBe('[{"key":"a","cha');
      expect((await storeOf().all()).records).toEqual([]);
    });
  });

  it('works for as long as the page lasts on a device that keeps nothing', async () => {
    answers = [GONE, DONE];
    const page = await openPage(memoryStore());
    await page.send(made('one'));
    expect(page.snapshot().unsent).toBe(1);
    await page.drain();
    expect(shown(page)).toEqual([['one', 'done']]);
  });
});

describe('the store on the device', () => {
  it('adds a record once by its key, and writes none that was taken out', async () => {
    const name = randomUUID();
    const store = deviceStore(() => openDevice(name), PERSON);
    const record: OutboxRecord = fromFirst({ key: 'k', change: 'notePhase', title: 't', input: {} }, PERSON);
    await store.add(record);
    await store.add({ ...record, title: 'again' });
    expect((await store.all()).records).toMatchObject([{ title: 't' }]);
    await store.update({ ...record, message: 'No signal.' });
    expect((await store.all()).records).toMatchObject([{ message: 'No signal.' }]);
    await store.remove('k');
    await store.update(record);
    expect((await store.all()).records).toEqual([]);
  });
});
