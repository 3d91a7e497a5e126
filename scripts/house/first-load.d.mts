/** A page and the most that it may load at first, compressed, in kB of 1000 bytes. */
export interface Budget {
  readonly page: string;
  readonly kB: number;
}

export const BUDGETS: readonly Budget[];

export function firstLoad(folder?: string): {
  readonly files: readonly { readonly name: string; readonly kB: number }[];
  readonly kB: number;
};

export function judgeFirstLoad(
  kB: number,
  budgets?: readonly Budget[],
): { readonly ok: boolean; readonly text: string };
