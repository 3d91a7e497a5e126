import { type Message, shownIn } from './message.js';

/** A message as plain text, in the recipient's zone. */
export function renderText(message: Message, zone: string, origin: string): string {
  const blocks = [
    message.opening,
    message.facts.map(({ label, value }) => `${label}: ${shownIn(zone, value)}`).join('\n'),
    ...message.lists.map(({ title, items }) =>
      [`${title}:`, ...items.map((item) => `  - ${item}`)].join('\n'),
    ),
    message.cautions.length > 0
      ? ['Caution:', ...message.cautions.map((caution) => `  ! ${caution}`)].join('\n')
      : '',
    `${message.link.words}: ${new URL(message.link.path, origin).href}`,
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}
