import { createHash } from "node:crypto";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import CachePolicy from "http-cache-semantics";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { NoRegisteredDocuments, readRegisteredDocuments } from "../../../src/app/server/registered-documents.js";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import { openDocumentStore, type RequestedDocument } from "../../../src/graphql/server/document-store.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const hash = (text: string): string => createHash("sha256").update(text).digest("hex");
const persisted = (sha256Hash: string) => ({ persistedQuery: { version: 1, sha256Hash } });
const title = 'query T { plan(publisher: "third-gate-allotments", slug: "bean-night") { title } }';
const mutation = 'mutation { revokeToken(input: { id: "x" }) { problems { code } } }';

describeOnBothDatabases("documents by their hash", (open) => {
  let database: TestDatabase;
  let app: TestApp;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  const post = (body: object, to = app) => request(to.app.server).post("/graphql").send(body);
  const get = (query: Record<string, string>, headers: Record<string, string> = {}) =>
    request(app.app.server).get("/graphql").query(query).set(headers);
  const code = (answer: { body: { errors?: { extensions: { code: string } }[] } }) =>
    answer.body.errors?.[0]?.extensions.code;

  it("are not known at first, in the words that clients look for; sent once with the hash, they are", async () => {
    const query = `${title} # automatic`;
    const extensions = persisted(hash(query));
    const unknown = await post({ extensions });
    expect([unknown.status, code(unknown), unknown.body.errors[0].message]).toEqual([
      ...[400, "PERSISTED_QUERY_NOT_FOUND", "PersistedQueryNotFound"],
    ]);
    expect((await post({ extensions }).set("accept", "application/json")).status).toBe(200);
    const sent = await post({ query, extensions });
    const named = await post({ extensions });
    expect([sent.status, named.status]).toEqual([200, 200]);
    expect(named.body).toEqual(sent.body);
    const byId = await post({ documentId: `sha256:${hash(query)}` });
    expect(byId.body).toEqual(sent.body);
  });

  it("are refused under an unknown documentId with one error, and under one that is none", async () => {
    const unknown = await post({ documentId: `sha256:${"0".repeat(64)}` });
    expect([unknown.status, code(unknown), unknown.body.errors.length]).toEqual([400, "DOCUMENT_NOT_FOUND", 1]);
    for (const documentId of ["x", hash(title), `sha256:${hash(title).toUpperCase()}`, `md5:${hash(title)}`, 7]) {
      const answer = await post({ documentId });
      expect([answer.status, code(answer)]).toEqual([400, "BAD_REQUEST"]);
    }
    for (const persistedQuery of [1, {}, { version: 2, sha256Hash: hash(title) }, { version: 1, sha256Hash: "x" }]) {
      const answer = await post({ query: title, extensions: { persistedQuery } });
      expect([answer.status, code(answer)]).toEqual([400, "BAD_REQUEST"]);
    }
  });

  it("are refused with the hash of another text, so that nobody can plant one under a hash", async () => {
    const other = `${title} # another`;
    expect(code(await post({ query: title, extensions: persisted(hash(other)) }))).toBe("BAD_REQUEST");
    expect(code(await post({ query: title, documentId: `sha256:${hash(other)}` }))).toBe("BAD_REQUEST");
    expect(code(await post({ extensions: persisted(hash(other)) }))).toBe("PERSISTED_QUERY_NOT_FOUND");
  });

  it("are kept for good queries alone", async () => {
    for (const query of [mutation, "{ nothing }", "{"]) {
      await post({ query, extensions: persisted(hash(query)) });
      expect(code(await post({ extensions: persisted(hash(query)) }))).toBe("PERSISTED_QUERY_NOT_FOUND");
    }
  });

  it("can be had by GET, to be kept by shared caches (http-cache-semantics) and asked for again by tag", async () => {
    await post({ query: title, documentId: `sha256:${hash(title)}` });
    const address = { documentId: `sha256:${hash(title)}`, operationName: "T", variables: "{}" };
    const { status, headers, body } = await get(address);
    expect([status, body.data]).toEqual([200, { plan: { title: expect.any(String) } }]);
    const policy = new CachePolicy({ url: "/graphql", headers: {} }, { status, headers });
    expect([policy.storable(), policy.timeToLive() > 0]).toEqual([true, true]);
    const again = await get(address, { "if-none-match": headers["etag"] ?? "" });
    expect([again.status, again.text]).toEqual([304, ""]);
    const token = await app.tokenFor("third-gate-allotments", ["READ_DRAFTS"]);
    const mine = await get(address, { authorization: `Bearer ${token}` });
    expect(new CachePolicy({ url: "/graphql", headers: {} }, mine).storable()).toBe(false);
    expect((await get({ query: title })).headers["cache-control"]).toBe("no-store");
    expect((await get({ documentId: `sha256:${"0".repeat(64)}` })).headers["cache-control"]).toBe("no-store");
  });

  it("are the only ones that are run where the operator has registered some, with those of the command line", async () => {
    const folder = await mkdtemp(join(tmpdir(), "operations-"));
    await writeFile(join(folder, "title.graphql"), title);
    await writeFile(join(folder, "revoke.graphql"), mutation);
    const registered = await readRegisteredDocuments(folder);
    const closed = await openTestApp(database.data, undefined, undefined, undefined, {
      graphql: { ...usualEngine, registered },
    });
    expect((await post({ documentId: `sha256:${hash(title)}` }, closed)).status).toBe(200);
    expect((await post({ query: title }, closed)).status).toBe(200);
    const changed = await post({ documentId: `sha256:${hash(mutation)}` }, closed);
    expect([changed.status, code(changed)]).toEqual([200, "UNAUTHENTICATED"]);
    const byGet = await request(closed.app.server).get(`/graphql?documentId=sha256:${hash(mutation)}`);
    expect([byGet.status, byGet.headers["allow"]]).toEqual([405, "POST"]);
    const { ViewerDocument } = await import("../../../src/app/cli/generated/operations.js");
    expect((await post({ query: ViewerDocument.toString() }, closed)).status).toBe(200);
    database.statements.clear();
    for (const query of [`${title} `, "{ __typename }", "{"]) {
      expect(code(await post({ query }, closed))).toBe("DOCUMENT_NOT_REGISTERED");
      expect(code(await post({ query, extensions: persisted(hash(query)) }, closed))).toBe("DOCUMENT_NOT_REGISTERED");
      expect(code(await post({ extensions: persisted(hash(query)) }, closed))).toBe("PERSISTED_QUERY_NOT_FOUND");
    }
    expect(database.statements.sent).toEqual([]);
    await closed.close();
    await writeFile(join(folder, "wrong.graphql"), "{ nothing }");
    const wrong = { ...usualEngine, registered: await readRegisteredDocuments(folder) };
    await expect(openTestApp(database.data, undefined, undefined, undefined, { graphql: wrong })).rejects.toThrow(
      'a registered document is refused: Cannot query field "nothing"',
    );
    await rm(folder, { recursive: true });
    await expect(readRegisteredDocuments(tmpdir())).rejects.toThrow("PREPWRIGHT_OPERATIONS_DIR");
    await expect(readRegisteredDocuments(join(tmpdir(), "not-there"))).rejects.toThrow(NoRegisteredDocuments);
  });
});

describe("documents that callers left", () => {
  it("are kept up to a number and a size, those asked for last, so that nobody can fill the memory", () => {
    const documents = openDocumentStore(null);
    const ask = (source: string | null, sha256Hash: string): RequestedDocument => ({
      ...{ source, documentId: null },
      extensions: persisted(sha256Hash),
    });
    const keep = (source: string): void => {
      const found = documents.find(ask(source, hash(source)));
      if (!("source" in found)) throw new Error("not taken");
      found.keep();
    };
    const isKept = (source: string): boolean => "source" in documents.find(ask(null, hash(source)));
    const text = (n: number): string => `{ a${n} }`.padEnd(60_000, "#");
    for (let n = 0; n < 100; n += 1) keep(text(n));
    expect([isKept(text(0)), isKept(text(40)), isKept(text(99))]).toEqual([false, true, true]);
    const long = "{ a }".padEnd(64_001, "#");
    keep(long);
    expect(isKept(long)).toBe(false);
    // Enough for what was asked for to come to the front of the line twice.
    for (let n = 0; n < 4_200; n += 1) keep(`{ b${n} }`);
    expect([isKept("{ b0 }"), isKept("{ b4199 }"), isKept(text(99))]).toEqual([false, true, false]);
  });
});
