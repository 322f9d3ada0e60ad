import { randomUUID } from "node:crypto";
import {
  isInterfaceType,
  isLeafType,
  isNonNullType,
  isObjectType,
  getNamedType,
  type GraphQLField,
  type GraphQLNamedType,
} from "graphql";
import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { createSchema } from "../../../src/graphql/schema.js";
import { endpoints } from "../../../src/rest/endpoints.js";
import { scopes, type Scope } from "../../../src/services/access/actor.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { smallBundle } from "../../persistence/small-bundle.js";
import { openTestApp, type Answer, type TestApp } from "../open-test-app.js";

/** What everything is called that only north-field may see. */
const marker = "not-for-others";

const own = "north-field";

/** Things of north-field, or (`there` false) names and ids of the same shape that are nobody's. */
interface Subject {
  readonly publisher: string;
  readonly token: string;
  readonly webhook: string;
  readonly delivery: string;
  readonly run: string;
  readonly preview: string;
  readonly scheduled: string;
}

type Arguments = Readonly<Record<string, unknown>>;

/**
 * Who may: everybody; who has the scope for that publisher; who has the scope, while an id of another publisher's is unknown
 * (`hidden`: answers null); who has the scope, each for what is its own (`each`); or the operator alone.
 */
type Access =
  | "PUBLIC"
  | { readonly own: Scope | readonly Scope[] }
  | { readonly byId: Scope | readonly Scope[] }
  | { readonly hidden: Scope }
  | { readonly each: Scope }
  | { readonly operator: Scope };

interface Row {
  readonly access: Access;
  readonly asks: (subject: Subject) => readonly Arguments[];
}

/** Known to all who ask here; what it names is not. */
const slug = "hidden-week";
const text = `title: ${marker}`;
const draft = ({ publisher }: Subject): readonly Arguments[] => [{ publisher, slug }];
const list = ({ publisher }: Subject): readonly Arguments[] => [{ publisher }];
const input = (of: (subject: Subject) => Arguments) => (subject: Subject) => [{ input: of(subject) }];
const version = 999;

