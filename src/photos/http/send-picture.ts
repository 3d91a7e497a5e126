import type { FastifyReply, FastifyRequest } from 'fastify';
import type { PictureFiles, PictureOwner, PictureSize } from './picture-files.js';

/** A picture is shown as what it is and runs nothing, whoever links to it; whether it may be seen is asked each time. */
const HEADERS = {
  'cache-control': 'private, no-cache',
  'x-content-type-options': 'nosniff',
  'content-security-policy': "default-src 'none'; sandbox",
  'cross-origin-resource-policy': 'same-origin',
};

/** Answers a request for the picture of a photo: 200, 304 when the caller has it, 404 when there is none for the caller. */
export async function sendPicture(
  files: PictureFiles,
  owner: PictureOwner,
  { photoId, size }: { readonly photoId: string; readonly size: PictureSize },
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<unknown> {
  reply.headers(HEADERS);
  const hash = await files.hashOf(owner, photoId);
  if (hash === null) {
    const message = 'There is no such photo. It may have been removed; reload and try again.';
    return reply.status(404).send({ code: 'NotFound', message });
  }
  const tag = `"${size}-${hash}"`;
  reply.header('etag', tag);
  if (hasTag(request.headers['if-none-match'], tag)) return reply.status(304).send();
  const bytes = await files.bytesOf(owner.companyId, hash, size);
  return reply
    .header('content-type', 'image/jpeg')
    .header('content-disposition', `inline; filename="photo-${photoId}.jpg"`)
    .send(bytes);
}

/** Whether a list of validators names this one (RFC 9110, If-None-Match; weak ones compare alike). */
function hasTag(header: string | undefined, tag: string): boolean {
  const told = (header ?? '').split(',').map((one) => one.trim().replace(/^W\//, ''));
  return told.includes(tag) || told.includes('*');
}
