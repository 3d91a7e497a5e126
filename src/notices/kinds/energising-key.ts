/** One notice for each date of leave: a leave that was taken back and given anew is told again. */
export const allowedKey = (hookupId: string, allowedAt: Date): string =>
  `energising-allowed-${hookupId}-${allowedAt.getTime()}`;

/** The withdrawal of the leave of that date. */
export const withdrawnLeaveKey = (hookupId: string, allowedAt: Date): string =>
  `energising-withdrawn-${hookupId}-${allowedAt.getTime()}`;

/** The date of leave that a key carries at its end. */
export const leaveIn = (sourceKey: string): Date => new Date(Number(sourceKey.split('-').at(-1)));
