import { writeFileSync } from 'node:fs';

/**
 * Writes how many tests passed and failed, and nothing else, to the file that TEST_COUNTS names: a full report cannot
 * be written when a failure holds something circular.
 */
export default class CountReporter {
  onRunComplete(_contexts, { numPassedTests, numFailedTests, numRuntimeErrorTestSuites }) {
    writeFileSync(
      process.env.TEST_COUNTS,
      JSON.stringify({ passed: numPassedTests, failed: numFailedTests + numRuntimeErrorTestSuites }),
    );
  }
}
