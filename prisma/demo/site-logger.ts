import { type Hands, must } from './hands.js';

const HOUR = 3_600_000;

/** A logger of the demo: registered at a site by the foreman, it posts over plain HTTP with the token it was given. */
export class SiteLogger {
  private constructor(
    private readonly address: string,
    private readonly token: string,
  ) {}

  static async register(hands: Hands, siteId: string, name: string): Promise<SiteLogger> {
    const { token, path } = (await must(
      hands.foreman,
      'registerLogger',
      { siteId, name },
      '... on LoggerRegistered { token path }',
    )) as unknown as { token: string; path: string };
    return new SiteLogger(new URL(path, hands.foreman.url).href, token);
  }

  /**
   * Posts a reading of every hour between two moments, as a placement under a tent and blankets gives them.
   *
   * @throws Error with the service's words when a reading is not taken.
   */
  async post(placementId: string, after: Date, until: Date): Promise<void> {
    const readings = [];
    for (let at = after.getTime() + HOUR; at <= until.getTime(); at += HOUR) {
      const hour = at / HOUR;
      readings.push({
        placementId,
        at: new Date(at).toISOString(),
        concreteF: Math.round((60 + 2.5 * Math.sin(hour / 7)) * 10) / 10,
        airF: Math.round((29 + 7 * Math.sin(((hour % 24) - 14) * (Math.PI / 12))) * 10) / 10,
      });
    }
    if (readings.length === 0) return;
    const answer = await fetch(this.address, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${this.token}` },
      body: JSON.stringify({ readings }),
    });
    if (!answer.ok) throw new Error(`The readings of a logger were refused: ${await answer.text()}`);
  }
}