const rows: Readonly<Record<string, Row>> = {
  // Published: for everybody. What is a draft, a token or a webhook is found by none of them.
  plan: { access: "PUBLIC", asks: draft },
  plans: {
    access: "PUBLIC",
    asks: ({ publisher }) => [{ first: 100 }, { filter: { publisher } }, { filter: { search: marker } }],
  },
  component: { access: "PUBLIC", asks: draft },
  food: { access: "PUBLIC", asks: () => [{ slug }] },
  foods: { access: "PUBLIC", asks: () => [{ first: 100 }, { filter: { search: marker } }] },
  shopping: { access: "PUBLIC", asks: ({ publisher }) => [{ plans: [{ publisher, slug, servings: 2 }] }] },
  shoppingList: { access: "PUBLIC", asks: ({ publisher }) => [{ plans: [{ publisher, slug, servings: 2 }] }] },
  plansBySlug: { access: "PUBLIC", asks: ({ publisher }) => [{ plans: [{ publisher, slug }] }] },
  publisher: { access: "PUBLIC", asks: ({ publisher }) => [{ slug: publisher }] },
  publishers: { access: "PUBLIC", asks: () => [{ first: 100 }] },
  nodes: { access: "PUBLIC", asks: () => [{ ids: [Buffer.from(`Food:${slug}`).toString("base64url")] }] },
  panFactor: { access: "PUBLIC", asks: () => [{ from: { diameter: 20 }, to: { diameter: 24 } }] },
  ruleSets: { access: "PUBLIC", asks: () => [{}] },
  vocabulary: { access: "PUBLIC", asks: () => [{}] },
  readLines: { access: "PUBLIC", asks: () => [{ texts: ["2 cups of anything"], locale: "en", measures: "METRIC" }] },
  changes: { access: "PUBLIC", asks: ({ publisher }) => [{}, { publisher }] },
  node: {
    access: "PUBLIC",
    asks: ({ token, webhook, delivery }) =>
      [
        `AccessToken:${token}`,
        `Webhook:${webhook}`,
        `WebhookDelivery:${delivery}`,
        `Plan:${webhook}`,
        `Publisher:${delivery}`,
      ].map((id) => ({ id: Buffer.from(id).toString("base64url") })),
  },
  viewer: { access: "PUBLIC", asks: () => [{}] },
  catalogueFood: { access: "PUBLIC", asks: () => [{ ndbNo: slug }] },
  catalogueFoods: { access: "PUBLIC", asks: () => [{ search: marker }] },

  drafts: { access: { own: "READ_DRAFTS" }, asks: list },
  planDraft: { access: { own: "READ_DRAFTS" }, asks: draft },
  componentDraft: { access: { own: "READ_DRAFTS" }, asks: draft },
  foodDraft: { access: { own: "READ_DRAFTS" }, asks: draft },
  translationDraft: { access: { own: "READ_DRAFTS" }, asks: draft },
  packsDraft: { access: { own: "READ_DRAFTS" }, asks: draft },
  compare: { access: { own: "READ_DRAFTS" }, asks: draft },
  checkDraft: { access: { own: "READ_DRAFTS" }, asks: draft },
  preview: { access: "PUBLIC", asks: ({ publisher }) => [{ publisher, slug, secret: marker }] },
  previewLinks: { access: { own: "READ_DRAFTS" }, asks: list },
  scheduled: { access: { own: "READ_DRAFTS" }, asks: list },
  checkDocuments: {
    access: { own: "READ_DRAFTS" },
    asks: ({ publisher }) => [{ publisher, texts: [{ name: "x", text }] }],
  },
  uploadedImages: {
    access: { own: ["WRITE", "READ_DRAFTS"] },
    asks: ({ publisher }) => [{ publisher, files: ["soup.jpg"] }],
  },
  removeImage: { access: { own: "PUBLISH" }, asks: input(({ publisher }) => ({ publisher, hash: "0".repeat(64) })) },
  feeds: { access: { own: "IMPORT" }, asks: list },
  feed: { access: { own: "IMPORT" }, asks: draft },
  importRuns: { access: { own: "IMPORT" }, asks: ({ publisher }) => [{ publisher, feed: slug }] },
  importRun: { access: { hidden: "IMPORT" }, asks: ({ run: id }) => [{ id }] },
  quarantinedRows: { access: { hidden: "IMPORT" }, asks: ({ run }) => [{ run }] },
  morningReport: { access: { each: "IMPORT" }, asks: () => [{}] },
  importReport: { access: { hidden: "IMPORT" }, asks: ({ run }) => [{ run }] },
  tokens: { access: { own: "ADMIN" }, asks: list },
  planRequests: { access: { own: "READ_DRAFTS" }, asks: list },
  auditTrail: { access: { own: "ADMIN" }, asks: list },
  webhooks: { access: { own: ["ADMIN", "WEBHOOKS"] }, asks: list },
  webhookDeliveries: {
    access: { byId: ["ADMIN", "WEBHOOKS"] },
    asks: ({ webhook }) => [{ webhook }, { webhook, state: "DEAD" }],
  },

  saveDocuments: {
    access: { own: "WRITE" },
    asks: input(({ publisher }) => ({ publisher, texts: [{ name: "x", text }] })),
  },
  savePlanDraft: { access: { own: "WRITE" }, asks: input(({ publisher }) => ({ publisher, text })) },
  saveComponentDraft: { access: { own: "WRITE" }, asks: input(({ publisher }) => ({ publisher, text })) },
  saveFoodDraft: { access: { own: "WRITE" }, asks: input(({ publisher }) => ({ publisher, text })) },
  adoptFood: { access: { own: "WRITE" }, asks: input(({ publisher }) => ({ publisher, ndbNo: "11233" })) },
  discardDraft: {
    access: { own: "WRITE" },
    asks: input(({ publisher }) => ({ publisher, slug, kind: "PLAN", expectedVersion: version })),
  },
  publishPlan: {
    access: { own: "PUBLISH" },
    asks: input(({ publisher }) => ({ publisher, slug, expectedVersion: version })),
  },
  correctPlan: {
    access: { own: "PUBLISH" },
    asks: input(({ publisher }) => ({ publisher, slug, expectedVersion: version, changeNote: "x" })),
  },
  withdrawPlan: {
    access: { own: "PUBLISH" },
    asks: input(({ publisher }) => ({ publisher, slug, revision: version, reason: "x" })),
  },
  unpublishPlan: { access: { own: "PUBLISH" }, asks: input(({ publisher }) => ({ publisher, slug, reason: "x" })) },
  schedulePublication: {
    access: { own: "PUBLISH" },
    asks: input(({ publisher }) => ({
      publisher,
      slug,
      expectedVersion: version,
      at: "2026-12-24T06:00",
      zone: "UTC",
    })),
  },
  scheduleWithdrawal: {
    access: { own: "PUBLISH" },
    asks: input(({ publisher }) => ({ publisher, slug, reason: "x", at: "2026-12-24T06:00", zone: "UTC" })),
  },
  changeScheduled: {
    access: { byId: "PUBLISH" },
    asks: input(({ scheduled: id }) => ({ id, at: "2026-12-24T06:00", zone: "UTC" })),
  },
  cancelScheduled: { access: { byId: "PUBLISH" }, asks: input(({ scheduled: id }) => ({ id })) },
  createPreviewLink: { access: { own: "READ_DRAFTS" }, asks: input(({ publisher }) => ({ publisher, slug })) },
  revokePreviewLink: { access: { byId: "READ_DRAFTS" }, asks: input(({ preview: id }) => ({ id })) },
  createToken: {
    access: { own: "ADMIN" },
    asks: input(({ publisher }) => ({ publisher, name: "x", scopes: ["WRITE"] })),
  },
  revokeToken: { access: { byId: "ADMIN" }, asks: input(({ token: id }) => ({ id })) },
  createWebhook: {
    access: { own: ["ADMIN", "WEBHOOKS"] },
    asks: input(({ publisher }) => ({ publisher, url: "https://hooks.example.org/" })),
  },
  rotateWebhookSecret: { access: { byId: ["ADMIN", "WEBHOOKS"] }, asks: input(({ webhook: id }) => ({ id })) },
  updateWebhook: {
    access: { byId: ["ADMIN", "WEBHOOKS"] },
    asks: input(({ webhook: id }) => ({ id, enabled: false })),
  },
  deleteWebhook: { access: { byId: ["ADMIN", "WEBHOOKS"] }, asks: input(({ webhook: id }) => ({ id })) },
  replayWebhookDelivery: { access: { byId: ["ADMIN", "WEBHOOKS"] }, asks: input(({ delivery: id }) => ({ id })) },

  saveFeed: {
    access: { own: "IMPORT" },
    asks: input(({ publisher }) => ({ publisher, slug, kind: "DOCUMENTS", settings: { source: marker } })),
  },
  startImport: { access: { own: "IMPORT" }, asks: input(({ publisher }) => ({ publisher, slug, dryRun: true })) },
  cancelImport: { access: { byId: "IMPORT" }, asks: input(({ run }) => ({ run })) },
  undoImport: { access: { byId: "IMPORT" }, asks: input(({ run }) => ({ run })) },
  replayImport: { access: { byId: "IMPORT" }, asks: input(({ run }) => ({ run, dryRun: true })) },
  settleRow: { access: { byId: "IMPORT" }, asks: input(({ run }) => ({ run, line: 1 })) },
  removeFeed: { access: { own: "IMPORT" }, asks: input(({ publisher }) => ({ publisher, slug: "nothing-here" })) },

  createPublisher: { access: { operator: "ADMIN" }, asks: input(() => ({ slug: "x y", name: "x" })) },
  updatePublisher: { access: { operator: "ADMIN" }, asks: input(() => ({ slug: "nobody", name: "x" })) },
  loadRuleSet: { access: { operator: "ADMIN" }, asks: input(() => ({ files: [] })) },
  saveFoods: { access: { operator: "WRITE" }, asks: input(() => ({ texts: [] })) },
};

