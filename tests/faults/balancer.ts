import { Agent, createServer, request, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { setTimeout as wait } from "node:timers/promises";

export interface Balancer {
  readonly address: string;
  /** Resolves once so many instances say that they are ready. */
  untilReady(count: number): Promise<void>;
  close(): Promise<void>;
}

/** How often instances are asked whether they are ready, in milliseconds. */
const everyMs = 100;
/** How long a request is held back while none is, in milliseconds: all are silent for a moment where their machine or database is. */
const patienceMs = 5_000;

/**
 * As plain as a balancer can be: requests go to ready instances by turns, over connections that are kept. It tries nothing twice, not
 * even what real ones do by default, a request that could not be handed over: what fails here is seen.
 */
export async function startBalancer(instances: () => readonly string[]): Promise<Balancer> {
  const agent = new Agent({ keepAlive: true });
  const known = new Set<string>();
  const underWay = new Set<string>();
  let turn = 0;
  let closed = false;
  // Each for itself: one that is slow to answer must not keep another's leaving from being seen.
  const look = async (address: string): Promise<void> => {
    if (underWay.has(address)) return;
    underWay.add(address);
    const answer = await fetch(`${address}/readyz`).catch(() => null);
    underWay.delete(address);
    if (answer?.status === 200) known.add(address);
    else known.delete(address);
  };
  const asking = (async () => {
    while (!closed) {
      for (const address of instances()) void look(address);
      await wait(everyMs);
    }
  })();
  const readyOnes = (): readonly string[] => instances().filter((address) => known.has(address));
  const pass = async (incoming: IncomingMessage, outgoing: ServerResponse): Promise<void> => {
    turn += 1;
    const until = performance.now() + patienceMs;
    while (readyOnes().length === 0 && performance.now() < until) await wait(10);
    const ready = readyOnes();
    const to = ready[turn % ready.length];
    if (to === undefined) {
      outgoing.writeHead(503).end("nobody is ready");
      return;
    }
    const { method = "GET", url = "/", headers } = incoming;
    const passed = request(new URL(url, to), { agent, method, headers }, (answer) => {
      outgoing.writeHead(answer.statusCode ?? 502, answer.headers);
      answer.pipe(outgoing);
    });
    passed.on("error", (error) => {
      if (!outgoing.headersSent) outgoing.writeHead(502);
      outgoing.end(`the instance failed: ${error.message}`);
    });
    incoming.pipe(passed);
  };
  const server = createServer((incoming, outgoing) => void pass(incoming, outgoing));
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return {
    address: `http://127.0.0.1:${String((server.address() as AddressInfo).port)}`,
    untilReady: async (count) => {
      while (readyOnes().length < count) await wait(10);
    },
    close: async () => {
      closed = true;
      await asking;
      agent.destroy();
      server.closeAllConnections();
      server.close();
    },
  };
}
