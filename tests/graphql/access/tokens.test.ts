import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { tokenPattern, tokenText } from "../../../src/services/access/token-text.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const createPublisher = `mutation ($input: CreatePublisherInput!) { createPublisher(input: $input) {
  publisher { slug name } problems { code message path line column } } }`;
const updatePublisher = `mutation ($input: UpdatePublisherInput!) { updatePublisher(input: $input) {
  publisher { slug name } problems { code path } } }`;
const createToken = `mutation ($input: CreateTokenInput!) { createToken(input: $input) {
  token { id name scopes publisher { slug } createdAt expiresAt lastUsedAt revokedAt } secret problems { code path } } }`;
const revokeToken = `mutation ($input: RevokeTokenInput!) { revokeToken(input: $input) {
  token { id revokedAt } problems { code path } } }`;
const viewer = `{ viewer { id name scopes expiresAt lastUsedAt publisher { slug } } }`;
const trail = `query ($publisher: String, $first: Int, $after: String) {
  auditTrail(publisher: $publisher, first: $first, after: $after) { edges { node {
    at action subjectKind subject before after requestId publisher { slug } by { kind token name } } } pageInfo { endCursor hasNextPage } } }`;

interface Entry {
  readonly action: string;
  readonly subject: string;
  readonly requestId: string | null;
}

describeOnBothDatabases("access tokens", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let now = new Date("2026-03-01T09:00:00Z");
  let operator: string;
  let admin: string;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data, undefined, () => now);
    await app.deps.data.publishers.save({ slug: "north-field", name: "North Field" });
    await app.deps.data.publishers.save({ slug: "south-field", name: "South Field" });
    operator = await app.tokenFor(null, ["ADMIN"]);
    admin = await app.tokenFor("north-field", ["ADMIN"]);
  });
  afterAll(() => app.close());

  const change = async (
    name: string,
    query: string,
    input: object,
    token?: string,
  ): Promise<Record<string, unknown>> => {
    const { data, errors } = await app.ask(query, { input }, token);
    expect(errors).toEqual([]);
    return data?.[name] as Record<string, unknown>;
  };
  const entries = async (variables: object, token = operator): Promise<readonly Entry[]> => {
    const { data, errors } = await app.ask(trail, { ...variables }, token);
    expect(errors).toEqual([]);
    const { edges } = data?.["auditTrail"] as { edges: readonly { node: Entry }[] };
    return edges.map(({ node }) => node);
  };
  const idOf = (token: string): string => token.slice(11, 19);

  it("say who one is, and nothing to those without one", async () => {
    expect((await app.ask(viewer)).data).toEqual({ viewer: null });
    expect((await app.ask(viewer, {}, admin)).data).toMatchObject({
      viewer: {
        id: idOf(admin),
        name: "north-field ADMIN",
        scopes: ["ADMIN"],
        expiresAt: null,
        publisher: { slug: "north-field" },
      },
    });
    expect((await app.ask(viewer, {}, operator)).data).toMatchObject({ viewer: { publisher: null } });
  });

  it("are shown once, and kept only as a hash", async () => {
    const input = { publisher: "north-field", name: "newsletter", scopes: ["WRITE", "PUBLISH", "WRITE"] };
    const made = await change("createToken", createToken, input, admin);
    const secret = String(made["secret"]);
    expect(secret).toMatch(tokenPattern);
    expect(made).toMatchObject({
      token: { id: idOf(secret), name: "newsletter", scopes: ["PUBLISH", "WRITE"], publisher: { slug: "north-field" } },
      problems: [],
    });
    expect((await app.ask(viewer, {}, secret)).data).toMatchObject({ viewer: { name: "newsletter" } });
    const { rows } = await database.sql.query(
      "SELECT t::text AS text FROM access_tokens t UNION ALL SELECT a::text FROM audit_entries a",
    );
    const stored = rows.map(({ text }) => String(text)).join("\n");
    expect(stored).toContain(idOf(secret));
    expect(stored).not.toContain(secret.slice(19, 49));
    expect(app.logged.join("\n")).not.toContain(secret.slice(19, 49));
  });

  it("outlive the token that made them in no way, nor do those that they make", async () => {
    const hour = 3_600_000;
    const ends = new Date(now.getTime() + hour);
    const publishers = ["north-field", null];
    for (const publisher of publishers) {
      const short = await app.tokenFor(publisher, ["ADMIN"], ends);
      const ask = (token: string, expiresAt?: string | null) =>
        change("createToken", createToken, { publisher, name: "child", scopes: ["ADMIN"], expiresAt }, token);
      const left = await ask(short);
      expect(left).toMatchObject({ token: { expiresAt: ends.toISOString() }, problems: [] });
      expect(await ask(short, null)).toMatchObject({ token: { expiresAt: ends.toISOString() } });
      expect(await ask(short, new Date(ends.getTime() - 1).toISOString())).toMatchObject({ problems: [] });
      expect(await ask(short, ends.toISOString())).toMatchObject({ token: { expiresAt: ends.toISOString() } });
      const late = [{ code: "BAD_SHAPE", path: ["input", "expiresAt"] }];
      expect(await ask(short, new Date(ends.getTime() + 1).toISOString())).toMatchObject({
        token: null,
        problems: late,
      });
      expect(await ask(String(left["secret"]), "2099-01-01T00:00:00Z")).toMatchObject({ token: null, problems: late });
      expect(await ask(String(left["secret"]))).toMatchObject({ token: { expiresAt: ends.toISOString() } });
      const before = now;
      now = ends;
      expect((await app.ask(viewer, {}, String(left["secret"]))).status).toBe(401);
      now = before;
    }
    // Of one that does not expire, anything goes, as before.
    const input = { publisher: "north-field", name: "long", scopes: ["WRITE"], expiresAt: "2099-01-01T00:00:00.000Z" };
    expect(await change("createToken", createToken, input, admin)).toMatchObject({
      token: { expiresAt: input.expiresAt },
    });
  });

  it.each([
    ["Basic YTpi", /Authorization header must be/],
    ["Bearer", /Authorization header must be/],
    ["Bearer nonsense", /checksum is wrong/],
    [`Bearer ${tokenText({ id: "aaaaaaaa", secret: "0".repeat(30) }).slice(0, -1)}-`, /checksum is wrong/],
  ])("in a header like %j are refused with 401 and no look at the database", async (authorization, message) => {
    database.statements.clear();
    const answer = await request(app.app.server).post("/graphql").set({ authorization }).send({ query: viewer });
    expect(answer.status).toBe(401);
    expect(answer.body.errors[0].extensions.code).toBe("UNAUTHENTICATED");
    expect(answer.body.errors[0].message).toMatch(message);
    expect(answer.headers["www-authenticate"]).toBe('Bearer error="invalid_token"');
    expect(database.statements.sent).toEqual([]);
  });

  it("that nobody gave out are refused, also with the id of one that somebody did", async () => {
    const unknown = tokenText({ id: "aaaaaaaa", secret: "0".repeat(30) });
    const guessed = tokenText({ id: idOf(admin), secret: "0".repeat(30) });
    const answers = await Promise.all([unknown, guessed].map((token) => app.ask("{ __typename }", {}, token)));
    expect(answers.map(({ status }) => status)).toEqual([401, 401]);
    expect(answers[0]?.text).toBe(answers[1]?.text);
  });

  it("are refused everywhere, in the form that errors have there", async () => {
    const answer = await request(app.app.server).get("/nothing").set({ authorization: "Bearer nonsense" });
    expect(answer.status).toBe(401);
    expect(answer.headers["content-type"]).toMatch(/^application\/problem\+json/);
    expect(answer.body).toMatchObject({ status: 401, detail: expect.stringMatching(/checksum/) });
  });

  it("that are revoked are refused from the next request on, by every process", async () => {
    const other = await openTestApp(database.data);
    const doomed = await app.tokenFor("north-field", ["WRITE"]);
    expect((await other.ask("{ __typename }", {}, doomed)).status).toBe(200);
    const revoked = await change("revokeToken", revokeToken, { id: idOf(doomed) }, admin);
    expect(revoked).toEqual({ token: { id: idOf(doomed), revokedAt: "2026-03-01T09:00:00.000Z" }, problems: [] });
    const { status, text } = await other.ask("{ __typename }", {}, doomed);
    expect([status, text]).toEqual([401, expect.stringContaining("was revoked")]);
    await other.close();
  });

  it("stop at their time, to the millisecond", async () => {
    const until = new Date("2026-03-01T10:00:00Z");
    const token = await app.tokenFor("north-field", ["WRITE"], until);
    now = new Date(until.getTime() - 1);
    expect((await app.ask("{ __typename }", {}, token)).status).toBe(200);
    now = until;
    const { status, text } = await app.ask("{ __typename }", {}, token);
    expect([status, text]).toEqual([401, expect.stringContaining("expired at 2026-03-01T10:00:00.000Z")]);
    now = new Date("2026-03-01T09:00:00Z");
  });

  it("note their last use, at most once a minute", async () => {
    const token = await app.tokenFor("north-field", ["WRITE"]);
    const used = async (at: string): Promise<readonly [unknown, number]> => {
      now = new Date(at);
      database.statements.clear();
      const { data } = await app.ask("{ viewer { lastUsedAt } }", {}, token);
      const writes = database.statements.sent.filter((sql) => sql.startsWith("UPDATE")).length;
      return [(data?.["viewer"] as { lastUsedAt: unknown }).lastUsedAt, writes];
    };
    expect(await used("2026-03-01T09:00:00Z")).toEqual(["2026-03-01T09:00:00.000Z", 1]);
    expect(await used("2026-03-01T09:01:00Z")).toEqual(["2026-03-01T09:00:00.000Z", 0]);
    expect(await used("2026-03-01T09:01:01Z")).toEqual(["2026-03-01T09:01:01.000Z", 1]);
    now = new Date("2026-03-01T09:00:00Z");
  });

  it.each([
    [{ publisher: "north-field", name: "x", scopes: [] }, "BAD_SHAPE", ["input", "scopes"]],
    [{ publisher: "north-field", name: " ", scopes: ["WRITE"] }, "BAD_SHAPE", ["input", "name"]],
    [{ publisher: "north-field", name: "x".repeat(201), scopes: ["WRITE"] }, "TOO_LARGE", ["input", "name"]],
    [{ publisher: "nobody", name: "x", scopes: ["WRITE"] }, "UNKNOWN_PUBLISHER", ["input", "publisher"]],
    [
      { publisher: "north-field", name: "x", scopes: ["WRITE"], expiresAt: "2026-03-01T09:00:00Z" },
      "BAD_SHAPE",
      ["input", "expiresAt"],
    ],
    [{ publisher: "a\0", name: "x", scopes: ["WRITE"] }, "BAD_SHAPE", ["input", "publisher"]],
    [{ name: "x", scopes: ["WRITE"], idempotencyKey: "" }, "BAD_SHAPE", ["input", "idempotencyKey"]],
    [{ name: "x", scopes: ["WRITE"], idempotencyKey: "k".repeat(256) }, "TOO_LARGE", ["input", "idempotencyKey"]],
  ])("of %j are not made, and nothing is written down", async (input, code, path) => {
    const before = await entries({ first: 100 });
    const made = await change("createToken", createToken, input, operator);
    expect(made).toEqual({ token: null, secret: null, problems: [{ code, path }] });
    expect(await entries({ first: 100 })).toEqual(before);
  });

  it("make publishers and rename them: the operator's only", async () => {
    const input = { slug: "west-field", name: "West Field" };
    expect(await change("createPublisher", createPublisher, input, operator)).toEqual({
      publisher: input,
      problems: [],
    });
    expect(await change("createPublisher", createPublisher, input, operator)).toMatchObject({
      publisher: null,
      problems: [
        { code: "SLUG_TAKEN", path: ["input", "slug"], line: null, message: expect.stringMatching(/is taken/) },
      ],
    });
    const renamed = { ...input, name: "The West Field" };
    expect(await change("updatePublisher", updatePublisher, renamed, operator)).toEqual({
      publisher: renamed,
      problems: [],
    });
    expect(await change("updatePublisher", updatePublisher, { slug: "nobody", name: "x" }, operator)).toMatchObject({
      problems: [{ code: "UNKNOWN_PUBLISHER", path: ["input", "slug"] }],
    });
    expect(await change("createPublisher", createPublisher, { slug: "West", name: "" }, operator)).toMatchObject({
      publisher: null,
      problems: [{ path: ["input", "slug"] }, { path: ["input", "name"] }],
    });
    for (const [token, code] of [
      [undefined, "UNAUTHENTICATED"],
      [admin, "FORBIDDEN"],
      [await app.tokenFor(null, ["WRITE", "PUBLISH", "IMPORT", "READ_DRAFTS"]), "FORBIDDEN"],
    ] as const) {
      const { data, errors } = await app.ask(createPublisher, { input: { slug: "east", name: "East" } }, token);
      expect([data, errors[0]?.extensions["code"]]).toEqual([null, code]);
    }
    expect(app.logged.filter((line) => line.includes("a resolver failed"))).toEqual([]);
  });

  it("of another publisher look like none at all", async () => {
    const foreign = await app.tokenFor("south-field", ["WRITE"]);
    const answers = await Promise.all(
      [idOf(foreign), "aaaaaaaa", idOf(operator)].map((id) => change("revokeToken", revokeToken, { id }, admin)),
    );
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(answers[0]).toEqual({ token: null, problems: [{ code: "UNKNOWN_TOKEN", path: ["input", "id"] }] });
    expect((await app.ask("{ __typename }", {}, foreign)).status).toBe(200);
    for (const publisher of ["south-field", "nobody"]) {
      const { data, errors } = await app.ask(
        `{ tokens(publisher: "${publisher}") { edges { node { id } } } }`,
        {},
        admin,
      );
      expect([data, errors[0]?.extensions]).toEqual([null, { code: "FORBIDDEN" }]);
    }
  });

  it("are listed for their publisher, and all of them for the operator", async () => {
    const list = async (token: string, args = "first: 100") => {
      const { data, errors } = await app.ask(
        `{ tokens(${args}) { edges { node { id publisher { slug } } } } }`,
        {},
        token,
      );
      expect(errors).toEqual([]);
      return (data?.["tokens"] as { edges: { node: { publisher: { slug: string } | null } }[] }).edges.map(
        ({ node }) => node.publisher?.slug ?? null,
      );
    };
    expect(new Set(await list(admin))).toEqual(new Set(["north-field"]));
    expect(new Set(await list(operator))).toEqual(new Set([null, "north-field", "south-field"]));
    expect(new Set(await list(operator, `publisher: "south-field"`))).toEqual(new Set(["south-field"]));
    const { errors } = await app.ask(`{ tokens(after: "x") { edges { cursor } } }`, {}, admin);
    expect(errors[0]?.extensions["code"]).toBe("BAD_SHAPE");
    const unknown = await app.ask(`{ tokens(publisher: "nobody") { edges { cursor } } }`, {}, operator);
    expect(unknown.errors[0]?.extensions["code"]).toBe("UNKNOWN_PUBLISHER");
  });

  it("leave one line in the audit trail for each write, with the request it was done in", async () => {
    const before = await entries({ first: 100 });
    const input = { publisher: "north-field", name: "traced", scopes: ["WRITE"] };
    const answer = await request(app.app.server)
      .post("/graphql")
      .set({ authorization: `Bearer ${operator}`, "x-request-id": "trace-1" })
      .send({ query: createToken, variables: { input } });
    const { id } = answer.body.data.createToken.token as { id: string };
    const after = await entries({ first: 100 });
    expect(after.slice(1)).toEqual(before);
    expect(after[0]).toEqual({
      at: "2026-03-01T09:00:00.000Z",
      action: "CREATE_TOKEN",
      subjectKind: "TOKEN",
      subject: id,
      before: null,
      after: null,
      requestId: "trace-1",
      publisher: { slug: "north-field" },
      by: { kind: "OPERATOR", token: idOf(operator), name: "operator ADMIN" },
    });
  });

  it("show a publisher its own trail, and nothing of the operator's tokens", async () => {
    const own = await entries({ first: 100 }, admin);
    expect(own.length).toBeGreaterThan(2);
    for (const entry of own) expect(entry).toMatchObject({ publisher: { slug: "north-field" } });
    expect(own).toContainEqual(expect.objectContaining({ by: { kind: "OPERATOR", token: null, name: null } }));
    expect(own).toContainEqual(expect.objectContaining({ by: { kind: "PROGRAM", token: null, name: "test" } }));
    expect(own).toContainEqual(
      expect.objectContaining({ by: { kind: "TOKEN", token: idOf(admin), name: "north-field ADMIN" } }),
    );
    const walked: Entry[] = [];
    let after: string | null = null;
    do {
      const { data } = await app.ask(trail, { first: 2, after }, admin);
      const page = data?.["auditTrail"] as {
        edges: { node: Entry }[];
        pageInfo: { endCursor: string; hasNextPage: boolean };
      };
      walked.push(...page.edges.map(({ node }) => node));
      after = page.pageInfo.hasNextPage ? page.pageInfo.endCursor : null;
    } while (after !== null);
    expect(walked).toEqual(own);
  });

  it("cannot have their trail changed, whoever is at the database", async () => {
    for (const sql of [
      "UPDATE audit_entries SET action = 'x'",
      "DELETE FROM audit_entries",
      "TRUNCATE audit_entries",
    ]) {
      await expect(database.sql.query(sql)).rejects.toThrow(/only added to/);
    }
  });
});
