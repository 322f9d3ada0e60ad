import { createServer, type IncomingHttpHeaders, type Server } from "node:http";
import type { AddressInfo } from "node:net";

export interface Received {
  readonly path: string;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** A real receiver: answers what it is told to, and keeps what it got. */
export class WebhookReceiver {
  readonly received: Received[] = [];
  answer: { status: number; headers?: Record<string, string> } = { status: 204 };
  readonly #server: Server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on("data", (chunk: Buffer) => chunks.push(chunk));
    request.on("end", () => {
      this.received.push({
        path: request.url ?? "",
        headers: request.headers,
        body: Buffer.concat(chunks).toString("utf8"),
      });
      response.writeHead(this.answer.status, this.answer.headers ?? {}).end("thanks");
    });
  });
  async listen(): Promise<string> {
    await new Promise<void>((listening) => this.#server.listen(0, "127.0.0.1", listening));
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}/hook`;
  }
  async close(): Promise<void> {
    this.#server.closeAllConnections();
    await new Promise((closed) => this.#server.close(closed));
  }
}
