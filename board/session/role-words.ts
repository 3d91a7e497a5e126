import type { Role } from '../api/documents.js';

/** What each role is called on the screen. */
export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  office: 'office',
  foreman: 'foreman',
  crew: 'crew',
  electrician: 'electrician',
  viewer: 'reader',
};
