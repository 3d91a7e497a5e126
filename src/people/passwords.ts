import { hash, verify } from '@node-rs/argon2';

/** OWASP's parameters for argon2id (Password Storage Cheat Sheet): 19 MiB, two passes, one lane. */
const PARAMETERS = { algorithm: 2, memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

/** The stored form of a password. */
export function hashPassword(password: string): Promise<string> {
  return hash(password, PARAMETERS);
}

/** A hash no password has; compared against when the person is unknown, so both cases take as long. */
let nobody: Promise<string> | undefined;

/** Whether the password is the person's; takes the same time when there is no such person. */
export async function passwordMatches(stored: string | undefined, password: string): Promise<boolean> {
  nobody ??= hashPassword('no one has this password');
  const matches = await verify(stored ?? (await nobody), password);
  return stored !== undefined && matches;
}
