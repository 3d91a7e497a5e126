import { randomUUID } from 'node:crypto';

/** What GraphQL answered. */
export interface Answer<T = Record<string, unknown>> {
  readonly data: T | null;
  readonly errors?: readonly {
    message: string;
    path?: (string | number)[];
    extensions?: { code?: string };
  }[];
}

/** The outcome of a mutation: the success type or a refusal, by `__typename`. */
export type Outcome = {
  readonly __typename: string;
  readonly code?: string;
  readonly message?: string;
} & Record<string, never>;

/** Speaks GraphQL over HTTP with a running service, as a browser would: with the session's cookie. */
export class ApiClient {
  private signInAgain: (() => Promise<ApiClient>) | undefined;

  constructor(
    readonly url: string,
    public cookie?: string,
  ) {}

  /** Signs in through the API. @throws Error with the service's answer when it refuses. */
  static async signedIn(url: string, email: string, password: string): Promise<ApiClient> {
    const response = await post(
      url,
      undefined,
      'mutation($input: SignInInput!) { signIn(input: $input) { person { id } } }',
      {
        input: { email, password },
      },
    );
    const cookie = response.headers.get('set-cookie')?.split(';')[0];
    if (!cookie) throw new Error(`Signing in as ${email} failed: ${await response.text()}`);
    const client = new ApiClient(url, cookie);
    client.signInAgain = () => ApiClient.signedIn(url, email, password);
    return client;
  }

  /** Sends a document and gives the whole answer. */
  async ask<T = Record<string, unknown>>(
    query: string,
    variables: Record<string, unknown> = {},
  ): Promise<Answer<T>> {
    const response = await post(this.url, this.cookie, query, variables);
    return (await response.json()) as Answer<T>;
  }

  /**
   * Sends a document and gives its data. A session that has run out is opened once more.
   *
   * @throws Error when there are errors.
   */
  async data<T = Record<string, never>>(query: string, variables: Record<string, unknown> = {}): Promise<T> {
    let answer = await this.ask<T>(query, variables);
    if (answer.errors?.[0]?.extensions?.code === 'not-signed-in' && this.signInAgain) {
      this.cookie = (await this.signInAgain()).cookie ?? '';
      answer = await this.ask<T>(query, variables);
    }
    if (answer.errors || !answer.data) throw new Error(`${query}\n${JSON.stringify(answer.errors, null, 2)}`);
    return answer.data;
  }

  /**
   * Runs one mutation named `name` with its input; a client key is added when there is none.
   *
   * @param selection inline fragments to read from the outcome, e.g. `... on PhaseChanged { phase { id state } }`.
   */
  async change<T = Outcome>(name: string, input: Record<string, unknown>, selection = ''): Promise<T> {
    const type = `${name[0]?.toUpperCase()}${name.slice(1)}Input`;
    const data = await this.data<{ outcome: T }>(
      `mutation($input: ${type}!) { outcome: ${name}(input: $input) { __typename ... on Refusal { code message } ${selection} } }`,
      { input: { clientKey: randomUUID(), ...input } },
    );
    return data.outcome;
  }
}

function post(url: string, cookie: string | undefined, query: string, variables: object): Promise<Response> {
  return fetch(`${url}/graphql`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...(cookie ? { cookie } : {}) },
    body: JSON.stringify({ query, variables }),
  });
}
