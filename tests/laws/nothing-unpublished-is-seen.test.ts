import fc from "fast-check";
import { pino } from "pino";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Actor, Caller } from "../../src/services/access/actor.js";
import { anyone } from "../../src/services/access/actor.js";
import { createToken } from "../../src/services/access/create-token.js";
import type { Deps, DraftKind } from "../../src/services/deps.js";
import { checkDocuments } from "../../src/services/drafts/check/check-documents.js";
import { discardDraft } from "../../src/services/drafts/discard-draft.js";
import { listDrafts } from "../../src/services/drafts/list-drafts.js";
import { saveDocuments } from "../../src/services/drafts/save-documents.js";
import { findOwnFood } from "../../src/services/foods/find-own-food.js";
import { listFoods } from "../../src/services/foods/list-foods.js";
import { readTextLines } from "../../src/services/drafts/read-text-lines.js";
import { publishDraft } from "../../src/services/plans/publish-draft.js";
import { loadShippedRules } from "../../src/services/rules/load-rule-set.js";
import { rules } from "../graphql/open-test-app.js";
import { describeOnEmbedded, type TestDatabase } from "../kit/databases.js";
import { food } from "../kit/builders.js";

/**
 * Law 9: nothing unpublished of one publisher is seen by another. Two publishers do the same kinds of things to foods and packs of the
 * same names, in any order: some 1,000 operations here, and as many as asked with `npm run laws -- --operations 10000`. Whatever the second is told has to be what it is told in a service where the first does nothing, and
 * nothing that anybody but the first is told may hold a word of the first's that no plan has published.
 */
const slugs = ["oca", "skirret", "kale"] as const;
const shared = ["kale"] as const;

type Act =
  | { readonly kind: "SAVE"; readonly slug: string; readonly base: string | null }
  | { readonly kind: "PLAN" | "CHECK"; readonly eats: readonly string[] }
  | { readonly kind: "PACKS" | "DISCARD" | "DISCARD_PACKS" | "LOOK"; readonly slug: string }
  | { readonly kind: "PUBLISH" | "LIST" };

const slug = fc.constantFrom(...slugs);
const eats = fc.uniqueArray(slug, { minLength: 1, maxLength: 2 });
const act: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ kind: fc.constant("SAVE" as const), slug, base: fc.constantFrom(null, ...shared, "oca") }),
  },
  { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom("PLAN" as const, "CHECK" as const), eats }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constantFrom("DISCARD" as const, "LOOK" as const), slug }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("PACKS" as const), slug }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("DISCARD_PACKS" as const), slug }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom("PUBLISH" as const, "LIST" as const) }) },
);
const operations = Number(process.env["PREPWRIGHT_LAW_OPERATIONS"] ?? 1000);
/** The fewest operations of one run, so that all runs together do at least as many as asked. */
const fewest = 150;
const numRuns = Math.ceil(operations / fewest);

const acts = fc.array(fc.record({ by: fc.constantFrom("first" as const, "second" as const), act }), {
  minLength: fewest,
  maxLength: 250,
});

const foodText = (own: string, base: string | null, word: string): string =>
  `kind: food\nslug: ${own}\nnames: { en: "${word}" }\n` +
  (base === null ? "aisle: vegetables\nshopped-by: mass\n" : `extends: ${base}\n`) +
  `keeping: [{ place: fridge, days: 5, source: writer }]\n`;

const packsText = (of: string, word: string): string =>
  `kind: packs\nslug: ${of}\npacks:\n` +
  `  - { id: own, name: "${word}", content: 1 kg, price: 3.00 XTS, seen: 2026-01-01, source: writer }\n`;

const planText = (publisher: string, named: readonly string[]): string =>
  `kind: plan\npublisher: ${publisher}\nslug: week\ntitle: Week\nlocale: en\nmeasured-in: metric\nserves: 2\nmeals:\n` +
  `  - slug: stew\n    title: Stew\n    day: 0\n    lines:\n` +
  named.map((each) => `      - { food: ${each}, amount: 100 g }\n`).join("");

class World {
  readonly unpublished = new Map<string, string>();
  readonly published = new Set<string>();
  #words = 0;

  constructor(
    readonly deps: Deps,
    readonly names: Readonly<Record<"first" | "second", string>>,
    readonly callers: Readonly<Record<"first" | "second", Caller>>,
  ) {}

