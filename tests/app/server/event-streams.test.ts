import { connect, type AddressInfo } from "node:net";
import { setTimeout as wait } from "node:timers/promises";
import Fastify, { type FastifyInstance } from "fastify";
import { afterEach, describe, expect, it } from "vitest";
import { addEventStreams, usualStreams, type StreamLimits } from "../../../src/app/server/event-streams.js";
import { limitRate } from "../../../src/app/server/limit-rate.js";
import type { EventStream } from "../../../src/http/event-stream.js";
import { anyone } from "../../../src/services/access/actor.js";
import { openRateLimit } from "../../../src/services/access/rate-limit.js";
import { readEvents } from "../../kit/read-events.js";

const apps: FastifyInstance[] = [];
afterEach(async () => {
  await Promise.all(apps.splice(0).map((app) => app.close()));
});

/** An application with one route, whose streams are handed to the test. */
async function openStreams(limits: Partial<StreamLimits>) {
  const app = Fastify();
  apps.push(app);
  const limit = openRateLimit({ perAddress: 0, perToken: 0, refusedTokensPerAddress: 0 }, () => new Date(0));
  app.decorateRequest("actor");
  app.addHook("onRequest", (request, _reply, done) => {
    request.actor = anyone;
    done();
  });
  limitRate(app, limit);
  const now = () => performance.now();
  addEventStreams(app, { limits: { ...usualStreams, ...limits }, limit, now, dice: () => 1 });
  const streams: EventStream[] = [];
  app.get("/", (_request, reply) => {
    streams.push(reply.openStream("retry: 1\n\n", (why, retryMs) => `event: end\ndata: ${why} ${retryMs}\n\n`));
    return reply;
  });
  await app.listen({ port: 0, host: "127.0.0.1" });
  return { app, streams, port: (app.server.address() as AddressInfo).port };
}

/** Sends until it is over; how much that was, in megabytes. */
async function flood(stream: EventStream): Promise<number> {
  const megabyte = Buffer.alloc(1024 * 1024, "data: x\n\n");
  let sent = 0;
  while (!stream.over.aborted && sent < 200) {
    await stream.send(megabyte);
    sent += 1;
  }
  return sent;
}

describe("a stream of events", () => {
  it("is cut off where its reader takes nothing, and holds no more than what the system has taken", async () => {
    const { app, streams, port } = await openStreams({ stuck: 400, heartbeat: 100, perCaller: 1 });
    const deaf = connect({ port, host: "127.0.0.1" });
    deaf.on("error", () => undefined);
    deaf.write("GET / HTTP/1.1\r\nHost: x\r\n\r\n");
    deaf.pause();
    while (streams.length === 0) await wait(10);
    const sent = await flood(streams[0]!);
    // What the two ends of a connection on one machine hold between them.
    expect(sent).toBeLessThan(30);
    expect(streams[0]!.over.aborted).toBe(true);
    const next = await readEvents(app, "/");
    expect(next.status).toBe(200);
    next.leave();
    deaf.destroy();
  });

  it("goes on at the speed of its reader, however slow", async () => {
    const { streams, port } = await openStreams({ stuck: 600, heartbeat: 100 });
    const slow = connect({ port, host: "127.0.0.1" });
    slow.on("error", () => undefined);
    let taken = 0;
    slow.on("data", (piece: Buffer) => {
      taken += piece.length;
      slow.pause();
      setTimeout(() => slow.resume(), 5);
    });
    slow.write("GET / HTTP/1.1\r\nHost: x\r\n\r\n");
    while (streams.length === 0) await wait(10);
    const stream = streams[0]!;
    const flooding = flood(stream);
    await wait(2_000);
    expect(stream.over.aborted).toBe(false);
    expect(taken).toBeGreaterThan(1024 * 1024);
    slow.destroy();
    expect(await flooding).toBeLessThan(200);
  });

  it("that was ended is cut off where its reader does not take the end", async () => {
    const { app, streams, port } = await openStreams({});
    const deaf = connect({ port, host: "127.0.0.1" });
    deaf.on("error", () => undefined);
    deaf.write("GET / HTTP/1.1\r\nHost: x\r\n\r\n");
    deaf.pause();
    while (streams.length === 0) await wait(10);
    const flooding = flood(streams[0]!);
    await wait(300);
    const before = performance.now();
    await app.close();
    await flooding;
    expect(performance.now() - before).toBeLessThan(8_000);
    deaf.destroy();
  });

  it("asks its readers to come back at different times when the instance stops", async () => {
    const { app } = await openStreams({});
    const reader = await readEvents(app, "/");
    await app.close();
    await reader.ended;
    expect(reader.events).toEqual([{ event: "end", id: "", data: "STOPPING 5000" }]);
  });
});
