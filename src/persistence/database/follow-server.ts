import { randomUUID } from "node:crypto";
import { Socket } from "node:net";
import pg from "pg";
import { withTimeout } from "./with-timeout.js";
import type { PersistenceLog } from "./persistence-log.js";
import {
  createProbes,
  signalChannel,
  type Followed,
  type FollowSignals,
  type SignalFollower,
} from "./change-signals.js";

interface FollowOptions {
  /** Past any pooler: who listens needs a session of its own. */
  readonly url: string;
  /** Sends a statement the way that all others go, so that it is known to lead to the same database. */
  readonly query: (text: string, values: readonly unknown[]) => Promise<unknown>;
  readonly log: PersistenceLog | undefined;
}

/** Milliseconds between two looks whether the connection still lives: a network that fails may say nothing. */
const lookEvery = 5_000;
/** Milliseconds within which a server answers that is there. */
const patience = 3_000;
const shortestWait = 100;
const longestWait = 5_000;

const notify = "SELECT pg_notify($1, $2)";

/** Changes of a server, on a connection that does nothing else. While it is down, or leads elsewhere, the follower is told so. */
export const followServer =
  (options: FollowOptions): FollowSignals =>
  async (follower) => {
    let closed = false;
    let line: Line | null = null;
    let wait = shortestWait;
    let timer: NodeJS.Timeout | undefined;
    let warned = false;
    const connect = async (): Promise<void> => {
      try {
        const opened = await openLine(options, follower, lost);
        if (closed) return opened.close();
        line = opened;
        wait = shortestWait;
        follower.listening(true);
        if (warned) options.log?.info({}, "changes of the database are heard again");
        warned = false;
      } catch (error) {
        lost(error);
      }
    };
    const lost = (error: unknown): void => {
      line = null;
      follower.listening(false);
      if (closed) return;
      if (!warned)
        options.log?.warn({ err: error }, "changes of the database are not heard: nothing is kept in memory");
      warned = true;
      clearTimeout(timer);
      timer = setTimeout(() => void connect(), wait);
      wait = Math.min(longestWait, wait * 2);
    };
    await connect();
    const followed: Followed = {
      caughtUp: async () => {
        await line?.caughtUp();
      },
      close: async () => {
        closed = true;
        clearTimeout(timer);
        follower.listening(false);
        await line?.close();
      },
    };
    return followed;
  };

interface Line {
  caughtUp(): Promise<void>;
  close(): Promise<void>;
}

/** Resolves once a text that was notified the ordinary way was heard. `lost` is called at most once, and only after that. */
async function openLine(
  { url, query }: FollowOptions,
  follower: SignalFollower,
  lost: (error: unknown) => void,
): Promise<Line> {
  const socket = new Socket();
  const client = new pg.Client({
    connectionString: url,
    application_name: "prepwright-listen",
    connectionTimeoutMillis: patience,
    stream: () => socket,
  });
  const probes = createProbes(randomUUID());
  const heart: { beat: NodeJS.Timeout | null } = { beat: null };
  const ended = new AbortController();
  const end = (error: unknown): void => {
    if (ended.signal.aborted) return;
    ended.abort(error);
    clearInterval(heart.beat ?? undefined);
    // Not a farewell that a dead network would never take.
    socket.destroy();
    if (heart.beat !== null) lost(error);
    probes.release();
  };
  client.on("error", end);
  client.on("end", () => end(new Error("the connection was closed")));
  client.on("notification", ({ payload = "" }) => {
    if (!probes.take(payload)) follower.heard(payload);
  });
  try {
    await client.connect();
    await within(client.query(`LISTEN ${signalChannel}`));
    await within(probes.send((payload) => query(notify, [signalChannel, payload])));
    ended.signal.throwIfAborted();
  } catch (error) {
    end(error);
    throw error;
  }
  heart.beat = setInterval(() => {
    within(client.query("SELECT 1")).catch(end);
  }, lookEvery);
  heart.beat.unref();
  return {
    caughtUp: () =>
      within(probes.send((payload) => client.query(notify, [signalChannel, payload]))).catch((error: unknown) => {
        end(error);
      }),
    close: async () => {
      ended.abort();
      clearInterval(heart.beat ?? undefined);
      probes.release();
      await client.end();
    },
  };
}

/** @throws where it takes longer than a server that is there would */
const within = <T>(work: Promise<T>): Promise<T> => withTimeout(work, patience);
