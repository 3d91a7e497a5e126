import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { simpleParser, type ParsedMail } from 'mailparser';
import { SMTPServer } from 'smtp-server';

/*
 * A real SMTP server that keeps what it is given.
 *
 *   const mail = await startMailServer();
 *   ... FLAGWAY_SMTP_URL: mail.url ...
 *   const message = await mail.waitFor((each) => each.to === 'electrician@example.test');
 *   mail.refuseNext(2);                  // answers the next two messages with 451
 *   mail.messages();                     // all that were accepted, oldest first
 *   await mail.stop();
 */

/** A message that was accepted. */
export interface CaughtMail {
  /** Addresses of the envelope, joined by commas. */
  readonly to: string;
  readonly from: string;
  readonly subject: string;
  readonly text: string;
  readonly html: string;
  /** Header by its name in lower case. */
  header(name: string): string | undefined;
  readonly parsed: ParsedMail;
}

/** A running mail server. */
export interface TestMailServer {
  readonly port: number;
  readonly url: string;
  messages(): readonly CaughtMail[];
  /** Gives the first message that fits, now or later. @throws Error after the time with what came instead. */
  waitFor(fits: (mail: CaughtMail) => boolean, milliseconds?: number): Promise<CaughtMail>;
  /** Answers the next messages with a temporary failure (451). */
  refuseNext(count: number): void;
  clear(): void;
  stop(): Promise<void>;
}

const caught = (parsed: ParsedMail, from: string, to: readonly string[]): CaughtMail => ({
  to: to.join(','),
  from,
  subject: parsed.subject ?? '',
  text: parsed.text ?? '',
  html: parsed.html || '',
  header: (name) => {
    const line = parsed.headerLines.find(({ key }) => key === name.toLowerCase())?.line;
    return line?.slice(line.indexOf(':') + 1).trim();
  },
  parsed,
});

/** Starts a mail server on a free port. */
export async function startMailServer(port = 0): Promise<TestMailServer> {
  const accepted: CaughtMail[] = [];
  const waiting = new Set<() => void>();
  let refusals = 0;
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ['STARTTLS'],
    onData: (stream, session, done) => {
      simpleParser(stream)
        .then((parsed) => {
          if (refusals > 0) {
            refusals -= 1;
            done(Object.assign(new Error('Try again later'), { responseCode: 451 }));
            return;
          }
          const from = session.envelope.mailFrom;
          const to = session.envelope.rcptTo.map(({ address }) => address);
          accepted.push(caught(parsed, from ? from.address : '', to));
          done();
          for (const look of [...waiting]) look();
        })
        .catch((error: unknown) => done(error instanceof Error ? error : new Error(String(error))));
    },
  });
  // A client that is killed in the middle of a message is part of some tests.
  server.on('error', () => undefined);
  server.listen(port, '127.0.0.1');
  await once(server.server, 'listening');
  const listening = (server.server.address() as AddressInfo).port;
  return {
    port: listening,
    url: `smtp://127.0.0.1:${listening}`,
    messages: () => [...accepted],
    waitFor: (fits, milliseconds = 15_000) =>
      new Promise((resolve, reject) => {
        const look = (): void => {
          const found = accepted.find(fits);
          if (!found) return;
          waiting.delete(look);
          clearTimeout(timer);
          resolve(found);
        };
        const timer = setTimeout(() => {
          waiting.delete(look);
          const came = accepted.map(({ to, subject }) => `${to}: ${subject}`).join('; ') || 'none';
          reject(new Error(`No such mail within ${milliseconds} ms. Came: ${came}`));
        }, milliseconds);
        waiting.add(look);
        look();
      }),
    refuseNext: (count) => {
      refusals = count;
    },
    clear: () => {
      accepted.length = 0;
    },
    stop: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
