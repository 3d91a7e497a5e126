import type { LinkPurpose } from '../generated/prisma/client.js';

/** A value of a message: plain text, or an instant that is shown in the recipient's zone. */
export type Shown = string | { readonly at: string };

/** One labelled value of a message. */
export interface Fact {
  readonly label: string;
  readonly value: Shown;
}

/** A titled list inside a message. */
export interface MessageList {
  readonly title: string;
  readonly items: readonly string[];
}

/** What a notice says, before it is put into a recipient's zone and into text or HTML. Plain JSON: it is stored. */
export interface Message {
  readonly subject: string;
  readonly opening: string;
  readonly facts: readonly Fact[];
  readonly lists: readonly MessageList[];
  /** What can hurt someone; shown apart. */
  readonly cautions: readonly string[];
  /** Where to go on: words and the path on the service. */
  readonly link: {
    readonly words: string;
    readonly path: string;
    /** An electrician gets a signed link of this purpose in its place, and needs no account. */
    readonly signed?: LinkPurpose;
  };
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** A value as the recipient reads it. */
export function shownIn(zone: string, value: Shown): string {
  if (typeof value === 'string') return value;
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-US', {
      timeZone: zone,
      weekday: 'short',
      year: 'numeric',
      month: 'short',
      day: 'numeric',
      hour: 'numeric',
      minute: '2-digit',
      timeZoneName: 'short',
    });
    formats.set(zone, format);
  }
  // Intl puts a narrow no-break space before AM and PM, which old mail programs show as a box.
  return format.format(new Date(value.at)).replaceAll('\u202f', ' ');
}
