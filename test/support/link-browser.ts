import { randomUUID } from 'node:crypto';
import type { Answer } from './api-client.js';

/*
 * What a browser does with a signed link, without the browser: keeps cookies, follows nothing by itself.
 *
 *   const browser = new LinkBrowser(service.url);
 *   await browser.look(address);           // GET, as a scanner of mail does
 *   await browser.press(address);          // the button: POST; remembers the page it leads to
 *   await browser.ask('{ hookupSheet { head { jobName } } }');
 */

/** What came back for a page. */
export interface PageAnswer {
  readonly status: number;
  readonly location: string | null;
  readonly text: string;
  readonly headers: Headers;
}

export class LinkBrowser {
  private readonly cookies = new Map<string, string>();
  /** Path of the page that the last press led to. */
  page: string | null = null;

  constructor(
    readonly url: string,
    readonly name = 'Test browser 1.0',
  ) {}

  /** Follows the link as it stands, on this service whatever its origin. */
  look(address: string, method: 'GET' | 'HEAD' = 'GET'): Promise<PageAnswer> {
    return this.fetch(pathOf(address), { method });
  }

  /** Presses the button of the page of a link. */
  async press(address: string, headers: Record<string, string> = {}): Promise<PageAnswer> {
    const answer = await this.fetch('/links', {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded', ...headers },
      body: new URLSearchParams({ token: pathOf(address).slice('/links/'.length) }).toString(),
    });
    if (answer.status === 303) this.page = answer.location;
    return answer;
  }

  get linkId(): string {
    return this.page?.split('/').at(-1) ?? randomUUID();
  }

  get cookieHeader(): string {
    return [...this.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
  }

  /** Asks as the page of a link does: with its header and the cookies. */
  async ask<T = Record<string, unknown>>(
    query: string,
    variables: Record<string, unknown> = {},
    linkId = this.linkId,
  ): Promise<Answer<T>> {
    const response = await fetch(`${this.url}/graphql`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: this.cookieHeader, 'flagway-link': linkId },
      body: JSON.stringify({ query, variables }),
    });
    return (await response.json()) as Answer<T>;
  }

  /** Runs a mutation and gives its outcome. @throws Error when there are errors. */
  async change(
    name: string,
    input: Record<string, unknown>,
    selection = '',
  ): Promise<{ __typename: string; code?: string; message?: string } & Record<string, unknown>> {
    const type = `${name[0]?.toUpperCase()}${name.slice(1)}Input`;
    const answer = await this.ask<{ outcome: { __typename: string } }>(
      `mutation($input: ${type}!) { outcome: ${name}(input: $input) { __typename ... on Refusal { code message } ${selection} } }`,
      { input: { clientKey: randomUUID(), ...input } },
    );
    if (!answer.data) throw new Error(JSON.stringify(answer.errors));
    return answer.data.outcome;
  }

  async fetch(path: string, init: RequestInit): Promise<PageAnswer> {
    const response = await fetch(this.url + path, {
      ...init,
      redirect: 'manual',
      headers: { cookie: this.cookieHeader, 'user-agent': this.name, ...init.headers },
    });
    for (const line of response.headers.getSetCookie()) {
      const [pair = ''] = line.split(';');
      this.cookies.set(pair.slice(0, pair.indexOf('=')), pair.slice(pair.indexOf('=') + 1));
    }
    return {
      status: response.status,
      location: response.headers.get('location'),
      text: await response.text(),
      headers: response.headers,
    };
  }
}

const pathOf = (address: string): string => new URL(address, 'http://localhost').pathname;
