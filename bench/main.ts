import { BENCHES } from './benches.js';
import { CommandError, readCommand, type Command } from './runner/read-command.js';

/*
 * npm run bench                              says what there is
 * npm run bench -- replan --jobs 200         runs one and prints it for people
 * npm run bench -- replan --jobs 200 --json  prints one line for machines
 */

function refuse(error: CommandError): never {
  process.stderr.write(`${error.message}\n`);
  process.exit(2);
}

function read(words: readonly string[]): Command {
  try {
    return readCommand(words, BENCHES);
  } catch (error) {
    if (error instanceof CommandError) refuse(error);
    throw error;
  }
}

const { bench, given, json } = read(process.argv.slice(2));
const found = await bench.run(given, (line) => process.stderr.write(`${line}\n`));
process.stdout.write(`${json ? JSON.stringify(found.figures) : found.text}\n`);
process.exitCode = found.ok ? 0 : 1;
