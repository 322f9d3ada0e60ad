import { connect } from "node:net";
import type pg from "pg";
import { RequestEnded } from "../errors.js";
import { requestSignal } from "./request-scope.js";

type Send = (...given: readonly unknown[]) => unknown;

/** What the driver keeps of a session, which its types do not say. */
interface SessionKeys {
  readonly processID?: number | null;
  readonly secretKey?: number | null;
}

/** Ends a transaction; it must be sent whatever has become of the request. */
const isEnd = (text: unknown): boolean => typeof text === "string" && /^(ROLLBACK|COMMIT)\b/i.test(text);

const textOf = (query: unknown): unknown =>
  typeof query === "object" && query !== null && "text" in query ? query.text : query;

/**
 * Statements of a pool that are sent within a request (`withinRequest`) end with it: one that runs is cancelled in the server, one
 * that waits for a connection is not sent. They reject with what the server says, or with RequestEnded.
 */
export function cancelWithRequest(pool: pg.Pool): void {
  pool.on("connect", (client) => {
    const send = client.query.bind(client) as Send;
    client.query = ((...given: readonly unknown[]) => sendOn(client, send, given)) as typeof client.query;
  });
  const plain = pool.query.bind(pool) as Send;
  pool.query = ((...given: readonly unknown[]) =>
    requestSignal() === undefined || isForCallback(given)
      ? plain(...given)
      : queryOnOne(pool, given)) as typeof pool.query;
}

/** As the pool does it, but in the caller's own context: the pool's goes on in that of whoever gave the connection back. */
async function queryOnOne(pool: pg.Pool, given: readonly unknown[]): Promise<unknown> {
  const client = await pool.connect();
  try {
    const answer = await (client.query as Send)(...given);
    client.release();
    return answer;
  } catch (error) {
    client.release(!(error instanceof RequestEnded));
    throw error;
  }
}

function sendOn(client: pg.PoolClient, send: Send, given: readonly unknown[]): unknown {
  const signal = requestSignal();
  if (signal === undefined || isForCallback(given) || isEnd(textOf(given[0]))) return send(...given);
  if (signal.aborted) return Promise.reject(new RequestEnded());
  return untilEnd(client, signal, send(...given) as Promise<unknown>);
}

async function untilEnd(client: pg.PoolClient, signal: AbortSignal, running: Promise<unknown>): Promise<unknown> {
  let cancelled: Promise<void> | null = null;
  const cancel = (): void => {
    cancelled = cancelRunning(client);
  };
  signal.addEventListener("abort", cancel, { once: true });
  try {
    return await running;
  } finally {
    signal.removeEventListener("abort", cancel);
    // Not before the server has it: else it would end the next statement on this connection.
    await cancelled;
  }
}

/** Streams of COPY, and calls with a function to be called: the driver's own parts make them. */
const isForCallback = (given: readonly unknown[]): boolean => {
  const [query] = given;
  const streams = typeof query === "object" && query !== null && "submit" in query;
  return streams || typeof given.at(-1) === "function";
};

const cancelRequestLength = 16;
/** Protocol 3.0, "CancelRequest". */
const cancelRequestCode = 80_877_102;
const cancelPatience = 2_000;

/** Asks the server, on a connection of its own, to end what runs on this one. Resolves once the server has taken notice, or is silent. */
function cancelRunning(client: pg.PoolClient): Promise<void> {
  const { processID, secretKey } = client as SessionKeys;
  const { host, port } = client as { readonly host?: string; readonly port?: number };
  if (!processID || typeof secretKey !== "number" || host === undefined || port === undefined) return Promise.resolve();
  const message = Buffer.alloc(cancelRequestLength);
  message.writeInt32BE(cancelRequestLength, 0);
  message.writeInt32BE(cancelRequestCode, 4);
  message.writeInt32BE(processID, 8);
  message.writeInt32BE(secretKey, 12);
  return new Promise((resolve) => {
    const socket = host.startsWith("/") ? connect(`${host}/.s.PGSQL.${port}`) : connect(port, host);
    socket.setTimeout(cancelPatience, () => socket.destroy());
    // A cancel that does not arrive leaves the statement to its own end; the caller has been answered already.
    socket.on("error", () => socket.destroy());
    socket.on("close", () => resolve());
    socket.on("connect", () => socket.end(message));
    socket.resume();
  });
}
