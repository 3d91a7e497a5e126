import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import { createTransport, type Transporter } from 'nodemailer';
import type SMTPTransport from 'nodemailer/lib/smtp-transport/index.js';
import { CONFIG, type Config } from '../platform/config/config.js';

const ANSWER_MILLISECONDS = 20_000;

/** What a delivery shows while no server is set. */
export const NO_MAIL_SERVER = 'no mail server is set';

/** One e-mail to one person. */
export interface Mail {
  readonly messageId: string;
  readonly date: Date;
  /** Message that this one belongs under in a mail program. */
  readonly thread: string | null;
  readonly to: { readonly name: string; readonly address: string };
  readonly subject: string;
  readonly text: string;
  readonly html: string;
}

/** Sends e-mail through the SMTP server of FLAGWAY_SMTP_URL. */
@Injectable()
export class Mailer implements OnModuleDestroy {
  private readonly transport: Transporter<SMTPTransport.SentMessageInfo> | null;

  constructor(@Inject(CONFIG) private readonly config: Config) {
    this.transport = config.FLAGWAY_SMTP_URL
      ? createTransport({
          url: config.FLAGWAY_SMTP_URL,
          connectionTimeout: ANSWER_MILLISECONDS,
          greetingTimeout: ANSWER_MILLISECONDS,
          socketTimeout: ANSWER_MILLISECONDS,
        })
      : null;
  }

  /** Whether there is a server to send through. */
  get isSet(): boolean {
    return this.transport !== null;
  }

  /**
   * @returns what the server answered.
   * @throws Error when the server cannot be reached or refuses; `isFinalRefusal` tells whether trying again is of use.
   */
  async send(mail: Mail): Promise<string> {
    if (!this.transport) throw new Error(NO_MAIL_SERVER);
    const answer = await this.transport.sendMail({
      from: this.config.FLAGWAY_MAIL_FROM,
      to: mail.to,
      subject: mail.subject,
      text: mail.text,
      html: mail.html,
      messageId: mail.messageId,
      date: mail.date,
      ...(mail.thread ? { inReplyTo: mail.thread, references: [mail.thread] } : {}),
      headers: { 'Auto-Submitted': 'auto-generated' },
    });
    return answer.response;
  }

  onModuleDestroy(): void {
    this.transport?.close();
  }
}

/** Whether the server refused this recipient or message for good, so that another attempt would end alike. */
export function isFinalRefusal(error: unknown): boolean {
  const { code, responseCode } = error as { code?: unknown; responseCode?: unknown };
  return (
    (code === 'EENVELOPE' || code === 'EMESSAGE') && typeof responseCode === 'number' && responseCode >= 500
  );
}

/** Whether the message certainly did not get through: the server said so, or was never reached. */
export function wasRefused(error: unknown): boolean {
  const { responseCode, command } = error as { responseCode?: unknown; command?: unknown };
  return typeof responseCode === 'number' || command === 'CONN';
}
