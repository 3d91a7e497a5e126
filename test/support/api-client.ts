export { type Answer, ApiClient } from '../../prisma/demo/api-client.js';
