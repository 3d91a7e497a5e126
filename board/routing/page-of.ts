/** The pages of the client. */
export type Page =
  | { readonly page: 'board' }
  | { readonly page: 'site' }
  | { readonly page: 'sign-in' }
  | { readonly page: 'entering' }
  | { readonly page: 'job'; readonly number: number }
  | { readonly page: 'design'; readonly number: number }
  | { readonly page: 'hookup'; readonly id: string }
  | { readonly page: 'sheet' | 'week'; readonly linkId: string }
  | { readonly page: 'unknown' };

/** Where the office enters a job. */
export const ENTER_JOB = '/jobs/new';

/** Which page an address path means. */
export function pageOf(path: string): Page {
  if (path === '/') return { page: 'board' };
  if (path === '/site') return { page: 'site' };
  if (path === '/sign-in') return { page: 'sign-in' };
  if (path === ENTER_JOB) return { page: 'entering' };
  const job = /^\/jobs\/(\d{1,9})$/.exec(path)?.[1];
  if (job) return { page: 'job', number: Number(job) };
  const design = /^\/jobs\/(\d{1,9})\/design$/.exec(path)?.[1];
  if (design) return { page: 'design', number: Number(design) };
  const hookup = /^\/hookups\/([\w-]+)$/.exec(path)?.[1];
  if (hookup) return { page: 'hookup', id: hookup };
  const [, page, linkId] = /^\/(sheet|week)\/([\w-]+)$/.exec(path) ?? [];
  if (page && linkId) return { page: page as 'sheet' | 'week', linkId };
  return { page: 'unknown' };
}

/** Where a person lands after signing in: the page of their own day. */
export function homeOf(role: string): string {
  return role === 'foreman' || role === 'crew' ? '/site' : '/';
}
