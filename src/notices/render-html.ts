import { escapeHtml } from '../platform/web/escape-html.js';
import { type Message, shownIn } from './message.js';

const list = (items: readonly string[]): string =>
  `<ul>${items.map((item) => `<li>${escapeHtml(item)}</li>`).join('')}</ul>`;

/** A message as an HTML document, in the recipient's zone. Says the same as the plain text. */
export function renderHtml(message: Message, zone: string, origin: string): string {
  const rows = message.facts
    .map(
      ({ label, value }) =>
        `<tr><th scope="row" align="left">${escapeHtml(label)}</th><td>${escapeHtml(shownIn(zone, value))}</td></tr>`,
    )
    .join('');
  const href = new URL(message.link.path, origin).href;
  const body = [
    `<h1>${escapeHtml(message.subject)}</h1>`,
    `<p>${escapeHtml(message.opening)}</p>`,
    rows && `<table cellpadding="4">${rows}</table>`,
    ...message.lists.map(({ title, items }) => `<h2>${escapeHtml(title)}</h2>${list(items)}`),
    message.cautions.length > 0 && `<h2>Caution</h2>${list(message.cautions)}`,
    `<p><a href="${escapeHtml(href)}">${escapeHtml(message.link.words)}</a></p>`,
  ];
  return [
    '<!doctype html><html lang="en"><head><meta charset="utf-8">',
    `<title>${escapeHtml(message.subject)}</title></head><body>`,
    ...body.filter((part) => part !== '' && part !== false),
    '</body></html>',
  ].join('\n');
}
