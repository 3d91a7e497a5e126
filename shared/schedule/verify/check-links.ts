import type { Link } from '../model.js';
import type { Book } from './book.js';
import type { OpenSlots } from './open-slots.js';
import { violation, type Violation } from './violation.js';

/** Every link holds, counted in the time its lag is given in. */
export function checkLinks(book: Book): Violation[] {
  return book.input.links.flatMap((link) => checkLink(book, link));
}

function checkLink(book: Book, link: Link): Violation[] {
  const from = book.planned.get(link.from);
  const to = book.planned.get(link.to);
  const successor = book.phases.get(link.to)!;
  if (!from || !to || to.state === 'done' || to.start === null || to.finish === null) return [];
  const onFinish = link.kind === 'FF' || link.kind === 'SF';
  if (to.state === 'started' && !onFinish) return [];
  if (from.start === null || from.finish === null) {
    return to.state === 'started'
      ? []
      : [violation('link', link.id, `${to.id} is placed though ${from.id} is not`)];
  }
  if (book.says('pinBeforePredecessor', (c) => c.phaseId === to.id)) return [];
  if (to.state === 'started' && book.says('beyondHorizon', (c) => c.phaseId === to.id)) return [];
  if (
    book.says(
      'cycle',
      (c) => c.linkIds.includes(link.id) || (to.state === 'started' && c.phaseIds.includes(to.id)),
    )
  )
    return [];
  const early = link.kind === 'FS' || link.kind === 'FF' ? from.finish : from.start;
  const late = onFinish ? to.finish : to.start;
  const hours = book.hours(book.calendarIdOf(successor, to.crewId));
  const counted = link.lagIn === 'working' && link.lag !== 0 ? hours.count(early, late) : late - early;
  if (counted >= link.lag) return checkMost(book, link, early, late, hours);
  return [violation('link', link.id, `${to.id} keeps ${counted} of ${link.lag} slots to ${from.id}`)];
}

/** A greatest lag holds, unless the plan owns up to it. */
function checkMost(book: Book, link: Link, early: number, late: number, hours: OpenSlots): Violation[] {
  const { id, mostLag } = link;
  if (mostLag === undefined) return [];
  const counted = (link.mostLagIn ?? link.lagIn) === 'working' ? hours.count(early, late) : late - early;
  if (counted <= mostLag || book.says('lagExceeded', (c) => c.linkId === id && c.by === counted - mostLag))
    return [];
  return [violation('link', id, `${link.to} comes ${counted} slots after ${link.from}, at most ${mostLag}`)];
}
