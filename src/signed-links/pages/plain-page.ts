import { createHash } from 'node:crypto';
import { escapeHtml } from '../../platform/web/escape-html.js';

const STYLE = `:root{color-scheme:light}body{margin:0;background:#f5f0e1;color:#1c2836;font:400 1.0625rem/1.45 'Bahnschrift','DIN Alternate','Liberation Sans Narrow','Arial Narrow','Roboto Condensed',system-ui,sans-serif}main{max-width:34rem;margin:0 auto;padding:2.5rem 1.25rem;display:grid;gap:1rem}h1{margin:0;font-size:1.6rem;line-height:1.15}p{margin:0}.who{padding-bottom:.5rem;border-bottom:3px solid #1c2836;color:#4a5361}button{width:100%;min-height:3.25rem;border:1.5px solid #1c2836;border-radius:0;background:#1c2836;color:#fbf8ef;font:inherit;font-weight:700;font-size:1.15rem;cursor:pointer}button:hover{background:#4a5361}a{color:inherit}:focus-visible{outline:3px solid #1c2836;outline-offset:3px}@media (forced-colors:active){button{forced-color-adjust:none;background:ButtonText;color:ButtonFace}}`;

/**
 * Headers of every plain page: nothing is kept, found by search engines, told to other sites, framed, or run; the one
 * style is known by its hash.
 */
export const PLAIN_HEADERS = {
  'content-type': 'text/html; charset=utf-8',
  'cache-control': 'no-store',
  'referrer-policy': 'no-referrer',
  'x-robots-tag': 'noindex, nofollow',
  'x-content-type-options': 'nosniff',
  'content-security-policy': `default-src 'none'; style-src 'sha256-${createHash('sha256').update(STYLE).digest('base64')}'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'`,
} as const;

/** A page that works without scripts: a heading, who speaks, paragraphs, and a button that sends one value. */
export function plainPage({
  title,
  who,
  paragraphs,
  button,
}: {
  readonly title: string;
  readonly who: string;
  readonly paragraphs: readonly string[];
  readonly button?: { readonly words: string; readonly action: string; readonly token: string };
}): string {
  const form = button
    ? `<form method="post" action="${escapeHtml(button.action)}"><input type="hidden" name="token" value="${escapeHtml(button.token)}"><button type="submit">${escapeHtml(button.words)}</button></form>`
    : '';
  return [
    '<!doctype html><html lang="en"><head><meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1"><meta name="robots" content="noindex">',
    `<title>${escapeHtml(title)}</title><style>${STYLE}</style></head><body><main>`,
    `<p class="who">${escapeHtml(who)}</p><h1>${escapeHtml(title)}</h1>`,
    ...paragraphs.map((text) => `<p>${escapeHtml(text)}</p>`),
    form,
    '</main></body></html>',
  ].join('\n');
}
