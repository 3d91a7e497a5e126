/** A file is younger than so many milliseconds when it was just taken. */
const JUST_NOW = 10 * 60_000;

/**
 * When a chosen picture was taken, by the service's clock: when its file was written, and never later than now. What has no
 * such time counts as taken now.
 *
 * @param lastModified of the file, by this device's clock, in milliseconds since 1970.
 * @param deviceNow the moment by this device's clock.
 * @param serviceNow the same moment by the service's clock.
 */
export function takenAt(lastModified: number, deviceNow: number, serviceNow: number): string {
  const age = deviceNow - lastModified;
  const known = lastModified > 0 && age > JUST_NOW;
  return new Date(known ? serviceNow - age : serviceNow).toISOString();
}
