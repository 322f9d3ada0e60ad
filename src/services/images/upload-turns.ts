/** Pictures that may come in at a time in one process: each is held in memory whole. */
const mostUploads = 6;

/** As many pictures as may are being handed in. */
export class TooManyUploads extends Error {
  override readonly name = "TooManyUploads";
  /** Seconds. */
  readonly retryAfter = 5;
}

/** Takes a place among those who hand something in; and among them, one at a time, what takes a core and a decoder's memory. */
interface UploadTurns {
  /** @throws TooManyUploads before anything is read */
  receiving<T>(work: () => Promise<T>): Promise<T>;
  decoding<T>(work: () => Promise<T>): Promise<T>;
}

function createUploadTurns(): UploadTurns {
  let count = 0;
  let before: Promise<unknown> = Promise.resolve();
  return {
    receiving: async (work) => {
      if (count >= mostUploads) throw new TooManyUploads(`${mostUploads} pictures are coming in`);
      count += 1;
      try {
        return await work();
      } finally {
        count -= 1;
      }
    },
    decoding: (work) => {
      // Whatever became of the one before, it is over.
      const turn = before.then(work, work);
      before = turn.catch(() => undefined);
      return turn;
    },
  };
}

/** Of this process: memory is one. */
export const uploadTurns = createUploadTurns();
