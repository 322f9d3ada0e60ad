import Fastify, { type FastifyInstance } from "fastify";
import { request } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { shedLoad, defaultLimits, watchOverload, type OverloadReason } from "../../../src/app/server/load-shedding.js";

/** Milliseconds that an answer takes to compute. */
const work = 10;

describe("requests that come faster than they are computed", () => {
  let app: FastifyInstance;
  let port: number;
  let shed: OverloadReason[];
  let order: number[];

  beforeEach(async () => {
    app = Fastify();
    shed = [];
    order = [];
    // Long enough for twenty of them.
    const overload = watchOverload({ ...defaultLimits, loopDelayMs: 20 * work }, () => null);
    shedLoad(app, { overload, onShed: (what) => void shed.push(what), dice: () => 0 });
    app.addHook("onClose", () => overload.close());
    app.get("/healthz", () => "alive");
    app.get("/graphql", (asked) => {
      order.push(Number((asked.query as Record<string, string>)["n"]));
      const end = performance.now() + work;
      while (performance.now() < end);
      return "computed";
    });
    await app.listen({ port: 0, host: "127.0.0.1" });
    ({ port } = app.server.address() as AddressInfo);
  });
  afterEach(() => app.close());

  /** Over a connection of its own, as a caller who knows nothing of the others. */
  const ask = (path: string): Promise<{ readonly status: number; readonly retryAfter: string | undefined }> =>
    new Promise((resolve, reject) => {
      const asked = request({ port, host: "127.0.0.1", path, agent: false }, (answer) => {
        answer.resume();
        answer.on("end", () => resolve({ status: answer.statusCode ?? 0, retryAfter: answer.headers["retry-after"] }));
      });
      asked.on("error", reject);
      asked.end();
    });
  const askAll = (count: number) => Promise.all(Array.from({ length: count }, (_, n) => ask(`/graphql?n=${n}`)));

  it("are computed as far as there is time, and the others are told so and when to ask again", async () => {
    const asking = askAll(400);
    const alive = ask("/healthz");
    const answers = await asking;
    const of = (status: number) => answers.filter((answer) => answer.status === status);
    expect(of(200).length + of(503).length).toBe(400);
    expect(of(200).length).toBeGreaterThanOrEqual(20);
    expect(of(503).length).toBeGreaterThan(100);
    expect(new Set(of(503).map(({ retryAfter }) => retryAfter))).toEqual(new Set(["1"]));
    expect(shed).toEqual(of(503).map(() => "event-loop"));
    expect(order).toHaveLength(of(200).length);
    expect((await alive).status).toBe(200);
    expect((await askAll(3)).map(({ status }) => status)).toEqual([200, 200, 200]);
  });

  it("are all computed where that takes no longer than anybody may wait", async () => {
    expect((await askAll(12)).map(({ status }) => status)).toEqual(Array.from({ length: 12 }, () => 200));
    expect(shed).toEqual([]);
    expect(order).toHaveLength(12);
  });
});
