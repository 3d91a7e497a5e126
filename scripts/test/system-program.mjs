import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The programs that tests need from the system, and where they may be found beside the path. */
const PROGRAMS = {
  'redis-server': { package: 'redis-server', commands: ['redis-server'], given: undefined },
  chromium: {
    package: 'chromium',
    commands: ['chromium', 'chromium-browser', 'google-chrome'],
    given: process.env.CHROMIUM_PATH,
  },
};

function find({ commands, given }) {
  if (given) return existsSync(given) ? given : undefined;
  const folders = [...(process.env.PATH ?? '').split(delimiter), '/usr/bin', '/usr/local/bin'];
  return commands.flatMap((command) => folders.map((folder) => join(folder, command))).find(existsSync);
}

const apt = (...args) =>
  spawnSync('apt-get', args, { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } })
    .status === 0;

/**
 * Makes sure that a program is there: installed as Debian's package when we are root.
 *
 * @returns {string} its path
 * @throws Error saying exactly what to install otherwise
 */
export function demandProgram(name, say) {
  const program = PROGRAMS[name];
  const found = find(program);
  if (found) return found;
  const hint = `apt-get install ${program.package}`;
  if (process.getuid?.() === 0 && !program.given) {
    say(`Installing ${program.package} for the tests ...`);
    if (!apt('install', '-y', '--no-install-recommends', program.package)) {
      apt('update');
      apt('install', '-y', '--no-install-recommends', program.package);
    }
    const installed = find(program);
    if (installed) return installed;
  }
  throw new Error(
    `The tests need ${name}, which is not on this machine. Install it (Debian or Ubuntu, as root: ${hint}) and run them again.`,
  );
}
