import { createHash, randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import ExifReader from 'exifreader';
import sharp from 'sharp';
import type { Phase } from '../../src/generated/prisma/client.js';
import type { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD } from '../support/company.js';
import { phonePicture, pictureAs, pixelFlood } from '../support/pictures.js';
import { RunningJob } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

const NOW = '2031-01-06T14:00:00Z';
const TAKEN = '2031-01-06T13:30:00.000Z';

interface Sent {
  readonly status: number;
  readonly body: { photoId?: string; answer?: string; code?: string; message?: string };
}

describe('photos', () => {
  let service: TestService;
  let job: RunningJob;
  let dig: Phase;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    job = await RunningJob.make(service);
    dig = await job.phase('dig');
  });
  afterAll(() => service.stop());

  const send = async (
    client: ApiClient,
    bytes: Buffer | null,
    query: Record<string, string> = {},
    type = 'image/jpeg',
  ): Promise<Sent> => {
    const told = { clientKey: randomUUID(), phaseId: dig.id, takenAt: TAKEN, ...query };
    const response = await fetch(`${service.url}/files/photos?${new URLSearchParams(told)}`, {
      method: 'POST',
      headers: { 'content-type': type, ...(client.cookie && { cookie: client.cookie }) },
      body: bytes === null ? null : new Uint8Array(bytes),
    });
    return { status: response.status, body: (await response.json()) as Sent['body'] };
  };
  const fetchPicture = (client: ApiClient, path: string, headers: Record<string, string> = {}) =>
    fetch(service.url + path, { headers: { ...headers, ...(client.cookie && { cookie: client.cookie }) } });
  const photosOf = async (client = job.office) => {
    const { jobByNumber } = await client.data<{ jobByNumber: { photos: PhotoAnswer[] } }>(
      `{ jobByNumber(number: 101) { photos {
        id caption takenAt addedAt releasedAt revision path smallPath width height
        takenBy { name } phase { id photos { id } } holdPoint { id }
      } } }`,
    );
    return jobByNumber.photos;
  };
  const sendOne = async (query: Record<string, string> = {}): Promise<PhotoAnswer> => {
    const { body } = await send(job.foreman, await phonePicture(), query);
    const photo = (await photosOf()).find(({ id }) => id === body.photoId);
    if (!photo) throw new Error(JSON.stringify(body));
    return photo;
  };

  describe('taken in from the site', () => {
    it('stands at its phase and its job with who, when and what it shows', async () => {
      const point = await job.holdPoint(dig, 'depth');
      const { status, body } = await send(job.foreman, await phonePicture(), {
        caption: '  Below frost, 50 in  ',
        holdPointId: point.id,
      });
      expect([status, body.answer]).toEqual([201, 'applied']);
      expect(await photosOf()).toEqual([
        {
          id: body.photoId,
          caption: 'Below frost, 50 in',
          takenAt: TAKEN,
          addedAt: '2031-01-06T14:00:00.000Z',
          releasedAt: null,
          revision: 1,
          path: `/files/photos/${body.photoId}`,
          smallPath: `/files/photos/${body.photoId}/small`,
          width: 800,
          height: 600,
          takenBy: { name: job.people.foreman.name },
          phase: { id: dig.id, photos: [{ id: body.photoId }] },
          holdPoint: { id: point.id },
        },
      ]);
    });

    it('is one photo however often it is sent, with its key or with a new one', async () => {
      const bytes = await phonePicture();
      const clientKey = randomUUID();
      const first = await send(job.foreman, bytes, { clientKey });
      const again = await Promise.all([
        send(job.foreman, bytes, { clientKey }),
        send(job.foreman, bytes),
        send(job.office, bytes),
      ]);
      const ids = [first, ...again].map(({ body }) => body.photoId);
      expect(new Set(ids).size).toBe(1);
      expect(again.map(({ status }) => status)).toEqual([201, 200, 200]);
      expect(await photosOf()).toHaveLength(1);
    });

    it('keeps one picture for the same content at two phases, and two for two companies', async () => {
      const bytes = await phonePicture({ seed: 9 });
      const other = await job.phase('footing');
      await send(job.foreman, bytes);
      await send(job.foreman, bytes, { phaseId: other.id });
      expect(await photosOf()).toHaveLength(2);
      const files = () => service.database.photoFile.findMany({ where: { companyId: job.company.id } });
      expect(await files()).toHaveLength(1);
      const [file] = await files();
      expect(createHash('sha256').update(file!.bytes).digest('hex')).toBe(file!.hash);
      const elsewhere = await RunningJob.make(service);
      const theirs = await elsewhere.phase('dig');
      await send(elsewhere.foreman, bytes, { phaseId: theirs.id });
      expect(await service.database.photoFile.count({ where: { hash: file!.hash } })).toBe(2);
    });

    it('is refused under a key that brought another picture, or another phase', async () => {
      const clientKey = randomUUID();
      const bytes = await phonePicture();
      await send(job.foreman, bytes, { clientKey });
      const other = await job.phase('footing');
      const answers = [
        await send(job.foreman, await phonePicture({ seed: 2 }), { clientKey }),
        await send(job.foreman, bytes, { clientKey, phaseId: other.id }),
      ];
      expect(answers.map(({ status, body }) => [status, body.code])).toEqual([
        [409, 'KeyReused'],
        [409, 'KeyReused'],
      ]);
      expect(await photosOf()).toHaveLength(1);
    });

    it('stays refused under its key when an outbox sent it, though the reason is gone', async () => {
      const query = { clientKey: randomUUID(), fromOutbox: 'true', takenAt: '2031-01-06T15:00:00Z' };
      const bytes = await phonePicture();
      const early = await send(job.foreman, bytes, query);
      service.setClock('2031-01-06T16:00:00Z');
      expect([early.status, (await send(job.foreman, bytes, query)).status]).toEqual([400, 400]);
      expect(await photosOf()).toEqual([]);
    });

    it('counts as taken now when the phone of an outbox runs a little ahead', async () => {
      await send(job.foreman, await phonePicture(), { takenAt: '2031-01-06T14:03:00Z', fromOutbox: 'true' });
      expect((await photosOf())[0]?.takenAt).toBe('2031-01-06T14:00:00.000Z');
    });

    it('is told in the journal', async () => {
      const photo = await sendOne({ caption: 'Trench' });
      const { journal } = await job.office.data<{
        journal: { edges: { node: { action: string; subjectId: string; person: { name: string } } }[] };
      }>(
        'query($id: ID!) { journal(jobId: $id, first: 5) { edges { node { action subjectId person { name } } } } }',
        {
          id: job.job.id,
        },
      );
      expect(journal.edges.map(({ node }) => node)).toContainEqual({
        action: 'photo added',
        subjectId: photo.id,
        person: { name: job.people.foreman.name },
      });
    });
  });

  describe('made anew before it is kept', () => {
    it('tells nothing of place, time and device any more, in neither size', async () => {
      const bytes = await phonePicture();
      const before = ExifReader.load(bytes, { expanded: true });
      // The picture that is sent does tell them, so that this test can fail.
      expect(before.gps?.Latitude).toBeCloseTo(40.4461, 3);
      expect(before.exif?.Model?.description).toBe('Pocket 3');
      const { body } = await send(job.foreman, bytes);
      for (const path of [`/files/photos/${body.photoId}`, `/files/photos/${body.photoId}/small`]) {
        const kept = Buffer.from(await (await fetchPicture(job.office, path)).arrayBuffer());
        const tags = ExifReader.load(kept, { expanded: true });
        expect([tags.gps, tags.exif, tags.iptc, tags.xmp]).toEqual([
          undefined,
          undefined,
          undefined,
          undefined,
        ]);
        for (const word of ['Exif', 'GPS', 'Pocket', 'Invented', '2031:01:06'])
          expect(kept.includes(word)).toBe(false);
      }
    });

    it('stands upright as it was seen, and is no larger than 1600 and 320 pixels a side', async () => {
      // Orientation 6 of the Exif standard: the picture lies on its side and is turned to the right when shown.
      const { body } = await send(
        job.foreman,
        await phonePicture({ width: 3000, height: 2000, orientation: 6 }),
      );
      const [photo] = await photosOf();
      expect([photo?.width, photo?.height]).toEqual([1067, 1600]);
      const small = await fetchPicture(job.office, `/files/photos/${body.photoId}/small`);
      const { width, height, format } = await sharp(Buffer.from(await small.arrayBuffer())).metadata();
      expect([width, height, format]).toEqual([213, 320, 'jpeg']);
    });

    it.each(['png', 'webp'] as const)('is taken as %s too, and kept as JPEG', async (format) => {
      const { status, body } = await send(job.foreman, await pictureAs(format), {}, `image/${format}`);
      expect(status).toBe(201);
      const shown = await fetchPicture(job.office, `/files/photos/${body.photoId}`);
      expect(shown.headers.get('content-type')).toBe('image/jpeg');
      expect((await sharp(Buffer.from(await shown.arrayBuffer())).metadata()).format).toBe('jpeg');
    });
  });

  describe('that cannot be taken in', () => {
    const refusals = async (): Promise<[string, Buffer | null, string, number, RegExp][]> => {
      const jpeg = await phonePicture();
      return [
        [
          'a picture cut off on the way',
          jpeg.subarray(0, jpeg.length / 2),
          'image/jpeg',
          422,
          /damaged or cut off/,
        ],
        ['the first bytes of a picture', jpeg.subarray(0, 20), 'image/jpeg', 422, /damaged or cut off/],
        [
          'gigabytes in a few bytes',
          await pixelFlood(60_000, 60_000),
          'image/png',
          422,
          /3600 million pixels/,
        ],
        [
          'a little more than is read',
          await pixelFlood(10_000, 5001),
          'image/png',
          422,
          /at most 50 million/,
        ],
        [
          'a drawing under a false name',
          Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
          'image/jpeg',
          415,
          /no JPEG, PNG or WebP/,
        ],
        [
          'a page under a false name',
          Buffer.from('<!doctype html><script>1</script>'),
          'image/jpeg',
          415,
          /no JPEG/,
        ],
        ['a picture of another kind', await pictureAs('gif'), 'image/png', 415, /no JPEG/],
        ['another kind under its own name', await pictureAs('gif'), 'image/gif', 415, /Send the picture as/],
        ['a form', jpeg, 'multipart/form-data; boundary=x', 415, /Send the picture as/],
        ['JSON', Buffer.from('{}'), 'application/json', 415, /Send the picture as/],
        ['nothing', Buffer.alloc(0), 'image/jpeg', 422, /no picture in the request/],
        [
          'more bytes than a picture has',
          Buffer.alloc(10 * 1024 * 1024 + 1, 0xff),
          'image/jpeg',
          413,
          /larger than 10 MB/,
        ],
      ];
    };

    it('is refused in clear words, and nothing of it is kept', async () => {
      for (const [name, bytes, type, status, words] of await refusals()) {
        const answer = await send(job.foreman, bytes, {}, type);
        expect([name, answer.status]).toEqual([name, status]);
        expect(answer.body.message).toMatch(words);
      }
      expect(await photosOf()).toEqual([]);
      expect(await service.database.photoFile.count({ where: { companyId: job.company.id } })).toBe(0);
    });

    it.each([
      [{ clientKey: 'mine' }, 400, 'clientKey: must be a UUID made for this change.'],
      [{ takenAt: 'yesterday' }, 400, 'takenAt: must be a moment such as 2031-01-06T14:00:00Z.'],
      [
        { takenAt: '2031-01-06T14:01:00Z' },
        400,
        'takenAt: 2031-01-06T14:01:00.000Z lies in the future; enter when it happened, or leave it out for now.',
      ],
      [{ caption: 'x'.repeat(201) }, 400, 'caption: has at most 200 letters.'],
      [
        { phaseId: randomUUID() },
        404,
        'There is no such phase. It may have been removed; reload and try again.',
      ],
      [
        { phaseId: "' or 1=1" },
        404,
        'There is no such phase. It may have been removed; reload and try again.',
      ],
      [
        { holdPointId: randomUUID() },
        404,
        'There is no such hold point. It may have been removed; reload and try again.',
      ],
    ])('is refused when what is told of it is wrong: %j', async (query, status, message) => {
      const answer = await send(job.foreman, await phonePicture(), query);
      expect([answer.status, answer.body.message]).toEqual([status, message]);
    });

    it('is refused at a hold point of another phase', async () => {
      const point = await job.holdPoint(await job.phase('footing'), 'depth');
      const answer = await send(job.foreman, await phonePicture(), { holdPointId: point.id });
      expect([answer.status, answer.body.code]).toEqual([404, 'NotFound']);
    });

    it('is refused to those who are not signed in, before a byte is read, and to viewers', async () => {
      const viewer = await service.signIn(job.people.viewer.email, TEST_PASSWORD);
      const answers = [
        await send(service.anonymous(), await phonePicture()),
        await send(viewer, await phonePicture()),
      ];
      expect(answers.map(({ status, body }) => [status, body.code])).toEqual([
        [401, 'not-signed-in'],
        [403, 'not-allowed'],
      ]);
    });
  });

  describe('shown', () => {
    it('comes as what it is, with a validator, and is kept by nobody without asking again', async () => {
      const photo = await sendOne();
      for (const path of [photo.path, photo.smallPath]) {
        const shown = await fetchPicture(job.office, path);
        const { headers } = shown;
        expect(shown.status).toBe(200);
        expect(headers.get('content-type')).toBe('image/jpeg');
        expect(headers.get('x-content-type-options')).toBe('nosniff');
        expect(headers.get('cache-control')).toBe('private, no-cache');
        expect(headers.get('content-security-policy')).toBe("default-src 'none'; sandbox");
        const tag = headers.get('etag') ?? '';
        expect(tag).toMatch(/^"(kept|small)-[0-9a-f]{64}"$/);
        const again = await fetchPicture(job.office, path, { 'if-none-match': `"other", W/${tag}` });
        expect([again.status, await again.text()]).toEqual([304, '']);
        expect((await fetchPicture(job.office, path, { 'if-none-match': '"other"' })).status).toBe(200);
      }
    });

    it('is not found by another company, nor under an id that is none, and not without signing in', async () => {
      const photo = await sendOne();
      const { people } = await makeCompany(service.database, `Other ${randomUUID()}`);
      const other = await service.signIn(people.office.email, TEST_PASSWORD);
      const answers = await Promise.all([
        fetchPicture(other, photo.path),
        fetchPicture(other, photo.smallPath),
        fetchPicture(other, `/files/photos/${randomUUID()}`),
        fetchPicture(other, '/files/photos/not-an-id'),
      ]);
      const bodies = await Promise.all(answers.map((answer) => answer.text()));
      expect(answers.map(({ status }) => status)).toEqual([404, 404, 404, 404]);
      expect(new Set(bodies).size).toBe(1);
      expect((await fetchPicture(service.anonymous(), photo.path)).status).toBe(401);
    });

    it('takes no photo to a phase of another company', async () => {
      const other = await RunningJob.make(service);
      const answer = await send(other.foreman, await phonePicture());
      expect([answer.status, answer.body.code]).toEqual([404, 'NotFound']);
      expect(await photosOf()).toEqual([]);
    });
  });

  describe('released to the owner of the house', () => {
    const SELECTION = '... on PhotoChanged { photo { id releasedAt revision } }';

    it('is so until it is taken back, each told in the journal', async () => {
      const { id } = await sendOne({ caption: 'Trench' });
      const released = await job.office.change('releasePhoto', { photoId: id, revision: 1 }, SELECTION);
      expect(released).toEqual({
        __typename: 'PhotoChanged',
        photo: { id, releasedAt: '2031-01-06T14:00:00.000Z', revision: 2 },
      });
      const back = await job.office.change('takeBackPhoto', { photoId: id, revision: 2 }, SELECTION);
      expect(back).toEqual({ __typename: 'PhotoChanged', photo: { id, releasedAt: null, revision: 3 } });
      const lines = await service.database.journalEntry.findMany({
        where: { subjectId: id },
        orderBy: { id: 'asc' },
      });
      expect(lines.map(({ action, personId }) => [action, personId])).toEqual([
        ['photo added', job.people.foreman.id],
        ['photo released to the owner', job.people.office.id],
        ['photo taken back from the owner', job.people.office.id],
      ]);
    });

    it('has one effect for one key, and none where it is so already', async () => {
      const { id } = await sendOne();
      const clientKey = randomUUID();
      await job.office.change('releasePhoto', { photoId: id, clientKey });
      await job.office.change('releasePhoto', { photoId: id, clientKey });
      const again = await job.office.change('releasePhoto', { photoId: id }, SELECTION);
      expect(again).toMatchObject({ photo: { revision: 2 } });
    });

    it('is refused on an older revision', async () => {
      const { id } = await sendOne();
      await job.office.change('releasePhoto', { photoId: id });
      const stale = await job.office.change<{ code: string }>('takeBackPhoto', { photoId: id, revision: 1 });
      expect(stale.code).toBe('StaleRevision');
    });

    it('is for the office alone to decide', async () => {
      const { id } = await sendOne();
      await expect(job.foreman.change('releasePhoto', { photoId: id })).rejects.toThrow('not-allowed');
    });
  });
});

interface PhotoAnswer {
  readonly id: string;
  readonly caption: string | null;
  readonly takenAt: string;
  readonly addedAt: string;
  readonly releasedAt: string | null;
  readonly revision: number;
  readonly path: string;
  readonly smallPath: string;
  readonly width: number;
  readonly height: number;
}
