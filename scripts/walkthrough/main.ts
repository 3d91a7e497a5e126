import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { coldSummary } from './cold/cold-summary.js';
import { playCold } from './cold/play-cold.js';
import { showDesign } from './design/show-design.js';
import { play, type Story } from './play.js';
import { setStage } from './stage.js';

/*
 * npm run walkthrough [-- cold | entry] [-- FILE.json] [-- --json] [-- --out FOLDER]
 *
 * Takes a job from a file of site measurements to an energised walk, against a freshly started service with a real
 * database and a real mail server, and prints what happened and why. With "cold" the job meets a hard frost on the
 * morning of its first pour, and is followed until that is cured. With --json it prints the same for a machine.
 *
 * With "entry" nothing is started: the whole design of the measured entry is printed, and its drawings are written into the
 * folder of --out.
 */

const { values, positionals } = parseArgs({
  options: { json: { type: 'boolean', default: false }, out: { type: 'string' } },
  allowPositionals: true,
});
const [first] = positionals;
const cold = first === 'cold';
const named = cold || first === 'entry' ? positionals[1] : first;
const measurement: unknown = JSON.parse(
  readFileSync(named ?? new URL('./entry.json', import.meta.url), 'utf8'),
);

if (first === 'entry') {
  const { words, data } = showDesign(measurement, values.out);
  process.stdout.write(values.json ? `${JSON.stringify(data, null, 2)}\n` : words);
  process.exit();
}

/** A Monday morning of an invented winter, in the company's zone. */
const FROM = new Date('2031-01-06T08:00:00-05:00');

const stage = await setStage(FROM);
const say = ({ at, text }: { readonly at: Date; readonly text: string }): void => {
  if (!values.json) process.stdout.write(`${local(at)}  ${text}\n`);
};
const print = <S>(story: S, words: (story: S) => string): void => {
  process.stdout.write(values.json ? `${JSON.stringify(story, null, 2)}\n` : words(story));
};
try {
  if (cold) print(await playCold(stage, measurement, FROM, say), (story) => coldSummary(story, local));
  else print(await play(stage, measurement, FROM, say), summary);
} finally {
  await stage.stop();
}

function local(at: Date): string {
  return at.toLocaleString('en-CA', {
    timeZone: 'America/New_York',
    dateStyle: 'short',
    timeStyle: 'short',
    hour12: false,
  });
}

function summary(story: Story): string {
  const phases = story.phases.map(
    ({ phase, started, reasons }) => `  ${local(new Date(started))}  ${phase}: ${reasons.join(' ← ')}`,
  );
  return [
    '',
    'Why each phase started when it did, back to the day it was planned:',
    ...phases,
    '',
    `Refusals: ${story.refusals.length}, of ${story.refusalKinds} kinds.`,
    `Inspections: ${story.inspections.map(({ title, attempt, state }) => `${title} (${attempt}): ${state}`).join('; ')}.`,
    `Readings: ${story.readings.map(({ stage: at, area, accepted }) => `${at}${area ? ` ${area}` : ''} ${accepted ? 'accepted' : 'failed'}`).join(', ')}.`,
    `Weather: the finish moved from ${story.weatherHold?.finishBefore.slice(0, 10)} to ${story.weatherHold?.finishAfter.slice(0, 10)}.`,
    `Mails: ${story.mails.length}, of which hookup notices: ${story.hookupNotices}.`,
    `Energised: ${story.energisedAt}`,
    '',
  ].join('\n');
}
