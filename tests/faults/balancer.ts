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

/** As plain as a balancer can be: requests go to ready instances by turns, over connections that are kept. It tries nothing twice. */
export async function startBalancer(instances: () => readonly string[]): Promise<Balancer> {
  const agent = new Agent({ keepAlive: true });
  let ready: readonly string[] = [];
  let turn = 0;
  let closed = false;
  const asking = (async () => {
    while (!closed) {
      const asked = await Promise.all(
        instances().map(async (address) => {
          const answer = await fetch(`${address}/readyz`).catch(() => null);
          return answer?.status === 200 ? [address] : [];
        }),
      );
      ready = asked.flat();
      await wait(everyMs);
    }
  })();
  const pass = (incoming: IncomingMessage, outgoing: ServerResponse): void => {
    turn += 1;
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
  const server = createServer(pass);
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return {
    address: `http://127.0.0.1:${String((server.address() as AddressInfo).port)}`,
    untilReady: async (count) => {
      while (ready.length < count) await wait(10);
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
