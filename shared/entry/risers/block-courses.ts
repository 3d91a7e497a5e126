import { inches, type Inches } from '../../units/length.js';
import { say } from '../rules/say.js';

/** A course of block with its joint, in. */
const COURSE = 8;
/** What joints and a levelling bed take up. Common practice, no source. */
const TAKEN_BY_JOINTS = 0.25;
/** The least that a block is cut to, or a solid cap laid. Common practice, no source. */
const LEAST_PIECE = 2;

/** How block reaches a height. */
export interface BlockCourses {
  readonly full: number;
  /** What is left over the full courses; less than 0 where the last course stands too high. */
  readonly rest: Inches;
  readonly say: string;
}

/** Full courses to a height above the footing, and what to cut or to add at the top. */
export function blockCourses(height: Inches): BlockCourses {
  if (height < 0)
    throw new RangeError(`block cannot end under its footing, got ${height} in; check the heights`);
  const below = Math.floor((height + TAKEN_BY_JOINTS) / COURSE);
  const rest = inches(height - below * COURSE);
  const courses = `${below} full ${below === 1 ? 'course' : 'courses'}`;
  if (Math.abs(rest) <= TAKEN_BY_JOINTS)
    return { full: below, rest, say: `${courses}, levelled in the joints` };
  if (COURSE - rest <= TAKEN_BY_JOINTS)
    return {
      full: below + 1,
      rest: inches(rest - COURSE),
      say: `${below + 1} full courses, levelled in the joints`,
    };
  if (rest < LEAST_PIECE)
    return { full: below, rest, say: `${courses}, then add ${say(rest, 'in')} of grout or bed on top` };
  return { full: below, rest, say: `${courses}, then a course cut or capped to ${say(rest, 'in')}` };
}
