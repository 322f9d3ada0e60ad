import { createServer, type RequestListener, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fetchFile } from "../../../src/app/outgoing/fetch-file.js";
import type { FoundFile } from "../../../src/services/imports/files/file-sources.js";

const textOf = async (file: FoundFile | null): Promise<string> => {
  const pieces: Uint8Array[] = [];
  for await (const piece of file?.bytes ?? []) pieces.push(piece);
  return Buffer.concat(pieces).toString();
};

const answers: Readonly<Record<string, RequestListener>> = {
  "/list.csv": (request, reply) => {
    if (request.headers["if-none-match"] === '"one"') return void reply.writeHead(304).end();
    reply.writeHead(200, { etag: '"one"', "last-modified": "Sun, 01 Mar 2026 04:00:00 GMT" }).end("food,pack\n");
  },
  "/packed": (_request, reply) => void reply.writeHead(200, { "content-encoding": "gzip" }).end(gzipSync("unpacked")),
  "/bomb": (_request, reply) =>
    void reply.writeHead(200, { "content-encoding": "gzip" }).end(gzipSync(Buffer.alloc(64 * 1024 * 1024))),
  "/odd": (_request, reply) => void reply.writeHead(200, { "content-encoding": "br" }).end("x"),
  "/here": (_request, reply) => void reply.writeHead(302, { location: "/list.csv" }).end(),
  "/elsewhere": (_request, reply) => void reply.writeHead(302, { location: "https://elsewhere.example/" }).end(),
  "/inside": (_request, reply) => void reply.writeHead(302, { location: "file:///etc/passwd" }).end(),
  "/ring": (_request, reply) => void reply.writeHead(302, { location: "/ring" }).end(),
  "/broken": (_request, reply) => {
    reply.writeHead(200, { "content-length": "100" });
    reply.write("half");
    setTimeout(() => reply.destroy(), 20);
  },
  "/silent": () => undefined,
};

describe("a file from an address", () => {
  let server: Server;
  let root: string;
  beforeAll(async () => {
    server = createServer((request, reply) => {
      const answer = answers[request.url ?? ""];
      if (answer === undefined) reply.writeHead(404).end();
      else answer(request, reply);
    });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    root = `http://127.0.0.1:${String((server.address() as AddressInfo).port)}`;
  });
  afterAll(() => {
    server.closeAllConnections();
    server.close();
  });

  const get = (
    path: string,
    more: Parameters<typeof fetchFile>[3] = {},
    known: Parameters<typeof fetchFile>[2] = null,
  ) => fetchFile(`${root}${path}`, [], known, { allowPrivate: true, ...more });

  it("is had with what names its state, over addresses of the same host, and unpacked", async () => {
    const file = await get("/list.csv");
    expect([file?.name, file?.tags]).toEqual([
      "list.csv",
      { etag: '"one"', lastModified: "Sun, 01 Mar 2026 04:00:00 GMT" },
    ]);
    expect(await textOf(file)).toBe("food,pack\n");
    expect(await textOf(await get("/here"))).toBe("food,pack\n");
    expect(await textOf(await get("/packed"))).toBe("unpacked");
  });

  it("is not had again where nothing has changed (RFC 9110, 13.1.2)", async () => {
    expect(await get("/list.csv", {}, { etag: '"one"', lastModified: null })).toBeNull();
  });

  it.each([
    ["/none", "answered 404"],
    ["/elsewhere", "elsewhere.example"],
    ["/inside", "does not name among its hosts"],
    ["/ring", "more than 5 times"],
  ])("is given up, in words, at %s", async (path, words) => {
    await expect(get(path)).rejects.toThrow(words);
  });

  it.each([
    ["/bomb", "200 times its size"],
    ["/odd", "compressed as br"],
    ["/broken", "was truncated"],
  ])("is given up while it is read, at %s", async (path, words) => {
    const file = await get(path);
    await expect(textOf(file)).rejects.toThrow(words);
  });

  it("is waited for no longer than it may take", async () => {
    await expect(get("/silent", { silent: 50 })).rejects.toThrow("the address cannot be reached");
    await expect(get("/silent", { silent: 50 })).rejects.toMatchObject({ passing: { retryAfter: null } });
    await expect(get("/silent", { whole: 50 })).rejects.toThrow("cannot be reached");
  });

  it("is never had without encryption", async () => {
    for (const address of [`${root}/list.csv`, "http://society.example/"]) {
      await expect(fetchFile(address, [], null)).rejects.toThrow("only https: addresses are fetched");
    }
  });

  it("tells nobody what there is in the network of the service: each address that cannot be reached says the same and is tried as often", async () => {
    const { port } = server.address() as AddressInfo;
    const said = await Promise.all(
      [
        // Of this machine, and of private networks; by number and by a name, which is looked at where it leads to.
        ...["https://127.0.0.1/", "https://[::1]/", "https://10.0.0.1/", "https://169.254.169.254/latest"],
        ...["https://localhost/", `https://localhost:${port}/`, `https://127.0.0.1:${port}/`, "https://0x7f000001/"],
        ...["https://no-such-name.invalid/", "https://[::ffff:10.0.0.1]/"],
      ].map((address) =>
        fetchFile(address, [], null).then(
          () => "reached",
          (error: unknown) => error,
        ),
      ),
    );
    // Nothing listens there, and something that speaks no TLS does.
    for (const address of ["https://127.0.0.1:1/", `https://127.0.0.1:${port}/`]) {
      said.push(
        await fetchFile(address, [], null, { allowPrivate: true }).then(
          () => "reached",
          (error: unknown) => error,
        ),
      );
    }
    for (const error of said) {
      expect(error).toMatchObject({ message: "the address cannot be reached", passing: { retryAfter: null } });
    }
  });
});
