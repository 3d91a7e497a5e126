/** Redirects that are followed for one request. */
const MOST = 3;

/** An answer sent us elsewhere, and we do not go there. */
export class WrongWay extends Error {}

/**
 * Asks, and follows redirects on the same server only: an answer must not choose another server for us.
 *
 * @throws WrongWay when it is sent elsewhere, or around too often.
 */
export async function follow(request: Request): Promise<Response> {
  let asked = request;
  for (let turns = 0; ; turns += 1) {
    const response = await fetch(asked);
    const location = response.headers.get('location');
    if (response.status < 301 || response.status > 308 || response.status === 304 || location === null)
      return response;
    await response.body?.cancel();
    const to = URL.canParse(location, asked.url) ? new URL(location, asked.url) : null;
    if (to?.origin !== new URL(request.url).origin) throw new WrongWay('it sends us to another server');
    if (turns === MOST) throw new WrongWay(`it sends us on more than ${MOST} times`);
    asked = new Request(to, asked);
  }
}
