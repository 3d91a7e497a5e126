import type { FastifyReply, FastifyRequest } from 'fastify';

const refusal = (message: string) => ({
  data: null,
  errors: [{ message, extensions: { code: 'bad-request' } }],
});

/**
 * Hook before the endpoint looks at a body: one document as JSON and nothing else. A form can be sent by any page of the
 * web without asking; a list of documents would slip past the bounds that hold for one.
 */
export async function onlyJson(request: FastifyRequest, reply: FastifyReply): Promise<void> {
  if (request.method !== 'POST' || request.routeOptions.url !== '/graphql') return;
  const type = request.headers['content-type'] ?? '';
  if (!/^application\/json\b/i.test(type)) {
    await reply.code(415).send(refusal('Send the document as application/json.'));
  } else if (Array.isArray(request.body)) {
    await reply.code(400).send(refusal('Send one document at a time.'));
  }
}
