export { type Answer, ApiClient, type Outcome } from '../../prisma/demo/api-client.js';
