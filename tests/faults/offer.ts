import { Agent, request, type IncomingHttpHeaders } from "node:http";
import { setImmediate as soon } from "node:timers/promises";

/** A request over GraphQL as it is written; each is sent once. */
export interface Offered {
  readonly address: string;
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  body(): string;
}

export interface OfferResult {
  readonly offered: number;
  /** 200 and no error in the answer. */
  readonly answered: number;
  /** 503 with `Retry-After`. */
  readonly shed: number;
  /** Anything else: another status, an error in the answer, no answer within half a minute. */
  readonly failed: number;
  readonly answeredPerSecond: number;
  /** Milliseconds of the answered ones, from when they were due; and of those that were shed. */
  readonly p50: number;
  readonly p99: number;
  readonly p99OfShed: number;
}

/** A caller gives up after this, in milliseconds. */
const patience = 30_000;

interface Done {
  readonly kind: "answered" | "shed" | "failed";
  readonly ms: number;
}

function ask(agent: Agent, { address, path, headers, body }: Offered, due: number): Promise<Done> {
  return new Promise((resolve) => {
    const end = (kind: Done["kind"]): void => resolve({ kind, ms: performance.now() - due });
    const sent = request(new URL(path, address), { agent, method: "POST", headers, timeout: patience }, (answer) => {
      const chunks: Buffer[] = [];
      answer.on("data", (chunk: Buffer) => chunks.push(chunk));
      answer.on("end", () => end(kindOf(answer.statusCode ?? 0, answer.headers, Buffer.concat(chunks))));
      answer.on("error", () => end("failed"));
    });
    sent.on("timeout", () => sent.destroy(new Error("no answer in time")));
    sent.on("error", () => end("failed"));
    sent.end(body());
  });
}

function kindOf(status: number, headers: IncomingHttpHeaders, body: Buffer): Done["kind"] {
  if (status === 503 && /^\d+$/.test(headers["retry-after"] ?? "")) return "shed";
  return status === 200 && body.subarray(0, 8).toString() === '{"data":' ? "answered" : "failed";
}

const quantile = (sorted: readonly number[], share: number): number =>
  Math.round(sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0);

function measured(done: readonly Done[], seconds: number): OfferResult {
  const of = (kind: Done["kind"]): readonly number[] =>
    done.flatMap((each) => (each.kind === kind ? [each.ms] : [])).toSorted((a, b) => a - b);
  const [answered, shed] = [of("answered"), of("shed")];
  return {
    ...{ offered: done.length, answered: answered.length, shed: shed.length, failed: of("failed").length },
    answeredPerSecond: Math.round((answered.length / seconds) * 10) / 10,
    ...{ p50: quantile(answered, 0.5), p99: quantile(answered, 0.99), p99OfShed: quantile(shed, 0.99) },
  };
}

/** So many callers, each of whom asks again as soon as it is answered, for so many milliseconds: what the service can do. */
export async function askInSlices(offered: Offered, callers: number, milliseconds: number): Promise<OfferResult> {
  const agent = new Agent({ keepAlive: true });
  const begin = performance.now();
  const done: Done[] = [];
  const call = async (): Promise<void> => {
    while (performance.now() < begin + milliseconds) done.push(await ask(agent, offered, performance.now()));
  };
  await Promise.all(Array.from({ length: callers }, call));
  agent.destroy();
  return measured(done, (performance.now() - begin) / 1000);
}

/** So many requests a second at even distances, whatever becomes of those before, for so many milliseconds. */
export async function askAtRate(offered: Offered, perSecond: number, milliseconds: number): Promise<OfferResult> {
  const agent = new Agent({ keepAlive: true });
  const begin = performance.now();
  const asked: Promise<Done>[] = [];
  while (performance.now() < begin + milliseconds) {
    const dueBy = ((performance.now() - begin) / 1000) * perSecond;
    while (asked.length < dueBy) asked.push(ask(agent, offered, begin + (asked.length / perSecond) * 1000));
    await soon();
  }
  const done = await Promise.all(asked);
  agent.destroy();
  // Until the last one was answered: what was answered after the load has ended was kept waiting.
  return measured(done, (performance.now() - begin) / 1000);
}
