import { connect, type Socket } from "node:net";
import { answerReader } from "./answer-reader.js";
import type { LoadJob, LoadMeasured, LoadRequest } from "./load-job.js";

/** A process of its own: takes jobs from its parent one after another and answers each with what it measured. */
process.on("message", (job: LoadJob) => {
  run(job).then(
    (measured) => process.send?.(measured),
    (error: unknown) => {
      console.error(error);
      process.exit(1);
    },
  );
});

/** A bare client on sockets: it must cost less than what it measures. */
async function run({ port, request, connections, milliseconds, rate, from }: LoadJob): Promise<LoadMeasured> {
  const write = requestWriter(request);
  const took: number[] = [];
  let refused = 0;
  let n = from;
  const begin = performance.now();
  const end = begin + milliseconds;
  const free: Connection[] = [];
  const due: number[] = [];
  let under = 0;
  await new Promise<void>((done, failed) => {
    const finish = (): void => {
      if (under === 0 && due.length === 0) done();
    };
    const send = (connection: Connection, since: number): void => {
      connection.since = since;
      under += 1;
      connection.socket.write(write(n));
      n += 1;
    };
    const answered = (connection: Connection, status: number): void => {
      const now = performance.now();
      under -= 1;
      took.push(now - connection.since);
      if (status !== 200) refused += 1;
      if (rate === null) {
        if (now < end) send(connection, now);
        else finish();
        return;
      }
      const waiting = due.shift();
      if (waiting !== undefined) send(connection, waiting);
      else {
        free.push(connection);
        if (now >= end) finish();
      }
    };
    for (let at = 0; at < connections; at += 1) {
      const connection = open(port, answered, failed);
      if (rate === null) send(connection, begin);
      else free.push(connection);
    }
    if (rate === null) {
      // Awake all the time: to wake it costs whoever writes, and so a slow server more than a fast one.
      const stayAwake = (): void => {
        if (under > 0) setImmediate(stayAwake);
      };
      stayAwake();
      return;
    }
    let sent = 0;
    const tick = (): void => {
      const now = performance.now();
      for (; begin + (sent * 1000) / rate <= Math.min(now, end); sent += 1) {
        const since = begin + (sent * 1000) / rate;
        const connection = free.pop();
        if (connection === undefined) due.push(since);
        else send(connection, since);
      }
      if (now < end) setImmediate(tick);
      else finish();
    };
    tick();
  });
  const seconds = (performance.now() - begin) / 1000;
  const sorted = Float64Array.from(took).sort();
  const quantile = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
  opened.splice(0).forEach(({ socket }) => socket.destroy());
  return {
    answered: took.length,
    refused,
    perSecond: took.length / seconds,
    p50: quantile(0.5),
    p99: quantile(0.99),
    next: n,
  };
}

interface Connection {
  readonly socket: Socket;
  /** When its request was sent or due. */
  since: number;
}

const opened: Connection[] = [];

function open(
  port: number,
  answered: (connection: Connection, status: number) => void,
  failed: (error: Error) => void,
): Connection {
  const socket = connect({ port, host: "127.0.0.1", noDelay: true });
  const connection = { socket, since: 0 };
  const reader = answerReader();
  socket.on("data", (chunk) => {
    const status = reader.take(chunk);
    if (status !== null) answered(connection, status);
  });
  socket.on("error", failed);
  socket.on("close", () => {
    if (opened.includes(connection)) failed(new Error("the server closed a connection"));
  });
  opened.push(connection);
  return connection;
}

function requestWriter({ method, path, headers, body }: LoadRequest): (n: number) => Buffer {
  const text = (n: number): Buffer => {
    const sent = body.replaceAll("{{n}}", String(n));
    const head = Object.entries({
      host: "127.0.0.1",
      ...headers,
      ...(method === "POST" ? { "content-length": String(Buffer.byteLength(sent)) } : {}),
    });
    const lines = head.map(([name, value]) => `${name}: ${value}\r\n`).join("");
    return Buffer.from(`${method} ${path.replaceAll("{{n}}", String(n))} HTTP/1.1\r\n${lines}\r\n${sent}`);
  };
  if ((path + body).includes("{{n}}")) return text;
  const same = text(0);
  return () => same;
}
