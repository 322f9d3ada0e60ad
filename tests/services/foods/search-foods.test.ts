import { beforeAll, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { anyone, type Actor, type Scope } from "../../../src/services/access/actor.js";
import { createToken } from "../../../src/services/access/create-token.js";
import type { Deps } from "../../../src/services/deps.js";
import { readTextLines } from "../../../src/services/drafts/read-text-lines.js";
import { saveDocuments } from "../../../src/services/drafts/save-documents.js";
import { listFoods } from "../../../src/services/foods/list-foods.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { rules } from "../../graphql/open-test-app.js";
import { food as smallFood } from "../../kit/builders.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { nightClock, silentLog } from "../imports/open-feed.js";

const named = (
  slug: string,
  ...names: readonly (readonly [language: string, one: string, ...also: string[]])[]
): Food => ({
  ...smallFood(slug),
  names: names.map(([language, one, ...also]) => ({ language, region: null, one, many: one, also })),
});

const publisher = "third-gate-allotments";
const other = "north-gate-allotments";
const program: Actor = { kind: "PROGRAM", name: "test" };
const scopes: readonly Scope[] = ["READ_DRAFTS", "WRITE"];

describeOnBothDatabases("a search for foods", (open) => {
  let deps: Deps;
  const actors = new Map<string, Actor>();
  const ownOf = (of: string): Actor => actors.get(of) ?? anyone;
  beforeAll(async () => {
    const { data } = await open();
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
    for (const slug of [publisher, other]) {
      await data.publishers.save({ slug, name: slug });
      const made = await createToken(
        deps,
        { actor: program, requestId: null },
        { publisher: slug, name: "own", scopes, expiresAt: null },
      );
      if (!made.ok || made.value.text === null) throw new Error("no token");
      actors.set(slug, { kind: "TOKEN", token: made.value.text.slice(11, 19), publisher: slug, scopes });
    }
  });

  const page = async (search: string | null, more: { publisher?: string; aisle?: string; actor?: Actor } = {}) => {
    const { publisher: of = null, aisle = null, actor = anyone } = more;
    const found = await listFoods(deps, actor, { filter: { search, aisle, publisher: of }, page: { first: 100 } });
    return found.ok ? found.value.items.map(({ item }) => item.slug) : found.problems.map(({ code }) => code);
  };

  it("finds nothing in a service without foods, and says so", async () => {
    expect(await page("carrot")).toEqual([]);
    const read = await readTextLines(deps, anyone, { texts: ["2 carrots"], locale: "en", measures: "METRIC" });
    expect(read).toMatchObject({ ok: true, value: [{ takes: [], open: { named: [] } }] });
  });

  it("gives what is called so, then what begins so, then what has the words, in any language", async () => {
    await deps.data.foods.save([
      named("tomato", ["en", "tomato", "tomatoes"], ["de", "Tomate", "Tomaten"]),
      named("tomato-puree", ["en", "tomato paste", "tomato purée"], ["de", "Tomatenmark"]),
      named("cherry-tomato", ["en", "cherry tomato", "cherry tomatoes"]),
      named("rocket", ["en", "rocket", "roquette salad"], ["fr", "Éruca"]),
      named("hundred", ["en", "100% rye"]),
      named("aubergine", ["en", "aubergine", "eggplant"]),
    ]);
    expect(await page("tomato")).toEqual(["tomato", "tomato-puree", "cherry-tomato"]);
    expect(await page("Tomaten")).toEqual(["tomato", "tomato-puree"]);
    expect(await page("tomato paste")).toEqual(["tomato-puree"]);
    expect(await page("tomato sauce")).not.toContain("tomato-sauce");
    expect(await page("ROCK")).toEqual(["rocket"]);
    expect(await page("salad roq")).toEqual(["rocket"]);
    expect(await page("eruca")).toEqual(["rocket"]);
    expect(await page("100%")).toEqual(["hundred"]);
    expect(await page("fresh organic eggplants")).toEqual(["aubergine"]);
  });

  it("offers the nearest where nothing is called so", async () => {
    expect(await page("aubergnie")).toEqual(["aubergine"]);
    expect(await page("xylophone")).toEqual([]);
  });

  it("goes page by page, in both directions", async () => {
    const filter = { search: "tomato", aisle: null };
    const seen: string[] = [];
    for (let after: string | null = null; ;) {
      const found = await listFoods(deps, anyone, { filter, page: { first: 1, after } });
      if (!found.ok) throw new Error("refused");
      const [only] = found.value.items;
      if (only !== undefined) seen.push(only.item.slug);
      if (!found.value.hasNext || only === undefined) break;
      after = only.cursor;
    }
    expect(seen).toEqual(["tomato", "tomato-puree", "cherry-tomato"]);
    const last = await listFoods(deps, anyone, { filter, page: { last: 2 } });
    expect(
      last.ok && [last.value.items.map(({ item }) => item.slug), last.value.hasPrevious, last.value.hasNext],
    ).toEqual([["tomato-puree", "cherry-tomato"], true, false]);
    expect(await listFoods(deps, anyone, { filter, page: { first: 1, after: "nonsense" } })).toMatchObject({
      ok: false,
    });
  });

  it.each([
    ["nothing", ""],
    ["spaces", "   "],
    ["half a character", "\ud800"],
    ["a NUL", "to\0mato"],
    ["ten thousand letters", "tomato ".repeat(1500)],
    ["marks on nothing", "\u0301\u0301\u0301"],
    ["a right-to-left override", "\u202eotamot"],
    ["a pattern", "%_\\(.*"],
    ["names of objects", "__proto__ constructor"],
    ["many words", Array.from({ length: 60 }, () => "zz").join(" ")],
  ])("with %s is answered or refused, and finds no food", async (_, search) => {
    const found = await page(search);
    expect(found.filter((slug) => !["TOO_LARGE", "BAD_SHAPE"].includes(slug))).toEqual([]);
  });

  it("finds a publisher's own foods by name: for its own token as saved, for nobody else before they are published", async () => {
    const text =
      "kind: food\nslug: skirret\nnames: { en: skirret, de: Zuckerwurzel }\naisle: vegetables\nshopped-by: mass\n";
    const base =
      "kind: food\nslug: gate-tomato\nextends: tomato\nnames: { en: gate tomato }\npacks: [{ id: bag, name: bag, content: 500 g, source: writer, seen: 2026-03-01 }]\n";
    const saved = await saveDocuments(
      deps,
      { actor: ownOf(publisher), requestId: null },
      { publisher, texts: [{ name: "own.yaml", text: `${text}---\n${base}` }], expected: [] },
    );
    expect(saved).toMatchObject({ ok: true });
    const mine = { publisher, actor: ownOf(publisher) };
    expect(await page("Zuckerwurzeln", mine)).toEqual(["skirret"]);
    expect((await page(null, mine)).includes("skirret")).toBe(true);
    expect(await page("gate tomatoes", mine)).toEqual(["gate-tomato"]);
    // Its own name is its alone: the plain word is still the one that all share.
    expect((await page("tomato", mine))[0]).toBe("tomato");
    for (const actor of [anyone, ownOf(other)]) {
      expect(await page("skirret", { publisher, actor })).toEqual([]);
      expect(await page("skirret", { actor })).toEqual([]);
    }
    const lines = {
      texts: ["200 g skirret", "200 g Zuckerwurzel"],
      locale: "en",
      measures: "METRIC",
      publisher,
    } as const;
    expect(await readTextLines(deps, ownOf(publisher), lines)).toMatchObject({
      ok: true,
      value: [{ takes: [{ food: "skirret", amount: "200 g" }] }, { takes: [], open: { named: ["skirret"] } }],
    });
    expect(await readTextLines(deps, anyone, lines)).toMatchObject({ ok: true, value: [{ takes: [] }, { takes: [] }] });
    expect(await readTextLines(deps, program, { ...lines, publisher: other })).toMatchObject({
      ok: true,
      value: [{ takes: [] }, { takes: [] }],
    });
  });

  it("lets a document name its foods by any of their names", async () => {
    const plan = (lines: string) =>
      `kind: plan\npublisher: ${publisher}\nslug: week\ntitle: Woche\nlocale: de\nmeasured-in: metric\nserves: 2\nmeals:\n  - slug: stew\n    title: Eintopf\n    day: 0\n    lines:\n${lines}`;
    const save = (lines: string) =>
      saveDocuments(
        deps,
        { actor: ownOf(publisher), requestId: null },
        { publisher, texts: [{ name: "plan.yaml", text: plan(lines) }], expected: [] },
      );
    const refused = await save("      - { food: Möhren, amount: 300 g }\n");
    expect(refused).toMatchObject({
      ok: false,
      problems: [{ code: "UNKNOWN_FOOD", food: "Möhren", place: { line: 13 } }],
    });
    expect(
      await save(
        "      - { food: Zuckerwurzel, amount: 300 g }\n      - { food: Tomaten, amount: 1 kg }\n      - 200 g Skirret\n",
      ),
    ).toMatchObject({ ok: false, problems: [{ code: "LINE_OPEN", named: ["skirret"] }] });
    expect(
      await save("      - { food: Zuckerwurzel, amount: 300 g }\n      - { food: Tomaten, amount: 1 kg }\n"),
    ).toMatchObject({
      ok: true,
    });
    const [draft] = await deps.data.plans.drafts([{ publisher, slug: "week" }]);
    expect(draft?.value.meals[0]?.lines.map(({ item }) => item)).toMatchObject([
      { food: "skirret" },
      { food: "tomato" },
    ]);
  });
});