  async #version(who: "first" | "second", kind: DraftKind, of: string): Promise<number | null> {
    const [version] = await this.deps.data.drafts.versions([{ kind, publisher: this.names[who], slug: of }]);
    return version ?? null;
  }

  /** What whoever does it is told, with the publisher's name taken out. */
  async do(who: "first" | "second", each: Act, word: string): Promise<unknown> {
    const { deps } = this;
    const publisher = this.names[who];
    const caller = this.callers[who];
    const texts = (text: string) => [{ name: "text", text }];
    const save = async (kind: DraftKind, of: string, text: string) => {
      const version = await this.#version(who, kind, of);
      const expected = version === null ? [] : [{ kind, slug: of, version }];
      return saveDocuments(deps, caller, { publisher, texts: texts(text), expected });
    };
    switch (each.kind) {
      case "SAVE": {
        const saved = await save("FOOD", each.slug, foodText(each.slug, each.base, word));
        if (saved.ok) this.unpublished.set(`${who} ${each.slug}`, word);
        return saved;
      }
      case "PACKS": {
        const saved = await save("PACKS", each.slug, packsText(each.slug, word));
        if (saved.ok) this.unpublished.set(`${who} packs of ${each.slug}`, word);
        return saved;
      }
      case "PLAN":
        return save("PLAN", "week", planText(publisher, each.eats));
      case "CHECK":
        return checkDocuments(deps, caller.actor, { publisher, texts: texts(planText(publisher, each.eats)) });
      case "DISCARD":
      case "DISCARD_PACKS": {
        const kind = each.kind === "DISCARD" ? "FOOD" : "PACKS";
        const expectedVersion = (await this.#version(who, kind, each.slug)) ?? 1;
        return discardDraft(deps, caller, { publisher, kind, slug: each.slug, expectedVersion });
      }
      case "LOOK":
        return findOwnFood(deps, caller.actor, { publisher, slug: each.slug });
      case "PUBLISH": {
        const expectedVersion = (await this.#version(who, "PLAN", "week")) ?? 1;
        const done = await publishDraft(deps, caller, { publisher, slug: "week", expectedVersion });
        if (done.ok)
          for (const each of slugs) {
            const [now] = await deps.data.publisherFoods.published([{ publisher, slug: each }]);
            const [packs] = await deps.data.publisherPacks.published([{ publisher, slug: each }]);
            for (const name of [`${who} ${each}`, `${who} packs of ${each}`]) {
              const known = this.unpublished.get(name);
              if (known !== undefined && JSON.stringify([now, packs]).includes(known)) this.published.add(known);
            }
          }
        return done;
      }
      case "LIST":
        return listDrafts(deps, caller.actor, { filter: { publisher, kind: null }, page: { first: 50 } });
    }
  }

  /** What another publisher and a reader are told of what one has. */
  async seenOf(who: "first" | "second"): Promise<string> {
    const publisher = this.names[who];
    const told: unknown[] = [];
    for (const each of slugs)
      for (const actor of [anyone, this.callers[who === "first" ? "second" : "first"].actor])
        told.push(await findOwnFood(this.deps, actor, { publisher, slug: each }));
    for (const actor of [anyone, this.callers[who === "first" ? "second" : "first"].actor]) {
      // The beginning of every word of its own, and one of them.
      const filter = { search: who, aisle: null, publisher };
      told.push(await listFoods(this.deps, actor, { filter, page: { first: 50 } }));
      const texts = [`100 g ${who} word 7 end`];
      const read = await readTextLines(this.deps, actor, { texts, locale: "en", measures: "METRIC", publisher });
      if (!read.ok) throw new Error("lines were refused");
      // What was asked is said back, and is no answer.
      told.push(read.value.map(({ takes, open }) => ({ takes, named: open?.named })));
    }
    return JSON.stringify(told);
  }

  word(who: string): string {
    this.#words += 1;
    return `${who} word ${this.#words} end`;
  }
}

const wordsIn = (text: string): readonly string[] => text.match(/(first|second) word \d+ end/g) ?? [];

describeOnEmbedded("what a publisher has not published", (open) => {
  const databases: TestDatabase[] = [];
  let runs = 0;
  beforeAll(async () => {
    databases.push(await open(), await open());
    for (const { data } of databases) await data.foods.save([food("kale")]);
  });
  afterAll(() => Promise.all(databases.map(({ close }) => close())));

  async function world(at: number, run: number): Promise<World> {
    const { data } = databases[at]!;
    const deps: Deps = {
      data,
      clock: () => new Date("2026-03-01T09:00:00Z"),
      log: pino({ level: "silent" }),
      knownRules: new Map(),
    };
    await loadShippedRules(deps, rules);
    const names = { first: `first-${run}`, second: `second-${run}` };
    const caller = async (publisher: string): Promise<Caller> => {
      await data.publishers.save({ slug: publisher, name: publisher });
      const scopes = ["WRITE", "READ_DRAFTS", "PUBLISH"] as const;
      const program: Caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null };
      const made = await createToken(deps, program, { publisher, name: "own", scopes, expiresAt: null });
      if (!made.ok || made.value.text === null) throw new Error("no token");
      const actor: Actor = { kind: "TOKEN", token: made.value.text.slice(11, 19), publisher, scopes };
      return { actor, requestId: null };
    };
    return new World(deps, names, { first: await caller(names.first), second: await caller(names.second) });
  }

  it(
    "changes nothing that another is told, and is in nothing that anybody else is told",
    async () => {
      await fc.assert(
        fc.asyncProperty(acts, async (all) => {
          runs += 1;
          const both = await world(0, runs);
          const alone = await world(1, runs);
          // Tokens have ids of their own, and drafts the moment of their saving.
          const plain = (told: unknown): string =>
            JSON.stringify(told, (key, value: unknown) => (/^(updatedBy|updatedAt|cursor)$/.test(key) ? null : value));
          for (const { by, act: each } of all) {
            const word = both.word(by);
            const told = plain(await both.do(by, each, word));
            if (by === "second") {
              expect(told).toEqual(plain(await alone.do(by, each, word)));
              expect(wordsIn(told).filter((found) => found.startsWith("first"))).toEqual([]);
            }
            if (each.kind === "SAVE" || each.kind === "PACKS" || each.kind === "PUBLISH") {
              const seen = wordsIn(await both.seenOf(by));
              expect(seen.filter((found) => !both.published.has(found))).toEqual([]);
            }
          }
        }),
        { numRuns, seed: 20261130, endOnFailure: true },
      );
    },
    Math.max(1_800_000, operations * 200),
  );
});
