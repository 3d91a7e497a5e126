const NAME = 'flagway.clock';

/** How far the service's clock is ahead of this device's, in milliseconds, as last heard. */
function offset(): number {
  return Number(localStorage.getItem(NAME) ?? 0);
}

/** Takes the service's clock from an answer, and the moment of this device's clock when that came. */
export function hearServiceClock(now: string, heardAt: number): void {
  localStorage.setItem(NAME, String(Date.parse(now) - heardAt));
}

/** The moment by the service's clock, which goes on without a signal; in milliseconds since 1970. */
export function serviceNow(): number {
  return Date.now() + offset();
}

/** The moment of something that is pressed now, as the API takes it. */
export function pressedAt(): string {
  return new Date(serviceNow()).toISOString();
}
