import type { Server } from "node:http";
import type { Socket } from "node:net";

/** Milliseconds that whoever begins a request, or has not begun one yet, may be silent once no more are taken. */
const silence = 1_000;
const pause = 100;

interface Kept {
  /** Requests whose answers have not been handed over whole. */
  owed: number;
  /** Bytes that had come when the last answer was done; null: it has not asked anything yet. */
  answeredAt: number | null;
  heard: { bytes: number; at: number };
}

/**
 * Lets a server that is closed finish: Node takes a connection for idle as soon as its answer was written, and cuts off what a slow
 * reader has not taken yet. Here a connection is idle once the system has taken the last byte of every answer. Whoever is in the
 * middle of a request is waited for, and whoever is silent is not. `now` in milliseconds.
 */
export function drainConnections(server: Server, now: () => number): void {
  const connections = new Map<Socket, Kept>();
  let closing: NodeJS.Timeout | null = null;
  const sweep = (): void => {
    for (const [socket, kept] of connections) {
      if (kept.heard.bytes !== socket.bytesRead) kept.heard = { bytes: socket.bytesRead, at: now() };
      const isWaiting = kept.answeredAt === socket.bytesRead;
      if (kept.owed === 0 && (isWaiting || now() - kept.heard.at >= silence)) socket.destroySoon();
    }
  };
  server.on("connection", (socket) => {
    connections.set(socket, { owed: 0, answeredAt: null, heard: { bytes: 0, at: now() } });
    socket.once("close", () => connections.delete(socket));
  });
  server.prependListener("request", ({ socket }, response) => {
    const kept = connections.get(socket);
    if (kept === undefined) return;
    kept.owed += 1;
    response.once("close", () => {
      kept.owed -= 1;
      kept.answeredAt = socket.bytesRead;
    });
  });
  // Node calls this when the server is closed, and waits for the connections that are left.
  server.closeIdleConnections = () => {
    sweep();
    closing ??= setInterval(sweep, pause);
  };
  server.once("close", () => {
    if (closing !== null) clearInterval(closing);
  });
}