const roles = [
  "nobody",
  "own reader",
  "own writer",
  "own publisher",
  "own importer",
  "own admin",
  "own webhooks",
  "other with every scope",
  "operator",
  "operator without scope",
  "revoked",
  "expired",
] as const;
type Role = (typeof roles)[number];

const held: Readonly<
  Record<Exclude<Role, "nobody">, { readonly of: string | null; readonly scopes: readonly Scope[] }>
> = {
  "own reader": { of: own, scopes: ["READ_DRAFTS"] },
  "own writer": { of: own, scopes: ["WRITE"] },
  "own publisher": { of: own, scopes: ["PUBLISH"] },
  "own importer": { of: own, scopes: ["IMPORT"] },
  "own admin": { of: own, scopes: ["ADMIN"] },
  "own webhooks": { of: own, scopes: ["WEBHOOKS"] },
  "other with every scope": { of: "south-field", scopes },
  operator: { of: null, scopes },
  "operator without scope": { of: null, scopes: [] },
  revoked: { of: own, scopes },
  expired: { of: own, scopes },
};

/** Addresses of REST that answer with what is hidden, or write. */
const rights: Readonly<Record<string, Access>> = {
  "/v1/publishers/{publisher}/export": { own: "READ_DRAFTS" },
  "/v1/publishers/{publisher}/plan-requests": { own: "READ_DRAFTS" },
  "/v1/publishers/{publisher}/import": { operator: "ADMIN" },
  "/v1/publishers/{publisher}/foods/adopt": { own: "WRITE" },
};

