import { createServer, type Server, type ServerResponse } from "node:http";
import { once } from "node:events";
import type { AddressInfo } from "node:net";
import type { Readiness } from "../server/readiness.js";
import type { Metrics } from "./metrics.js";

interface OperationsServer {
  /** Where it listens. */
  readonly address: string;
  close(): Promise<void>;
}

interface OperationsServerOptions {
  readonly host: string;
  readonly port: number;
  readonly metrics: Metrics;
  readonly readiness: Readiness;
}

/** `/metrics`, `/healthz` and `/readyz` at an address of their own, so that none of it has to be kept from readers. */
export async function startOperationsServer(options: OperationsServerOptions): Promise<OperationsServer> {
  const server = createServer((request, response) => {
    answer(request.url ?? "/", options, response).catch((error: unknown) => {
      response.writeHead(500, { "content-type": "text/plain; charset=utf-8" });
      response.end(`The figures cannot be read: ${error instanceof Error ? error.message : String(error)}\n`);
    });
  });
  server.listen(options.port, options.host);
  await once(server, "listening");
  // Whatever else the process waits for, it does not wait for this.
  server.unref();
  const { address, family, port } = server.address() as AddressInfo;
  return {
    address: `http://${family === "IPv6" ? `[${address}]` : address}:${String(port)}`,
    close: () => close(server),
  };
}

async function answer(
  url: string,
  { metrics, readiness }: OperationsServerOptions,
  response: ServerResponse,
): Promise<void> {
  const send = (status: number, type: string, text: string): void => {
    response.writeHead(status, { "content-type": type, "cache-control": "no-store" }).end(text);
  };
  switch (url.split("?")[0]) {
    case "/metrics": {
      const { text, type } = await metrics.read();
      return send(200, type, text);
    }
    case "/healthz":
      return send(200, "application/json", JSON.stringify({ status: "ok" }));
    case "/readyz": {
      const reasons = await readiness.check();
      return reasons.length === 0
        ? send(200, "application/json", JSON.stringify({ status: "ready" }))
        : send(503, "application/json", JSON.stringify({ status: "not ready", reasons }));
    }
    default:
      return send(404, "text/plain; charset=utf-8", "There is /metrics, /healthz and /readyz.\n");
  }
}

async function close(server: Server): Promise<void> {
  server.close();
  server.closeAllConnections();
  if (server.listening) await once(server, "close");
}
