/** Runs a command's work; a failure is told in its own words, without a trace, and ends with 1. */
export async function tell(work) {
  try {
    await work();
  } catch (error) {
    process.stderr.write(`\n${process.env.FLAGWAY_LOG === 'debug' ? error.stack : error.message}\n`);
    process.exit(1);
  }
}
