import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { once } from "node:events";
import { connect, type AddressInfo, type Socket } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { saveFeed } from "../../../src/services/imports/feeds/save-feed.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded, type TestDatabase } from "../../kit/databases.js";

const large = 32 * 1024 * 1024;

interface Raw {
  readonly socket: Socket;
  text(): string;
  readonly ended: Promise<number>;
}

/** A connection of its own, as it is on the wire. */
function raw(app: TestApp): Raw {
  const socket = connect((app.app.server.address() as AddressInfo).port, "127.0.0.1");
  const pieces: Buffer[] = [];
  socket.on("data", (piece: Buffer) => void pieces.push(piece));
  socket.on("error", () => undefined);
  const begun = performance.now();
  const ended = once(socket, "close").then(() => performance.now() - begun);
  return { socket, text: () => Buffer.concat(pieces).toString("latin1"), ended };
}

const get = (path: string): string => `GET ${path} HTTP/1.1\r\nHost: x\r\n\r\n`;

describeOnEmbedded("a service that is told to stop", (open) => {
  let database: TestDatabase;
  let folder: string;
  let app: TestApp;

  beforeAll(async () => {
    database = await open();
    folder = await mkdtemp(join(tmpdir(), "prepwright-stopping-"));
    await writeFile(join(folder, "index.html"), "<!doctype html>");
    await writeFile(join(folder, "large.js"), Buffer.alloc(large, "x"));
  });
  afterAll(() => rm(folder, { recursive: true }));

  const start = async (): Promise<TestApp> => {
    app = await openTestApp(database.data, folder);
    await app.app.listen({ port: 0, host: "127.0.0.1" });
    return app;
  };

  it("gives a slow reader every byte of an answer that was written already", async () => {
    const reader = raw(await start());
    reader.socket.pause();
    reader.socket.write(get("/graphql/explorer/large.js"));
    await wait(300);
    const closed = app.close();
    await wait(700);
    reader.socket.resume();
    await closed;
    await reader.ended;
    const [head = "", body = ""] = reader.text().split("\r\n\r\n");
    expect(head).toMatch(/^HTTP\/1\.1 200 /);
    expect(body).toHaveLength(large);
  });

  it("closes connections that wait for nothing at once", async () => {
    const idle = raw(await start());
    idle.socket.write(get("/healthz"));
    await once(idle.socket, "data");
    const before = performance.now();
    await app.close();
    expect(performance.now() - before).toBeLessThan(3_000);
    await idle.ended;
  });

  it("waits for a request whose head is on its way, answers it, and says that it is the last", async () => {
    const slow = raw(await start());
    const [first, second, third] = [
      get("/healthz").slice(0, 10),
      get("/healthz").slice(10, 30),
      get("/healthz").slice(30),
    ];
    slow.socket.write(first);
    await wait(100);
    const closed = app.close();
    await wait(600);
    slow.socket.write(second);
    await wait(600);
    slow.socket.write(third);
    await closed;
    await slow.ended;
    expect(slow.text()).toMatch(/^HTTP\/1\.1 200 [\s\S]*connection: close[\s\S]*"ok"/i);
  });

  it("does not wait for who says nothing, or breaks off", async () => {
    const silent = raw(await start());
    const broken = raw(app);
    broken.socket.write("GET /heal");
    await wait(100);
    const before = performance.now();
    await app.close();
    expect(performance.now() - before).toBeLessThan(3_000);
    await Promise.all([silent.ended, broken.ended]);
    expect(silent.text() + broken.text()).toBe("");
  });

  it("is not ready from that moment on, still answers everything, and asks to come back over another connection", async () => {
    await start();
    const { port } = app.app.server.address() as AddressInfo;
    const ask = (path: string): Promise<Response> => fetch(`http://127.0.0.1:${port}${path}`);
    expect((await ask("/readyz")).status).toBe(200);
    app.readiness.leave();
    const ready = await ask("/readyz");
    expect([ready.status, ready.headers.get("connection"), await ready.json()]).toEqual([
      503,
      "close",
      { status: "not ready", reasons: [{ code: "STOPPING", message: "The process was told to stop." }] },
    ]);
    const answers = await Promise.all(["/healthz", "/", "/v1/plans"].map(ask));
    expect(answers.map(({ status, headers }) => [status, headers.get("connection")])).toEqual(
      answers.map(() => [200, "close"]),
    );
    await app.close();
  });
});

describe("slow clients", () => {
  describeOnEmbedded("of a running service", (open) => {
    let app: TestApp;

    beforeAll(async () => {
      app = await openTestApp((await open()).data, undefined, undefined, {}, { bodyTime: 400 });
      await app.app.listen({ port: 0, host: "127.0.0.1" });
    });
    afterAll(() => app.close());

    const post = (path: string, more = ""): string =>
      `POST ${path} HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 100\r\n${more}\r\n{"pl`;

    it.each([
      ["/graphql", /application\/json/, /"code":"/],
      ["/v1/shopping-list", /application\/problem\+json/, /"type":"\/problems\/too-slow"/],
    ])("get 408 (RFC 9110, 15.5.9) where a body for %s does not come", async (path, type, body) => {
      const slow = raw(app);
      slow.socket.write(post(path));
      expect(await slow.ended).toBeLessThan(3_000);
      expect(slow.text()).toMatch(/^HTTP\/1\.1 408 /);
      expect(slow.text()).toMatch(/\r\nconnection: close\r\n/i);
      expect(slow.text()).toMatch(type);
      expect(slow.text()).toMatch(body);
    });

    it("may take longer over a file for a feed", async () => {
      const caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;
      const settings = { source: "Corner shop", currency: "XTS", locale: "en" };
      await saveFeed(app.deps, caller, { publisher: null, slug: "corner-shop", kind: "PRICES", settings });
      const token = await app.tokenFor(null, ["IMPORT"]);
      const upload = raw(app);
      upload.socket.write(
        post("/v1/feeds/corner-shop/files", `Authorization: Bearer ${token}\r\nConnection: close\r\n`),
      );
      await wait(1_000);
      expect(upload.text()).toBe("");
      upload.socket.write("x".repeat(96));
      await upload.ended;
      expect(upload.text()).toMatch(/^HTTP\/1\.1 202 /);
    });

    it("that dribble the heads of their requests are cut off, while others are answered", async () => {
      const dribbling = Array.from({ length: 40 }, () => {
        const slow = raw(app);
        slow.socket.write("GET / HTTP/1.1\r\n");
        const timer = setInterval(() => slow.socket.write("X: y\r\n"), 500);
        return slow.ended.finally(() => clearInterval(timer));
      });
      const { port } = app.app.server.address() as AddressInfo;
      const begun = performance.now();
      let answered = 0;
      const all = Promise.all(dribbling);
      while ((await Promise.race([all.then(() => true), wait(200, false)])) === false) {
        expect((await fetch(`http://127.0.0.1:${port}/healthz`)).status).toBe(200);
        answered += 1;
        if (performance.now() - begun > 20_000) break;
      }
      const lives = await all;
      expect(answered).toBeGreaterThan(20);
      // Ten seconds, looked at every second.
      expect(Math.max(...lives)).toBeLessThan(13_000);
    });
  });
});
