import { jest } from '@jest/globals';

// Enough for a suite that starts servers on a busy machine; a test that hangs still ends.
jest.setTimeout(60_000);
