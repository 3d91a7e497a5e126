import type { LinkPurpose } from '../generated/prisma/client.js';
import { PURPOSES } from './purposes.js';

/** Path under which the links that are sent lie; the token follows. */
export const LINKS_PATH = '/links';

/** Path of the link of a token. */
export const linkPath = (token: string): string => `${LINKS_PATH}/${token}`;

/** Path of the page that a link opens, without its token. */
export const pagePath = ({ id, purpose }: { readonly id: string; readonly purpose: LinkPurpose }): string =>
  `${PURPOSES[purpose].path}/${id}`;

/** The id of the link in the path of a page that links open; null for any other path, and for what a page shows. */
export function linkIdIn(path: string): string | null {
  const own = Object.values(PURPOSES).find((purpose) => path.startsWith(`${purpose.path}/`));
  const rest = own ? path.slice(own.path.length + 1) : null;
  return rest === null || rest.includes('/') ? null : rest;
}
