/** What other features may use of sites and authorities. */
export { Authority } from './authority.model.js';
export { feedFromNothing } from './feed-from-nothing.js';
export { Site } from './site.model.js';
export { SiteReader } from './site-reader.js';
export { latitude, longitude } from './place-schema.js';
