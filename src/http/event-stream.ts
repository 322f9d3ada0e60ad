/** One event of a stream (HTML standard, 9.2.6). */
interface StreamedEvent {
  readonly event: string;
  /** What a client sends as `Last-Event-ID` to go on after it; left out: it cannot go on there. */
  readonly id?: string;
  /** On one line. */
  readonly data: string;
}

export const eventText = ({ event, id, data }: StreamedEvent): string =>
  `${id === undefined ? "" : `id: ${id}\n`}event: ${event}\ndata: ${data}\n\n`;

export const eventStreamType = "text/event-stream; charset=utf-8";

/**
 * Why the service ends a stream. STOPPING: this instance stops. TIME: it has lasted as long as one may. BUDGET: no points are left.
 * UNAVAILABLE: the database cannot be reached. FAULT: something went wrong here.
 */
export type StreamEnd = "STOPPING" | "TIME" | "BUDGET" | "UNAVAILABLE" | "FAULT";

/** A stream of events to one reader. */
export interface EventStream {
  /** Tells that it ended, or that nobody reads it any longer. */
  readonly over: AbortSignal;
  /** Resolves when the reader has room for more, or it is over. What is sent after that goes nowhere. */
  send(text: string | Buffer): Promise<void>;
  /** Charges whoever reads it. false: there are too few points, and it was ended. */
  charge(points: number): boolean;
  /** Ends it early: the reader is told why, and when to come back. */
  end(why: StreamEnd): void;
  /** Ends it: there is nothing more to say. */
  finish(text: string): void;
}

/** What is written of the end of a stream. `retryMs`: milliseconds after which the reader should come back. */
export type WriteStreamEnd = (why: StreamEnd, retryMs: number) => string;

/** There are as many streams as one caller, or this process, may have. */
export class TooManyStreams extends Error {
  override readonly name = "TooManyStreams";
  readonly statusCode: 429 | 503;
  /** Seconds. */
  readonly headers = { "retry-after": "30" } as const;

  constructor(
    readonly ofCaller: boolean,
    most: number,
  ) {
    super(
      ofCaller
        ? `You have ${most} streams open, which is the most. Close one, or follow all plans with a single stream.`
        : "This instance has as many streams open as it can hold. Nothing was done; try again in a moment.",
    );
    this.statusCode = ofCaller ? 429 : 503;
  }
}
