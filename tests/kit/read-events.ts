import { request, type IncomingMessage } from "node:http";
import type { AddressInfo } from "node:net";
import type { FastifyInstance } from "fastify";

interface ReadEvent {
  readonly event: string;
  readonly id: string;
  readonly data: string;
}

/** The reader of a stream of events, by the rules of the HTML standard (9.2.6), as a browser has it. */
export interface EventReader {
  readonly status: number;
  readonly headers: IncomingMessage["headers"];
  readonly events: readonly ReadEvent[];
  /** What a browser would send when it comes back. */
  lastId(): string;
  /** Milliseconds; null: the service did not say. */
  retry(): number | null;
  /** All that came, as it came. */
  text(): string;
  /** Waits until there are so many events. */
  until(count: number): Promise<readonly ReadEvent[]>;
  /** Waits until the service has ended it. */
  readonly ended: Promise<void>;
  readonly response: IncomingMessage;
  leave(): void;
}

interface Asking {
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
}

/** Asks a listening application for a stream. */
export async function readEvents(
  app: FastifyInstance,
  path: string,
  { headers = {}, body }: Asking = {},
): Promise<EventReader> {
  const { port } = app.server.address() as AddressInfo;
  const asked = request({
    ...{ port, host: "127.0.0.1", path, method: body === undefined ? "GET" : "POST", agent: false },
    headers: { accept: "text/event-stream", ...headers },
  });
  const response = await new Promise<IncomingMessage>((resolve, reject) => {
    asked.once("response", resolve);
    asked.on("error", reject);
    asked.end(body);
  });
  const events: ReadEvent[] = [];
  let [rest, whole, id, retry] = ["", "", "", null as number | null];
  let fields = { event: "message", data: [] as string[] };
  const line = (text: string): void => {
    if (text === "") {
      if (fields.data.length > 0) events.push({ event: fields.event, id, data: fields.data.join("\n") });
      fields = { event: "message", data: [] };
    } else if (!text.startsWith(":")) {
      const [, name = "", value = ""] = /^([^:]*):? ?(.*)$/s.exec(text) ?? [];
      if (name === "id") id = value;
      else if (name === "event") fields.event = value;
      else if (name === "data") fields.data.push(value);
      else if (name === "retry") retry = Number(value);
    }
  };
  response.setEncoding("utf8");
  response.on("data", (piece: string) => {
    whole += piece;
    const lines = (rest + piece).split("\n");
    rest = lines.pop() ?? "";
    lines.forEach(line);
  });
  response.on("error", () => undefined);
  const ended = new Promise<void>((resolve) => response.once("close", () => resolve()));
  return {
    ...{ status: response.statusCode ?? 0, headers: response.headers, events, ended, response },
    lastId: () => id,
    retry: () => retry,
    text: () => whole,
    until: async (count) => {
      for (const end = Date.now() + 10_000; events.length < count && Date.now() < end;)
        await new Promise((later) => setTimeout(later, 10));
      if (events.length < count) throw new Error(`${events.length} of ${count} events came: ${whole}`);
      return events;
    },
    leave: () => asked.destroy(),
  };
}
