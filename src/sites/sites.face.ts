/** What other features may use of sites and authorities. */
export { Authority } from './authority.model.js';
export { Site } from './site.model.js';
export { SiteReader } from './site-reader.js';
