import { Injectable, type OnModuleInit } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { CodedError } from '../platform/graphql/coded-error.js';
import { Contacts } from './contacts.js';
import { type Knock, LinkDoor, type Shut } from './door/link-door.js';
import { linkIdIn, LINKS_PATH, pagePath } from './link-address.js';
import { setLinkCookie } from './link-cookie.js';
import { LinkSessions } from './link-sessions.js';
import type { LinkRow } from './link-standing.js';
import { PLAIN_HEADERS, plainPage } from './pages/plain-page.js';
import { NOT_OPEN_HERE, shutWords, type ShutWords } from './pages/shut-words.js';
import { PURPOSES } from './purposes.js';

const FORM_LIMIT = 4096;

/**
 * The way in for whoever was sent a link. GET /links/TOKEN shows a page with a button and changes nothing, so a scanner of
 * mail uses nothing up; the button posts the token to /links, which opens the link in this browser and leads to
 * /sheet/ID or /week/ID, whose address opens nothing anywhere else. A link that opens nothing is answered with 403, 404, 410 or 429
 * and a page that says what to do.
 */
@Injectable()
export class SignedLinksRoute implements OnModuleInit {
  constructor(
    private readonly adapterHost: HttpAdapterHost,
    private readonly door: LinkDoor,
    private readonly sessions: LinkSessions,
    private readonly contacts: Contacts,
  ) {}

  async onModuleInit(): Promise<void> {
    const server = this.adapterHost?.httpAdapter?.getInstance<FastifyInstance>();
    if (!server) return;
    server.addHook('onRequest', (request, reply) => this.guardPage(request, reply));
    await server.register((scope, _options, done) => {
      scope.removeAllContentTypeParsers();
      scope.addContentTypeParser(
        'application/x-www-form-urlencoded',
        { parseAs: 'string', bodyLimit: FORM_LIMIT },
        (_request, body, parsed) => parsed(null, new URLSearchParams(String(body))),
      );
      scope.get<{ Params: { token: string } }>(`${LINKS_PATH}/:token`, (request, reply) =>
        this.show(request.params.token, request, reply),
      );
      scope.post(LINKS_PATH, { bodyLimit: FORM_LIMIT }, (request, reply) => this.open(request, reply));
      done();
    });
  }

  private async show(token: string, request: FastifyRequest, reply: FastifyReply) {
    const look = await this.door.look(knockOf(token, request));
    if ('shut' in look) return this.shut(look, reply);
    if (look.open) return lead(reply, look.link);
    const { companyName } = await this.contacts.of(look.link);
    const { page } = PURPOSES[look.link.purpose];
    return reply.headers(PLAIN_HEADERS).send(
      plainPage({
        title: `Open the ${page}`,
        who: `${companyName}, for ${look.link.recipient}`,
        paragraphs: [
          'This link is meant for you alone; please do not pass it on.',
          'It opens in this browser and stays open here, without a password. A cookie keeps it so.',
        ],
        button: { words: `Open the ${page}`, action: LINKS_PATH, token },
      }),
    );
  }

  private async open(request: FastifyRequest, reply: FastifyReply) {
    // Only our own page has the button. Browsers say so; programs that are no browsers do not.
    const from = request.headers['sec-fetch-site'];
    if (from !== undefined && from !== 'same-origin' && from !== 'none')
      return send(reply, NOT_OPEN_HERE, 'Signed links');
    const token = request.body instanceof URLSearchParams ? (request.body.get('token') ?? '') : '';
    const opened = await this.door.open(knockOf(token, request), String(request.id));
    if ('shut' in opened) return this.shut(opened, reply);
    const { link } = opened;
    if (opened.token) setLinkCookie(reply, link.id, opened.token, link.expiresAt);
    return lead(reply, link);
  }

  private async shut({ shut, link }: Shut, reply: FastifyReply) {
    const contact = link ? await this.contacts.of(link) : null;
    if (shut === 'guessing') reply.header('retry-after', '60');
    return send(reply, shutWords(shut, contact), contact?.companyName ?? 'Signed links');
  }

  /** Lets the page of a link through only where the link is open; everybody else reads how to open it. */
  private async guardPage(request: FastifyRequest, reply: FastifyReply): Promise<unknown> {
    const { pathname } = new URL(request.url, 'http://localhost');
    const linkId = linkIdIn(pathname);
    if (linkId === null) return undefined;
    reply.header('referrer-policy', 'no-referrer').header('cache-control', 'no-store');
    reply.header('x-robots-tag', 'noindex, nofollow');
    const holder = await this.sessions.holderOf(linkId, request.headers.cookie);
    return holder instanceof CodedError ? send(reply, NOT_OPEN_HERE, 'Signed links') : undefined;
  }
}

const knockOf = (token: string, { headers, ip }: FastifyRequest): Knock => ({
  token,
  cookieHeader: headers.cookie,
  browser: headers['user-agent'] ?? '',
  address: ip,
});

const lead = (reply: FastifyReply, link: LinkRow) =>
  reply
    .header('referrer-policy', 'no-referrer')
    .header('cache-control', 'no-store')
    .redirect(pagePath(link), 303);

const send = (reply: FastifyReply, { status, title, paragraphs }: ShutWords, who: string) =>
  reply.status(status).headers(PLAIN_HEADERS).send(plainPage({ title, who, paragraphs }));