const unknown: readonly string[] = [
  "UNKNOWN_TOKEN",
  "UNKNOWN_WEBHOOK",
  "UNKNOWN_DELIVERY",
  "UNKNOWN_PREVIEW_LINK",
  "UNKNOWN_SCHEDULED",
];

type Expected = "ANSWER" | "UNAUTHENTICATED" | "FORBIDDEN" | "UNKNOWN" | "NOTHING" | "REFUSED";

/** The rule, written a second time and the other way round: from the role to what it gets. */
function expected(role: Role, access: Access): Expected {
  if (role === "revoked" || role === "expired") return "REFUSED";
  if (access === "PUBLIC") return "ANSWER";
  if (role === "nobody") return "UNAUTHENTICATED";
  const { of, scopes: has } = held[role];
  const any = [Object.values(access)[0] as Scope | readonly Scope[]].flat();
  if (!any.some((scope) => has.includes(scope))) return "FORBIDDEN";
  if (of === null || "each" in access) return "ANSWER";
  if ("operator" in access) return "FORBIDDEN";
  if (of === own) return "ANSWER";
  if ("hidden" in access) return "NOTHING";
  return "byId" in access ? "UNKNOWN" : "FORBIDDEN";
}

const schema = createSchema();
const operations = [
  ...Object.values(schema.getQueryType()?.getFields() ?? {}).map((field) => ({ kind: "query", field })),
  ...Object.values(schema.getMutationType()?.getFields() ?? {}).map((field) => ({ kind: "mutation", field })),
];

/** Every field that can be asked without an argument, so that whatever is told is told in the answer. */
function selection(type: GraphQLNamedType, depth: number): string {
  if (!isObjectType(type) && !isInterfaceType(type)) return "";
  const fields = Object.values(type.getFields()).flatMap((field): readonly string[] => {
    if (field.args.some(({ type: of, defaultValue }) => isNonNullType(of) && defaultValue === undefined)) return [];
    const inner = getNamedType(field.type);
    if (isLeafType(inner)) return [field.name];
    if (depth === 0) return [];
    const chosen = selection(inner, depth - 1);
    return chosen === "" ? [] : [`${field.name} ${chosen}`];
  });
  return fields.length === 0 ? "" : `{ ${fields.join(" ")} }`;
}

function documentOf(kind: string, field: GraphQLField<unknown, unknown>, given: Arguments): string {
  const used = field.args.filter(({ name }) => given[name] !== undefined);
  const declared = used.map(({ name, type }) => `$${name}: ${String(type)}`).join(", ");
  const passed = used.map(({ name }) => `${name}: $${name}`).join(", ");
  const type = getNamedType(field.type);
  // Deep enough for what hangs on an entry of a connection.
  const depth = type.name.endsWith("Connection")
    ? type.name === "PlanConnection" || type.name === "FoodConnection"
      ? 2
      : 3
    : 1;
  return `${kind} ${declared && `(${declared})`} { ${field.name} ${passed && `(${passed})`} ${selection(type, depth)} }`;
}

