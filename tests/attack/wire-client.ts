import { connect } from "node:net";
import type { WireAttack } from "./wire-attacks.js";

/** What came back on one connection. */
export interface WireAnswer {
  readonly text: string;
  /** Of each answer; those of 1xx are none. */
  readonly statuses: readonly number[];
  /** The service closed the connection, or the client had reset it. */
  readonly ended: boolean;
}

/** Writes the pieces, and takes what comes until the service closes. @param patience milliseconds */
export function sendWire(port: number, { pieces, then }: WireAttack, patience: number): Promise<WireAnswer> {
  return new Promise((settled, failed) => {
    const chunks: Buffer[] = [];
    const settle = (ended: boolean): void => {
      clearTimeout(timer);
      socket.destroy();
      const text = Buffer.concat(chunks).toString("latin1");
      settled({ text, statuses: statusesOf(text), ended });
    };
    const timer = setTimeout(() => settle(false), patience);
    const socket = connect({ port, host: "127.0.0.1", noDelay: true }, () => write(0));
    const write = (at: number): void => {
      const piece = pieces[at];
      if (socket.destroyed) return;
      if (piece !== undefined) {
        socket.write(piece);
        setImmediate(() => write(at + 1));
      } else if (then === "HALF_CLOSE") socket.end();
      else if (then === "RESET") socket.resetAndDestroy();
    };
    socket.on("data", (chunk: Buffer) => chunks.push(chunk));
    // What is refused in the middle may be cut while the client still writes.
    socket.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code !== "ECONNRESET" && error.code !== "EPIPE") failed(error);
    });
    socket.on("close", () => settle(true));
  });
}

const statusesOf = (text: string): readonly number[] =>
  [...text.matchAll(/HTTP\/1\.1 (\d{3}) /g)].map(([, status]) => Number(status)).filter((status) => status >= 200);
