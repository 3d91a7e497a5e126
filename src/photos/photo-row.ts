import type { Photo as PhotoTableRow, Prisma } from '../generated/prisma/client.js';

/** What is read with a photo; never the picture itself. */
export const WITH_SIZE = {
  file: { select: { width: true, height: true } },
} as const satisfies Prisma.PhotoInclude;

/** A photo as the database has it, with the size of its picture. */
export type PhotoRow = PhotoTableRow & { readonly file: { readonly width: number; readonly height: number } };