describeOnBothDatabases("every operation, asked by every role", (open) => {
  let app: TestApp;
  let database: TestDatabase;
  const tokens = new Map<Role, string>();

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data);
    const { data, clock } = app.deps;
    for (const publisher of [own, "south-field"]) await data.publishers.save({ slug: publisher, name: publisher });
    const bundle = smallBundle({ publisher: own, slug });
    await data.plans.saveDraft({ ...bundle.plan, title: marker, summary: marker }, null);
    const caller = { kind: "PROGRAM", name: "test" } as const;
    await data.auditTrail.add({
      ...{
        at: clock(),
        author: caller,
        publisher: own,
        action: "SAVE_DRAFTS",
        subjectKind: "PLAN_DRAFT",
        subject: marker,
      },
      ...{ before: null, after: 1, requestId: marker },
    });
    for (const role of roles.filter((each) => each !== "nobody")) {
      const { of, scopes: has } = held[role];
      const until = role === "expired" ? new Date(clock().getTime() + 1) : undefined;
      tokens.set(role, await app.tokenFor(of, has.length > 0 ? has : ["IMPORT"], until));
    }
    await data.accessTokens.revoke(String(tokens.get("revoked")).slice(11, 19), clock());
    await database.sql.query("UPDATE access_tokens SET expires_at = created_at WHERE expires_at IS NOT NULL");
    await database.sql.query("UPDATE access_tokens SET scopes = '{}' WHERE id = $1", [
      String(tokens.get("operator without scope")).slice(11, 19),
    ]);
  });
  afterAll(() => app.close());

  /** A token, a webhook and a delivery of north-field that nobody used yet. */
  const fresh = async (): Promise<Subject> => {
    const { data, clock } = app.deps;
    const token = randomUUID().slice(0, 8);
    await data.accessTokens.create({
      ...{ id: token, publisher: own, name: marker, scopes: ["WRITE"], secretHash: marker, createdAt: clock() },
      ...{ createdBy: { kind: "PROGRAM", name: marker }, expiresAt: null },
    });
    const url = `https://${marker}.example.org/`;
    const webhook = await data.webhooks.create({ publisher: own, url, kinds: [], secret: marker, createdAt: clock() });
    const { rows: made } = await database.sql.query(
      `WITH r AS (SELECT publisher_id, id FROM revisions LIMIT 1),
        c AS (INSERT INTO changes (publisher_id, kind, revision_id, at) SELECT publisher_id, 'PLAN_PUBLISHED', id, now() FROM r RETURNING *)
      INSERT INTO webhook_deliveries (publisher_id, webhook_id, change_id, due_at, created_at, error)
        SELECT publisher_id, $1::uuid, id, now(), now(), '${marker}' FROM c RETURNING id`,
      [webhook],
    );
    const scheduled = await data.scheduled.add({
      ...{
        publisher: own,
        slug: marker,
        kind: "WITHDRAW",
        version: null,
        changeNote: null,
        reason: marker,
        bundle: null,
      },
      ...{ dueAt: clock(), localTime: "2026-12-24T06:00", zone: "UTC", inForce: null, createdAt: clock() },
      createdBy: { kind: "PROGRAM", name: marker },
    });
    const until = new Date(clock().getTime() + 1_000);
    const preview = await data.previewLinks.create({
      ...{ publisher: own, slug: marker, secretHash: randomUUID(), createdAt: clock(), expiresAt: until },
      createdBy: { kind: "PROGRAM", name: marker },
    });
    return {
      publisher: own,
      token,
      webhook,
      delivery: String(made[0]?.["id"]),
      run: await freshRun(),
      preview,
      scheduled,
    };
  };

  /** An import of north-field that has ended, with something put aside. */
  const freshRun = async (): Promise<string> => {
    const { data, clock } = app.deps;
    const settings = { source: marker, place: { kind: "UPLOAD" }, measures: "METRIC", columns: {} };
    const feed = await data.feeds.save({
      ...{ publisher: own, slug, kind: "DOCUMENTS", cron: null, zone: "UTC", enabled: true },
      settings: { ...settings, delimiter: null, locale: null, currency: null, region: null, publish: false },
    });
    const { rows: ended } = await database.sql.query(
      `INSERT INTO import_runs (feed_id, kind, state, asked_by, created_at, ended_at)
       VALUES ($1, 'LOAD', 'CANCELLED', '${marker}', $2, $2) RETURNING id`,
      [feed, clock().toISOString()],
    );
    const run = String(ended[0]?.["id"]);
    await database.sql.query("INSERT INTO quarantined_rows (run_id, line, raw, problems) VALUES ($1, 1, $2, '[]')", [
      run,
      marker,
    ]);
    return run;
  };

  const nowhere = (): Subject => ({
    publisher: "nobody",
    token: randomUUID().slice(0, 8),
    webhook: randomUUID(),
    delivery: randomUUID(),
    run: randomUUID(),
    preview: randomUUID(),
    scheduled: randomUUID(),
  });

  const outcome = ({ status, errors, data, text: body }: Answer): string => {
    if (status === 401) return "REFUSED";
    const problems = Object.values(data ?? {}).flatMap((payload) =>
      payload !== null && typeof payload === "object" && "problems" in payload
        ? (payload.problems as { code: string }[])
        : [],
    );
    const codes = [...errors.map(({ extensions }) => String(extensions["code"])), ...problems.map(({ code }) => code)];
    expect(codes, body).not.toContain("INTERNAL_SERVER_ERROR");
    expect(codes, body).not.toContain("GRAPHQL_VALIDATION_FAILED");
    expect(codes, body).not.toContain("BAD_USER_INPUT");
    return (
      codes.find((code) => code === "UNAUTHENTICATED" || code === "FORBIDDEN") ??
      (codes.some((code) => [...unknown, "UNKNOWN_RUN"].includes(code))
        ? "UNKNOWN"
        : codes.length === 0 && Object.values(data ?? {}).every((found) => found === null)
          ? "NOTHING"
          : "ANSWER")
    );
  };

  /** The answer with what the caller itself sent taken out, to compare two callers' answers. */
  const without = (names: readonly string[], body: string): string =>
    names.reduce((rest, name) => rest.replaceAll(name, "…"), body);

  it("is the whole schema: an operation without a row here fails", () => {
    expect(Object.keys(rows).toSorted()).toEqual(operations.map(({ field }) => field.name).toSorted());
  });

  it("has something of north-field to hide", async () => {
    await app.deps.data.revisions.publish(smallBundle({ publisher: own, slug: "published" }), app.deps.clock());
    const subject = await fresh();
    const admin = tokens.get("operator");
    const seen = await app.ask(
      `query ($w: ID!, $p: String!) { tokens(publisher: $p) { edges { node { name } } } webhooks(publisher: $p) { edges { node { url } } }
        drafts(publisher: $p) { edges { node { title } } } auditTrail(publisher: $p) { edges { node { requestId } } }
        webhookDeliveries(webhook: $w) { edges { node { error } } } }`,
      { w: subject.webhook, p: own },
      admin,
    );
    expect(seen.errors).toEqual([]);
    for (const found of Object.values(seen.data ?? {})) expect(JSON.stringify(found)).toContain(marker);
  });

  for (const { kind, field } of operations) {
    const row = rows[field.name];
    if (row === undefined) continue;
    it.each(roles)(`${field.name} by %s`, async (role) => {
      const wanted = expected(role, row.access);
      const subject = await fresh();
      const nothing = nowhere();
      for (const [index, given] of row.asks(subject).entries()) {
        const answer = await app.ask(documentOf(kind, field, given), given, tokens.get(role));
        const got = outcome(answer);
        // What is public, and a publisher's own of which there is none, may be nothing.
        const mayBeNothing =
          wanted === "ANSWER" && got === "NOTHING" && (typeof row.access === "string" || "own" in row.access);
        if (!mayBeNothing) expect(got, answer.text).toBe(wanted);
        if (typeof row.access !== "string" && "each" in row.access && role === "other with every scope")
          expect(answer.text).not.toContain(slug);
        if (wanted === "ANSWER" && row.access !== "PUBLIC") continue;
        expect(answer.text).not.toContain(marker);
        // The same, to the letter, where there is nothing at all. Lists tell of what others published meanwhile, and which publishers there are is public.
        const other = row.asks(nothing)[index] ?? {};
        const twin = await app.ask(documentOf(kind, field, other), other, tokens.get(role));
        if (!["changes", "plans", "publisher", "publishers"].includes(field.name)) {
          const names = [...Object.values(subject), ...Object.values(nothing)] as string[];
          expect(without(names, answer.text)).toBe(without(names, twin.text));
        }
      }
    });
  }

  it.each(roles)("every address of REST gives %s what everybody may have, and its own", async (role) => {
    const { run } = await fresh();
    const values: Readonly<Record<string, string>> = {
      publisher: own,
      slug,
      plan: slug,
      revision: "1",
      feed: slug,
      run,
    };
    const token = tokens.get(role);
    const wanted = expected(role, { own: "IMPORT" });
    for (const { method, path } of endpoints) {
      const body = method === "POST" ? { plans: [{ publisher: own, plan: slug, servings: 2 }] } : undefined;
      const asked = async (named: Readonly<Record<string, string>>, headers: Readonly<Record<string, string>>) => {
        const address = path.replaceAll(/\{(\w+)\}/g, (_, name: string) => named[name] ?? slug);
        const sent = request(app.app.server)
          [method === "POST" ? "post" : "get"](address)
          .set({ host: "plans.example", ...headers });
        const { status, text: got } = await (body === undefined ? sent : sent.send(body));
        return { status, text: without([address], got.replaceAll(/"requestId":"[^"]*"/g, "")) };
      };
      const bearer = token === undefined ? {} : { authorization: `Bearer ${token}` };
      if (path.endsWith("/stream")) {
        // All of a stream never comes. What it tells is what the list of changes tells.
        const stream = await app.app.inject({ url: path, headers: bearer, payloadAsStream: true });
        expect(stream.statusCode, path).toBe(wanted === "REFUSED" ? 401 : 200);
        stream.raw.res.destroy();
        continue;
      }
      const answer = await asked(values, bearer);
      if (wanted === "REFUSED") expect(answer.status, path).toBe(401);
      // Feeds and their imports are for tokens; those without a publisher are the operator's.
      else if (path.includes("/feeds/")) {
        const ofOperator = !path.includes("{publisher}");
        const mine = wanted === "ANSWER" && (!ofOperator || role === "operator");
        // An import of others is unknown to whoever may ask for imports at all.
        const mayAsk = role !== "nobody" && held[role].scopes.includes("IMPORT");
        const refusal = role === "nobody" ? 401 : mayAsk && path.includes("{run}") ? 404 : 403;
        if (!mine) expect(answer.status, path).toBe(refusal);
        else expect([401, 403], path).not.toContain(answer.status);
        if (mine) continue;
        // The same, to the letter, where there is no such feed.
        expect(answer, path).toEqual(await asked({ ...values, feed: "nothing-here", run: randomUUID() }, bearer));
      } else if (path.includes("/preview-links") || path.endsWith("/scheduled")) {
        const asks = expected(role, { own: "READ_DRAFTS" });
        // A link of others is unknown to whoever may read drafts at all.
        const mayAsk = role !== "nobody" && held[role].scopes.includes("READ_DRAFTS");
        const refusal = mayAsk && path.includes("{link}") ? 404 : 403;
        if (asks === "ANSWER") expect([401, 403], path).not.toContain(answer.status);
        else expect(answer.status, path).toBe(role === "nobody" ? 401 : refusal);
        if (asks === "ANSWER") continue;
      } else if (path === "/v1/imports/report") {
        const asks = expected(role, { each: "IMPORT" });
        expect(answer.status, path).toBe({ ANSWER: 200, UNAUTHENTICATED: 401 }[asks as string] ?? 403);
        expect(answer.text.includes(`"feed":"${slug}"`), path).toBe(
          asks === "ANSWER" && role !== "other with every scope",
        );
      } else if (path.endsWith("/images")) {
        const asks = expected(role, { own: "WRITE" });
        // What is sent is no picture.
        expect(answer.status, path).toBe({ ANSWER: 422, UNAUTHENTICATED: 401 }[asks as string] ?? 403);
      } else if (path in rights) {
        const asks = expected(role, rights[path] as Access);
        if (asks === "ANSWER") {
          expect([401, 403], path).not.toContain(answer.status);
          continue;
        }
        expect(answer.status, path).toBe(asks === "UNAUTHENTICATED" ? 401 : 403);
      } else expect(answer, path).toEqual(await asked(values, {}));
      expect(answer.text, path).not.toContain(marker);
    }
  });

  it("without naming a publisher, shows a publisher's admin its own and nothing else", async () => {
    await fresh();
    for (const name of ["tokens", "auditTrail", "webhooks"]) {
      const field = schema.getQueryType()?.getFields()[name];
      if (field === undefined) throw new Error(`there is no ${name}`);
      const answer = await app.ask(documentOf("query", field, {}), {}, tokens.get("other with every scope"));
      expect(answer.errors).toEqual([]);
      expect(answer.text).not.toContain(marker);
      expect(answer.text).not.toContain(own);
    }
  });
});
