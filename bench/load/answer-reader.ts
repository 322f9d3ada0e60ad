/** How far the answer on one connection has come. */
export interface AnswerReader {
  /** Takes what arrived; the status once an answer is whole, else null. */
  take(chunk: Buffer): number | null;
}

const headEnd = Buffer.from("\r\n\r\n");
const lastChunk = Buffer.from("0\r\n\r\n");

/**
 * Reads answers of HTTP/1.1, one after another and none before it is asked for, looking at no more than their status and length:
 * the client shares its machine with the server it measures.
 */
export function answerReader(): AnswerReader {
  let status = 0;
  /** Bytes of the body still to come; -1: it comes in chunks; null: the head is not whole. */
  let left: number | null = null;
  let head: Buffer = Buffer.alloc(0);
  return {
    take: (chunk) => {
      let rest = chunk;
      if (left === null) {
        head = head.length === 0 ? chunk : Buffer.concat([head, chunk]);
        const end = head.indexOf(headEnd);
        if (end < 0) return null;
        const text = head.toString("latin1", 0, end);
        status = Number(text.slice(9, 12));
        const length = /\r\ncontent-length: *(\d+)/i.exec(text)?.[1];
        left = length === undefined ? -1 : Number(length);
        rest = head.subarray(end + headEnd.length);
        head = Buffer.alloc(0);
      }
      if (left >= 0) left -= rest.length;
      else if (rest.subarray(-lastChunk.length).equals(lastChunk)) left = 0;
      if (left !== 0) return null;
      left = null;
      return status;
    },
  };
}
