import { FileTooLarge } from "../services/byte-stream.js";
import { refused, type Found, type Question } from "./endpoint.js";
import { refusal } from "./refusal.js";

const isStream = (body: unknown): body is AsyncIterable<Uint8Array> =>
  typeof body === "object" && body !== null && Symbol.asyncIterator in body;

async function* nothing(): AsyncGenerator<Uint8Array> {
  yield* [];
  await Promise.resolve();
}

interface UploadLimit {
  /** What is uploaded, at the beginning of a sentence: `Pictures`. */
  readonly what: string;
  /** Bytes. */
  readonly largest: number;
}

export const mebibytes = (bytes: number): string => `${bytes / 1024 / 1024} MiB`;

/** Reads the body of an upload as it comes; of a request without one, nothing. One that is too large is refused, before it is read where it says its length. */
export async function readUpload<T>(
  { body, bodyLength }: Pick<Question, "body" | "bodyLength">,
  { what, largest }: UploadLimit,
  read: (bytes: AsyncIterable<Uint8Array>) => Promise<Found<T>>,
): Promise<Found<T>> {
  // The rest of the body is not read: the connection cannot be used again.
  const headers = { connection: "close" };
  const tooLarge = refused(refusal("too-large", `${what} are taken up to ${mebibytes(largest)}.`, { headers }));
  if (bodyLength !== null && bodyLength > largest) return tooLarge;
  try {
    return await read(isStream(body) ? body : nothing());
  } catch (error) {
    if (error instanceof FileTooLarge) return tooLarge;
    throw error;
  }
}
