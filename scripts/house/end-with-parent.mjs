/*
 * Loaded first into a program that another process runs: it ends when that process is gone, so that nothing half done
 * goes on by itself.
 */

if (process.channel) {
  process.once('disconnect', () => process.exit(1));
  process.channel.unref();
}
