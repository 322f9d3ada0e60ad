const isStream = (body: unknown): body is AsyncIterable<Uint8Array> =>
  typeof body === "object" && body !== null && Symbol.asyncIterator in body;

async function* nothing(): AsyncGenerator<Uint8Array> {
  yield* [];
  await Promise.resolve();
}

/** The body of an upload, as it comes; of a request without one, nothing. */
export const bytesOf = (body: unknown): AsyncIterable<Uint8Array> => (isStream(body) ? body : nothing());
