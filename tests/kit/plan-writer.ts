import { readSeeds } from "../../src/app/setup/read-seeds.js";
import type { OpenedDatabase } from "../../src/persistence/database/opened-database.js";
import { createToken } from "../../src/services/access/create-token.js";
import type { Scope } from "../../src/services/access/actor.js";

export const publisher = "third-gate-allotments";

/** A plan document of two foods, whose title tells it from others. */
export const planText = (slug: string, title: string): string => `kind: plan
publisher: ${publisher}
slug: ${slug}
title: ${title}
locale: en-GB
measured-in: metric
serves: 2
meals:
  - slug: salad
    title: Salad
    day: 0
    lines:
      - { food: carrot, amount: 300 g }
      - { food: lemon, amount: 1 }
`;

const save = `mutation ($input: SaveDraftInput!) { savePlanDraft(input: $input) { draft { version } problems { code message } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) {
  plan { revision title } problems { code message } } }`;
const read = `query ($slug: String!) { planDraft(publisher: "${publisher}", slug: $slug) { version } }`;

type Problems = readonly { readonly code: string; readonly message: string }[];

interface Outcome {
  readonly problems: Problems;
}

/** The service answered that it did not do it, and why. */
export class NotTaken extends Error {
  override readonly name = "NotTaken";

  constructor(
    what: string,
    readonly problems: Problems,
  ) {
    super(`not ${what}: ${JSON.stringify(problems)}`);
  }
}

/** A publisher, the demo's foods, and a token of that publisher: what writers need. */
export async function prepareWriting({ data }: Pick<OpenedDatabase, "data">): Promise<string> {
  await data.publishers.save({ slug: publisher, name: "Third Gate" });
  await data.foods.save((await readSeeds("seeds")).foods);
  return giveToken({ data }, publisher, ["READ_DRAFTS", "WRITE", "PUBLISH", "IMPORT"]);
}

/** The text of a new token; `owner` null: the operator's. */
export async function giveToken(
  { data }: Pick<OpenedDatabase, "data">,
  owner: string | null,
  scopes: readonly Scope[],
): Promise<string> {
  const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const made = await createToken(
    { data, clock: () => new Date(), log, knownRules: new Map() },
    { actor: { kind: "PROGRAM", name: "tests" }, requestId: null },
    { publisher: owner, name: "tests", scopes, expiresAt: null },
  );
  if (!made.ok || made.value.text === null) throw new Error("no token");
  return made.value.text;
}

/** Asks a service by GraphQL; `token` null: as anyone. Rejects with an Error where it refused, with what fetch throws where it is gone. */
export async function askGraphql<T>(
  address: string,
  token: string | null,
  query: string,
  variables: object,
): Promise<T> {
  const response = await fetch(`${address}/graphql`, {
    method: "POST",
    headers: {
      "content-type": "application/json",
      ...(token === null ? {} : { authorization: `Bearer ${token}` }),
    },
    body: JSON.stringify({ query, variables }),
  });
  const isJson = response.headers.get("content-type")?.includes("json") === true;
  if (!isJson) throw new Error(`${response.status}: ${await response.text()}`);
  const { data, errors } = (await response.json()) as { data: T; errors?: unknown };
  if (errors !== undefined) throw new Error(`refused: ${JSON.stringify(errors)}`);
  return data;
}

/** The version a draft is at; null: there is none. */
export async function draftVersion(address: string, token: string, slug: string): Promise<number | null> {
  const { planDraft } = await askGraphql<{ planDraft: { version: number } | null }>(address, token, read, { slug });
  return planDraft?.version ?? null;
}

/** Saves a draft; its new version. */
export async function savePlan(
  address: string,
  token: string,
  { slug, title, ...input }: { slug: string; title: string; expectedVersion: number | null; idempotencyKey?: string },
): Promise<number> {
  const text = planText(slug, title);
  const { savePlanDraft } = await askGraphql<{ savePlanDraft: Outcome & { draft: { version: number } | null } }>(
    ...([address, token, save] as const),
    { input: { publisher, text, ...input } },
  );
  if (savePlanDraft.draft === null) throw new NotTaken("saved", savePlanDraft.problems);
  return savePlanDraft.draft.version;
}

/** Publishes a draft; the number of its revision. */
export async function publishPlan(
  address: string,
  token: string,
  input: { slug: string; expectedVersion: number; idempotencyKey?: string },
): Promise<number> {
  const { publishPlan: done } = await askGraphql<{ publishPlan: Outcome & { plan: { revision: number } | null } }>(
    ...([address, token, publish] as const),
    { input: { publisher, ...input } },
  );
  if (done.plan === null) throw new NotTaken("published", done.problems);
  return done.plan.revision;
}
