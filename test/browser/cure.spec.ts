import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Locator, Page } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { DESK, keepScreen, openPage, openPhase, PHONE } from './support/pages.js';
import { startedPour, type StartedPour } from './support/started-pour.js';

/*
 * A pour from its placing to its release as foreman and office see it. Each test goes on where the one before stopped.
 * Source of the rules that the engine checks: Web Content Accessibility Guidelines (WCAG) 2.2, levels A and AA, as
 * axe-core tests them.
 */

const PATIENCE = 300_000;
const HOUR = 3_600_000;

/** The phase that places grout, and the wait that its strength ends. */
const POUR = 'Block landing and steps, filled';
const WAIT = 'Block cure';

interface Course {
  readonly requiredPsi: number;
  readonly points: readonly {
    readonly at: string;
    readonly basis: string;
    readonly temperatureF: number;
    readonly psi: number;
  }[];
}

describe('a pour on the pages', () => {
  const stage = demoStage();
  let phone: Page;
  let desk: Page;

  let pour: StartedPour;

  beforeAll(async () => {
    pour = await startedPour(stage.service, 'block');
    phone = await stage.pageOf('foreman', PHONE);
    desk = await stage.pageOf('office', DESK, `/jobs/${pour.job}`);
  }, PATIENCE);

  const after = (hours: number) => new Date(Date.parse(pour.at) + hours * HOUR).toISOString();
  const card = (phase: string) => openPhase(phone, `${pour.job} ${phase}`);
  const opened = async (sheet: Locator): Promise<Locator> => {
    await sheet.evaluate((element: HTMLDetailsElement) => (element.open = true));
    return sheet;
  };
  const cureSheet = async () =>
    opened((await card(WAIT)).locator('details.hold-point', { hasText: '(cure,' }).first());
  const figure = (page: Page) =>
    page.locator('figure', { has: page.getByRole('group', { name: new RegExp(`Cure: ${POUR}, drawing`) }) });

  /** The course as the API tells it, and whether the strength is measured. */
  const course = async (): Promise<Course & { basis: string; id: string }> => {
    const office = await stage.service.client('office');
    const { jobByNumber } = await office.data<{
      jobByNumber: {
        placements: { id: string; phase: { name: string }; strength: { basis: string }; outlook: Course }[];
      };
    }>(
      `{ jobByNumber(number: ${pour.job}) { placements { id phase { name } strength { basis }
        outlook { requiredPsi points { at basis temperatureF psi } } } } }`,
    );
    const placed = jobByNumber.placements.find(({ phase }) => phase.name === POUR);
    if (!placed) throw new Error(`${POUR} has no placement`);
    return { ...placed.outlook, basis: placed.strength.basis, id: placed.id };
  };

  it(
    'is recorded on the phone with its section, its temperature and its protection',
    async () => {
      const form = await opened(
        (await card(POUR)).locator('details', { hasText: 'Record what was placed now' }),
      );
      await keepScreen(phone, 'phone-placement', true);
      expect(await findings(phone)).toEqual([]);
      await form.getByLabel('Least dimension').fill('8');
      await form.getByLabel('Temperature as placed').fill('57,5');
      await form.getByLabel('Heated enclosure').check();
      await form.getByRole('button', { name: 'Record the placement' }).tap();
      await phone.getByText(`Done: Placement: ${POUR}`).waitFor();
      expect((await course()).basis).toBe('predicted');
    },
    PATIENCE,
  );

  it(
    'shows a predicted course, dashed, with the strength it needs, and no measured line yet',
    async () => {
      await figure(desk).waitFor();
      const drawn = await linesOf(figure(desk));
      expect(drawn.predicted).toEqual({ lines: 2, dashed: true });
      expect(drawn.measured.lines).toBe(0);
      const { requiredPsi } = await course();
      expect(drawn.levels).toContain(`needed, ${requiredPsi} psi`);
      expect(drawn.levels).toContain('freezing, 32 °F');
      expect(await figure(desk).innerText()).toContain('predicted, releases nothing');
      await clean(desk, 'cure-predicted-desk');
    },
    PATIENCE,
  );

  it(
    'is not released on a prediction, and says so',
    async () => {
      const sheet = await cureSheet();
      expect(await sheet.innerText()).toContain('predicted, which releases nothing');
      await sheet.getByRole('button', { name: 'Release', exact: true }).tap();
      const refusal = phone.locator('.outcome-refused');
      await refusal.waitFor();
      const said = await refusal.innerText();
      expect(said).toMatch(/No temperatures were read; 1500 psi are needed/);
      await keepScreen(phone, 'phone-cure-refused-on-prediction');
      expect(await findings(phone)).toEqual([]);
      await refusal.getByRole('button', { name: 'Put away' }).tap();
      expect((await cureGate())?.state).toBe('open');
    },
    PATIENCE,
  );

  it(
    'takes readings that are typed in, and draws them as a solid line with a mark each',
    async () => {
      for (const [hours, concrete, air] of [
        [4, '61', '30'],
        [10, '58.5', ''],
      ] as const) {
        stage.service.setClock(after(hours));
        await openPage(phone, `${stage.service.url}/site`);
        const sheet = await cureSheet();
        await sheet.getByLabel('Temperature in the concrete or mortar').fill(concrete);
        await sheet.getByLabel('Air beside it').fill(air);
        await sheet.getByRole('button', { name: 'Record the temperature' }).tap();
        await phone.getByText('Done: Temperature in').waitFor();
      }
      await openPage(desk, `${stage.service.url}/jobs/${pour.job}`);
      await figure(desk).waitFor();
      const drawn = await linesOf(figure(desk));
      expect(drawn.measured).toEqual({ lines: 2, dashed: false });
      expect(drawn.predicted).toEqual({ lines: 2, dashed: true });
      // The placing and two readings, each once on either field.
      expect(drawn.marks).toBe(6);
      for (const warm of [57.5, 61, 58.5])
        expect(drawn.markedTemperatures.some((drawnF) => Math.abs(drawnF - warm) < 0.5)).toBe(true);
      await clean(desk, 'cure-measured-desk');
    },
    PATIENCE,
  );

  it(
    'says the same in its table as in the drawing, measured before predicted',
    async () => {
      const shown = figure(desk);
      await opened(shown.locator('details.cure-table'));
      const rows = await shown.locator('tbody tr').allInnerTexts();
      const { points } = await course();
      expect(rows[0]).toContain(`${points[0]?.temperatureF} °F`);
      expect(rows.at(-1)).toContain(`${Math.floor(points.at(-1)?.psi ?? Number.NaN)} psi`);
      const bases = rows.map((row) => /measured|predicted/.exec(row)?.[0]);
      expect(bases).toEqual([...bases].sort());
      expect(new Set(bases)).toEqual(new Set(['measured', 'predicted']));
      await clean(desk, 'cure-table-desk');
    },
    PATIENCE,
  );

  it(
    'is not released while the measured strength is short, though more is predicted',
    async () => {
      const { points, requiredPsi } = await course();
      expect(Math.max(...points.map(({ psi }) => psi))).toBeGreaterThan(requiredPsi);
      const sheet = await cureSheet();
      await sheet.getByRole('button', { name: 'Release', exact: true }).tap();
      await phone
        .locator('.outcome-refused')
        .getByText(/The measured temperatures give \d+ psi/)
        .waitFor();
      await phone.getByRole('button', { name: 'Put away' }).first().tap();
    },
    PATIENCE,
  );

  it(
    'keeps its protection on while the rules want it',
    async () => {
      await desk.getByRole('button', { name: 'Record that the protection is off' }).last().click();
      const refusal = desk.locator('.outcome-refused');
      await refusal.waitFor();
      expect(await refusal.innerText()).toMatch(/Wait until it may come off.*limit: .* \(ACI 306/s);
      await refusal.getByRole('button', { name: 'Put away' }).click();
    },
    PATIENCE,
  );

  it(
    'has its protection changed on the phone from what stands on it, and its course follows',
    async () => {
      const before = await course();
      const sheet = await cureSheet();
      const form = await opened(sheet.locator('details.change-protection'));
      expect(await form.getByLabel('Layers of insulated blanket').inputValue()).toBe('1');
      expect(await form.getByLabel('Heated enclosure').isChecked()).toBe(true);
      await keepScreen(phone, 'phone-change-protection', true);
      expect(await findings(phone)).toEqual([]);
      await form.getByLabel('Layers of insulated blanket').fill('3');
      await form.getByRole('button', { name: 'Change the protection' }).tap();
      await phone.getByText('Done: Protection changed').waitFor();
      await phone
        .getByText(/3 layers of blanket .* for 12 h/)
        .first()
        .waitFor();
      // Readings stay what they are; more insulation never cools a section, so it is no weaker from there on.
      const after = await course();
      const measured = (one: Course) => one.points.filter(({ basis }) => basis === 'measured');
      expect(measured(after)).toEqual(measured(before));
      expect(reaches(after)).toBeLessThanOrEqual(reaches(before));
    },
    PATIENCE,
  );

  it(
    'takes no protection that keeps nothing on',
    async () => {
      const form = await opened((await cureSheet()).locator('details.change-protection'));
      await form.getByLabel('Layers of insulated blanket').fill('0');
      await form.getByLabel('Heated enclosure').uncheck();
      await form.getByRole('button', { name: 'Change the protection' }).tap();
      const refusal = phone.locator('.outcome-refused').first();
      await refusal.waitFor();
      expect(await refusal.innerText()).toMatch(/keeps nothing on/);
      await refusal.getByRole('button', { name: 'Put away' }).tap();
    },
    PATIENCE,
  );

  it(
    'shows no strength without its method or limit, how far that is to be trusted, and a caution',
    async () => {
      await openPage(desk, `${stage.service.url}/jobs/${pour.job}`);
      await figure(desk).waitFor();
      await opened((await cureSheet()).first());
      for (const page of [desk, phone]) {
        const told = await strengthsOf(page);
        expect(told.length).toBeGreaterThan(1);
        for (const text of told) {
          expect(text).toMatch(/published|from memory|common practice|rule of the trade/);
          expect(text).toMatch(/caution|estimate/i);
        }
      }
    },
    PATIENCE,
  );

  it(
    'is released once readings show the strength',
    async () => {
      const foreman = await stage.service.client('foreman');
      const { id } = await course();
      for (let hours = 16; hours <= 76; hours += 6) {
        stage.service.setClock(after(hours));
        const taken = await foreman.change('recordTemperature', { placementId: id, concreteF: 60 });
        expect(taken).toEqual({ __typename: 'PlacementChanged' });
      }
      expect((await course()).basis).toBe('measured');
      const released = await foreman.change('releaseHoldPoint', {
        holdPointId: (await cureGate())?.id,
        values: [],
      });
      expect(released).toEqual({ __typename: 'HoldPointChanged' });
      await openPage(desk, `${stage.service.url}/jobs/${pour.job}`);
      const row = desk.getByRole('row', { name: /Strength to drill and load/ });
      expect(await row.innerText()).toMatch(/released.*Tobias Hale/s);
      // The release keeps what it rests on: strength, method, source and caution.
      expect(await row.innerText()).toMatch(/\d+ psi by .*Nurse–Saul.*ASTM C1074.*from memory.*Caution: /s);
    },
    PATIENCE,
  );

  /** The hold point that the strength of the pour releases. */
  const cureGate = async () => {
    const office = await stage.service.client('office');
    const { jobByNumber } = await office.data<{
      jobByNumber: { holdPoints: { id: string; kind: string; state: string; phase: { name: string } }[] };
    }>(`{ jobByNumber(number: ${pour.job}) { holdPoints { id kind state phase { name } } } }`);
    return jobByNumber.holdPoints.find(({ kind, phase }) => kind === 'cure' && phase.name === WAIT);
  };
});

/** The whole of each part of a page that tells a strength: a drawing, an alarm, a row of a table, a paragraph. */
function strengthsOf(page: Page): Promise<string[]> {
  return page.locator('main').evaluate((main) => {
    const parts = [...main.querySelectorAll('p, li, td, figcaption')]
      .filter((element) => /\d psi\b/.test(element.textContent ?? ''))
      // What a mixture must have by its exposure is ordered, not found on the site.
      .filter((element) => !(element.textContent ?? '').includes('In the weather at least'))
      .map((element) => element.closest('figure') ?? element.closest('.cure-alarms li, tr') ?? element);
    return [...new Set(parts)].map((part) => part.textContent ?? '');
  });
}

/** When the strength is there, by the course. */
function reaches({ points, requiredPsi }: Course): number {
  const at = points.find(({ psi }) => psi >= requiredPsi)?.at;
  return at ? Date.parse(at) : Infinity;
}

/** The lines of a figure as a person sees them: how many there are, whether they are dashed, what levels are named. */
async function linesOf(figure: Locator) {
  return figure.evaluate((element) => {
    const svg = element.querySelector('.cure-scroll svg');
    const seen = (kind: string) => {
      const lines = [...(svg?.querySelectorAll(`path.${kind}`) ?? [])].filter((line) =>
        line.getAttribute('d'),
      );
      return {
        lines: lines.length,
        dashed: lines.some((line) => getComputedStyle(line).strokeDasharray !== 'none'),
      };
    };
    const marks = [...(svg?.querySelectorAll('circle.cure-mark') ?? [])];
    // The scale of the upper field is read back from its own figures.
    const [upper] = [...(svg?.querySelectorAll('g') ?? [])];
    const ticks = [...(upper?.querySelectorAll('.cure-axis text') ?? [])].map((text) => ({
      value: Number(text.textContent),
      y: Number(text.getAttribute('y')) - 4,
    }));
    const [low, high] = [ticks[0], ticks.at(-1)];
    const valueAt = (y: number) =>
      low && high ? low.value + ((y - low.y) / (high.y - low.y)) * (high.value - low.value) : Number.NaN;
    return {
      measured: seen('cure-measured'),
      predicted: seen('cure-predicted'),
      marks: marks.length,
      markedTemperatures: [...(upper?.querySelectorAll('circle.cure-mark') ?? [])].map((mark) =>
        valueAt(Number(mark.getAttribute('cy'))),
      ),
      levels: [...(svg?.querySelectorAll('.cure-level text') ?? [])].map((text) => text.textContent),
    };
  });
}

async function clean(page: Page, screen: string): Promise<void> {
  await keepScreen(page, screen);
  expect(await findings(page)).toEqual([]);
}

describe('a pour to come', () => {
  const stage = demoStage();
  const TO_COME = 'Footing pour';

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'is compared protected and waiting, as pictures and as a table, %s',
    async (name, screen) => {
      const page = await stage.pageOf('office', screen, '/jobs/106');
      await page.getByText(`Protect or wait: ${TO_COME}`).click();
      const table = page.getByRole('region', { name: `Both ways: ${TO_COME}` });
      await table.waitFor();
      for (const way of ['Protect', 'Wait with']) {
        const picture = page.getByRole('region', { name: `${way} ${TO_COME}` });
        expect((await linesOf(picture.locator('figure'))).predicted).toEqual({ lines: 2, dashed: true });
        expect(await picture.innerText()).toMatch(/Caution: /);
      }
      const answer = await bothWays(TO_COME);
      const row = async (head: string) =>
        table
          .locator('tr', { has: page.getByRole('rowheader', { name: head, exact: true }) })
          .locator('td')
          .allInnerTexts();
      const { protect, wait } = answer;
      expect(await row('Equipment-days')).toEqual([
        String(protect.equipmentDays),
        String(wait.equipmentDays),
      ]);
      expect(await row('Hours of heating')).toEqual([
        String(protect.heatingHours),
        String(wait.heatingHours),
      ]);
      expect(await row('Lowest in the concrete')).toEqual(
        [protect, wait].map(({ outlook }) => `${outlook.lowest.coldestF} °F`),
      );
      expect(protect.equipmentDays).toBeGreaterThan(wait.equipmentDays);
      await keepScreen(page, `protect-or-wait-${name}`, true);
      expect(await findings(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'is chosen by the office and stands chosen, and the foreman is not asked',
    async () => {
      const page = await stage.pageOf('office', DESK, '/jobs/106');
      await page.getByText(`Protect or wait: ${TO_COME}`).click();
      await page.getByRole('button', { name: `Protect ${TO_COME}` }).click();
      await page.getByText(`Done: Protect ${TO_COME}`).waitFor();
      await page.getByText(/Chosen: protect, .* by Ines Rowe/).waitFor();
      const other = await stage.pageOf('foreman', PHONE, '/jobs/106');
      await other.getByText(`Protect or wait: ${TO_COME}`).click();
      await other.getByText(/Chosen: protect/).waitFor();
      expect(await other.getByRole('button', { name: `Wait with ${TO_COME}` }).count()).toBe(0);
      await page.context().close();
      await other.context().close();
    },
    PATIENCE,
  );

  it(
    'of the demo is protected by choice where one is near, and a logger has read a cure',
    async () => {
      const office = await stage.service.client('office');
      const { jobs } = await office.data<{
        jobs: {
          edges: {
            node: {
              number: number;
              site: { loggers: object[] };
              phases: { name: string; protectionChoice: object | null }[];
            };
          }[];
        };
      }>(
        `{ jobs(first: 20) { edges { node { number site { loggers { id } }
          phases { name protectionChoice { chosenAt } } } } } }`,
      );
      const all = jobs.edges.map(({ node }) => node);
      const read = all.find(({ site }) => site.loggers.length > 0);
      const page = await stage.pageOf('office', DESK, `/jobs/${read?.number}`);
      const loggers = page.getByRole('region', { name: 'Temperature loggers' });
      expect(await loggers.innerText()).toMatch(/Probe under the tent\s+\w{3} \d+ Jan/);
      const cure = page
        .getByRole('region', { name: /^Cure: / })
        .filter({ has: page.getByRole('cell', { name: 'Probe under the tent' }) })
        .first();
      expect(await cure.getByRole('cell', { name: 'Probe under the tent' }).count()).toBeGreaterThan(10);
      const chosen = all.flatMap(({ number, phases }) =>
        phases.flatMap(({ name, protectionChoice }) => (protectionChoice ? [{ number, name }] : [])),
      );
      expect(chosen.length).toBeGreaterThan(0);
      await openPage(page, `${stage.service.url}/jobs/${chosen[0]?.number}`);
      await page.getByText(`Protect or wait: ${chosen[0]?.name}`).click();
      await page.getByText(/Chosen: protect, .* by Ines Rowe/).waitFor();
      await page.context().close();
    },
    PATIENCE,
  );

  interface Way {
    readonly equipmentDays: number;
    readonly heatingHours: number;
    readonly outlook: { readonly lowest: { readonly coldestF: number } };
  }

  /** Both ways as the API gives them. */
  const bothWays = async (phase: string): Promise<{ protect: Way; wait: Way }> => {
    const office = await stage.service.client('office');
    const { jobByNumber } = await office.data<{ jobByNumber: { phases: { id: string; name: string }[] } }>(
      '{ jobByNumber(number: 106) { phases { id name } } }',
    );
    const phaseId = jobByNumber.phases.find(({ name }) => name === phase)?.id;
    const WAY = 'equipmentDays heatingHours outlook { lowest { coldestF } }';
    const { protectOrWait } = await office.data<{ protectOrWait: { protect: Way; wait: Way } }>(
      `query($input: ProtectOrWaitInput!) { protectOrWait(input: $input) { protect { ${WAY} } wait { ${WAY} } } }`,
      { input: { phaseId } },
    );
    return protectOrWait;
  };
});
