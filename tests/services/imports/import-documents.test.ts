import { createHash } from "node:crypto";
import { beforeAll, expect, it } from "vitest";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import { slugOf } from "../../../src/imports/recipes/recipe-slug.js";
import { shippedEdition } from "../../../src/imports/usda/read-usda.js";
import type { Deps } from "../../../src/services/deps.js";
import { loadCatalogue } from "../../../src/services/foods/load-catalogue.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { openFoodTable } from "../../kit/open-food-table.js";
import { ending, nightClock, openFeed, silentLog } from "./open-feed.js";

const publisher = "third-gate-allotments";

async function opened(open: () => Promise<TestDatabase>): Promise<Deps> {
  const { data } = await open();
  await data.foods.save(demo.foods);
  await data.publishers.save({ slug: publisher, name: "Third Gate Allotments" });
  const deps: Deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
  await loadShippedRules(deps, rules);
  return deps;
}

const barley = (grams: number, slug = "boiled-barley"): string => `kind: component
slug: ${slug}
title: Boiled barley
yield: { amount: ${grams * 3} g }
lines:
  - { food: pearl-barley, amount: ${grams} g }
  - { food: water, amount: 1 l, rule: per batch }
steps:
  - { do: Boil the barley in the water until soft., time: 30 min, hands: off, appliance: hob-ring, uses: [pearl-barley, water] }
`;

const plan = (grams: number, slug = "barley-days", component = "boiled-barley"): string => `# The society's plan
kind: plan
publisher: ${publisher}
slug: ${slug}
title: Barley days
locale: en-GB
measured-in: metric
serves: 4
meals:
  - slug: barley-and-carrots
    title: Barley and carrots
    day: 0
    lines:
      - { component: ${component}, amount: ${grams} g }
      - { food: carrot, amount: 300 g }
    steps:
      - { do: Fold grated carrots into the barley., time: 5 min, uses: [${component}, carrot] }
`;

describeOnBothDatabases("imports of documents", (open) => {
  let deps: Deps;
  const textOf = async (kind: "PLAN" | "COMPONENT", slug: string) =>
    (await deps.data.drafts.texts([{ kind, publisher, slug }]))[0]?.text ?? null;
  const inForce = async (slug: string) =>
    (await deps.data.revisions.summaries([{ publisher, slug, revision: null }]))[0] ?? null;
  beforeAll(async () => {
    deps = await opened(open);
  });

  it("make drafts of a file of many, components before the plans that stand before them, and nothing the second time", async () => {
    const feed = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "drafts" });
    const file = `${plan(800)}---\n${barley(300)}`;
    expect(ending(await feed.run(file))).toEqual(["DONE", 2, 2, 0, 0, 0, 0]);
    expect(await textOf("PLAN", "barley-days")).toBe(plan(800));
    expect(await inForce("barley-days")).toBeNull();
    expect(ending(await feed.run(file))).toEqual(["DONE", 2, 0, 0, 2, 0, 0]);
  });

  it("put each bad document aside by itself, with its place in the file, and take all others", async () => {
    const feed = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "bad" });
    const file = [
      plan(700, "bad-food").replace("food: carrot", "food: moon-root").replace(", carrot]", ", moon-root]"),
      barley(200, "bad-barley").replace("amount: 200 g", "amount: 200 moons"),
      plan(500, "on-bad-barley", "bad-barley"),
      "kind: plan\nslug: [not closed\n",
      plan(600, "another-title").replace(publisher, "somebody-else"),
      plan(500, "good-plan"),
      plan(400, "good-plan"),
      "kind: food\nslug: moon-root\n",
    ].join("---\n");
    const run = await feed.run(file);
    expect(ending(run)).toEqual(["DONE", 8, 1, 0, 0, 6, 1]);
    const rows = await feed.quarantined(run);
    expect(rows.map(({ problems }) => problems.map(({ code }) => code))).toEqual([
      ["UNKNOWN_FOOD"],
      ["UNKNOWN_UNIT"],
      ["COMPONENT_SET_ASIDE"],
      ["BAD_SHAPE"],
      ["BAD_SHAPE"],
      expect.arrayContaining(["BAD_SHAPE"]),
    ]);
    const lines = file.split("\n");
    const [first] = rows[0]?.problems ?? [];
    expect(lines[(first?.place?.line ?? 0) - 1]).toContain("moon-root");
    expect(lines[(rows[1]?.problems[0]?.place?.line ?? 0) - 1]).toContain("200 moons");
    expect(rows[1]?.raw).toContain("slug: bad-barley");
    expect(await textOf("PLAN", "good-plan")).toContain("amount: 400 g");
  });

  it("publish at the hour that a document says, once, and take that back with the import", async () => {
    const feed = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "dated", settings: { publish: true } });
    const dates = (hour: string) =>
      `publish-at: { at: "2026-04-02T${hour}", zone: Europe/Berlin }\nwithdraw-at: { at: "2026-04-20T06:00", zone: Europe/Berlin, reason: Over. }\n`;
    const file = (hour: string): string =>
      `${barley(250, "dated-barley")}---\n${plan(800, "dated", "dated-barley")}${dates(hour)}`;
    const waiting = async () =>
      (await deps.data.scheduled.waiting(publisher, "dated")).map(({ id, kind, localTime, createdBy }) => ({
        ...{ id, kind, localTime, createdBy },
      }));
    const first = await feed.run(file("06:00"));
    expect([ending(first), await inForce("dated")]).toEqual([["DONE", 2, 2, 0, 0, 0, 0], null]);
    const made = await waiting();
    expect(made).toMatchObject([
      { kind: "PUBLISH", localTime: "2026-04-02T06:00" },
      { kind: "WITHDRAW", localTime: "2026-04-20T06:00" },
    ]);
    expect(ending(await feed.run(file("06:00")))).toEqual(["DONE", 2, 0, 0, 2, 0, 0]);
    expect(await waiting()).toEqual(made);
    await feed.run(null, { kind: "UNDO", undoes: first.id });
    expect([await waiting(), await textOf("PLAN", "dated")]).toEqual([[], null]);
  });

  it("publish where the feed says so, also a plan of which only a component moved, or save nothing of a plan that cannot be", async () => {
    const feed = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "published", settings: { publish: true } });
    const both = (grams: number): string =>
      `${barley(grams, "shown-barley")}---\n${plan(800, "shown", "shown-barley")}`;
    expect(ending(await feed.run(both(250)))).toEqual(["DONE", 2, 2, 0, 0, 0, 0]);
    expect((await inForce("shown"))?.revision).toBe(1);
    const second = await feed.run(both(260));
    expect(ending(second)).toEqual(["DONE", 2, 0, 2, 0, 0, 0]);
    expect((await inForce("shown"))?.revision).toBe(2);
    const refused = await feed.run(plan(800, "claims").replace("serves: 4", "serves: 4\nclaims: [moon-diet]"));
    expect(ending(refused)).toEqual(["DONE", 1, 0, 0, 0, 1, 0]);
    expect(await textOf("PLAN", "claims")).toBeNull();

    const undone = await feed.run(null, { kind: "UNDO", undoes: second.id });
    expect([undone.state, undone.changed]).toEqual(["DONE", 2]);
    expect(await textOf("COMPONENT", "shown-barley")).toBe(barley(250, "shown-barley"));
    const now = await inForce("shown");
    expect(now?.revision).toBe(3);
    expect(now?.changeNote).toContain("taken back");
  });

  it("are taken back as drafts and as revisions, but for what somebody saved since", async () => {
    const feed = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "undone", settings: { publish: true } });
    const run = await feed.run(
      [barley(100, "gone-barley"), plan(300, "gone", "gone-barley"), plan(300, "edited", "gone-barley")].join("---\n"),
    );
    expect(run.created).toBe(3);
    const [edited] = await deps.data.plans.drafts([{ publisher, slug: "edited" }]);
    if (!edited) throw new Error("no draft");
    await deps.data.plans.saveDraft(edited.value, edited.version, { document: null, by: "somebody" });
    const undone = await feed.run(null, { kind: "UNDO", undoes: run.id });
    expect(undone.state).toBe("DONE");
    expect([await textOf("PLAN", "gone"), await textOf("COMPONENT", "gone-barley")]).toEqual([null, null]);
    expect((await deps.data.plans.drafts([{ publisher, slug: "edited" }]))[0]?.updatedBy).toBe("somebody");
    expect(await inForce("gone")).toBeNull();
  });

  it("are taken back whole where the draft of before cannot be published any more", async () => {
    const text = (title: string, more = ""): string =>
      plan(300, "whole", "whole-barley").replace("title: Barley days", `title: ${title}`) + more;
    const publishing = await openFeed(deps, {
      publisher,
      kind: "DOCUMENTS",
      slug: "whole",
      settings: { publish: true },
    });
    const saving = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "whole-drafts" });
    await publishing.run(`${barley(100, "whole-barley")}---\n${text("First")}`);
    const late = text("Second", 'withdraw-at: { at: "2031-01-01T06:00", zone: UTC, reason: Over. }\n');
    expect(ending(await saving.run(late))).toEqual(["DONE", 1, 0, 1, 0, 0, 0]);
    const run = await publishing.run(text("Third"));
    expect([ending(run), (await inForce("whole"))?.revision]).toEqual([["DONE", 1, 0, 1, 0, 0, 0], 2]);
    expect((await publishing.run(null, { kind: "UNDO", undoes: run.id })).state).toBe("DONE");
    expect(await textOf("PLAN", "whole")).toBe(late);
    const page = { first: 9, after: null, last: null, before: null };
    const { items } = await deps.data.revisions.ofPlan({ publisher, slug: "whole" }, page);
    expect(items.map(({ item: { revision, withdrawnAt } }) => [revision, withdrawnAt === null])).toEqual([
      [2, false],
      [1, true],
    ]);
  });

  it("show in a dry run what would change, and stop at a limit, without saving anything", async () => {
    const feed = await openFeed(deps, {
      publisher,
      kind: "DOCUMENTS",
      slug: "dry",
      settings: { limits: { changed: 0.3 } },
    });
    await feed.run(barley(100, "dry-barley"));
    const dry = await feed.run(`${barley(120, "dry-barley")}---\n${barley(90, "dry-new")}`, {
      kind: "DRY_RUN",
      force: true,
    });
    expect(ending(dry)).toEqual(["DONE", 2, 1, 1, 0, 0, 0]);
    const changes = await deps.data.importRuns.changes(dry.id);
    expect(changes.map(({ key }) => key)).toEqual(["COMPONENT dry-barley", "COMPONENT dry-new"]);
    expect(await textOf("COMPONENT", "dry-new")).toBeNull();
    const stopped = await feed.run(barley(120, "dry-barley"));
    expect([stopped.state, stopped.problems.map(({ code }) => code)]).toEqual(["STOPPED", ["LIMIT_PASSED"]]);
    expect(await textOf("COMPONENT", "dry-barley")).toBe(barley(100, "dry-barley"));
  });
});

const recipe = (change: Record<string, unknown> = {}): Record<string, unknown> => ({
  "@type": "Recipe",
  "@id": "https://society.example/barley-broth",
  name: "Barley broth",
  recipeYield: "4 servings",
  totalTime: "PT50M",
  recipeIngredient: ["200 g pearl barley", "2 carrots", "1 tsp salt"],
  recipeInstructions: ["Boil everything until soft."],
  ...change,
});

describeOnBothDatabases("imports of recipes", (open) => {
  let deps: Deps;
  const textOf = async (slug: string) =>
    (await deps.data.drafts.texts([{ kind: "PLAN", publisher, slug }]))[0]?.text ?? null;
  beforeAll(async () => {
    deps = await opened(open);
  });

  it("O-36: become drafts of plans where nothing is open, and are known again by their address", async () => {
    const feed = await openFeed(deps, { publisher, kind: "RECIPES", slug: "web" });
    const graph = JSON.stringify({ "@graph": [{ "@type": "WebSite" }, recipe()] });
    expect(ending(await feed.run(graph))).toEqual(["DONE", 1, 1, 0, 0, 0, 0]);
    expect(await textOf("barley-broth")).toContain("# Read from https://society.example/barley-broth");
    expect(ending(await feed.run(`${graph}\n`))).toEqual(["DONE", 1, 0, 0, 1, 0, 0]);
    const changed = JSON.stringify(recipe({ recipeIngredient: ["250 g pearl barley", "2 carrots", "1 tsp salt"] }));
    expect(ending(await feed.run(changed))).toEqual(["DONE", 1, 0, 1, 0, 0, 0]);
    // Another recipe of the same name gets an address of its own.
    const other = JSON.stringify(recipe({ "@id": "https://elsewhere.example/broth" }));
    expect(ending(await feed.run(other))).toEqual(["DONE", 1, 1, 0, 0, 0, 0]);
  });

  it("have titles that differ where one file has two recipes of a name, and keep them", async () => {
    const feed = await openFeed(deps, { publisher, kind: "RECIPES", slug: "same-name" });
    const file = JSON.stringify(
      ["one", "two"].map((id) => recipe({ "@id": `https://society.example/${id}`, name: "Root stew" })),
    );
    expect(ending(await feed.run(file))).toEqual(["DONE", 2, 2, 0, 0, 0, 0]);
    const second = createHash("sha256").update("https://society.example/two").digest("hex").slice(0, 8);
    expect(await textOf("root-stew")).toMatch(/^title: Root stew$/m);
    expect(await textOf(`root-stew-${second}`)).toMatch(/^title: Root stew \(2\)$/m);
    expect(ending(await feed.run(`${file}\n`))).toEqual(["DONE", 2, 0, 0, 2, 0, 0]);
  });

  it("have titles that differ also where other files or a writer have plans of that name, and keep them", async () => {
    const titlesOf = async (...slugs: readonly string[]) =>
      (await deps.data.plans.drafts(slugs.map((slug) => ({ publisher, slug })))).map((draft) => draft?.value.title);
    const page = (site: string, name: string, grams = 200): string =>
      JSON.stringify(
        recipe({ "@id": `https://${site}.example/soup`, name, recipeIngredient: [`${grams} g pearl barley`] }),
      );
    const slugs = (slug: string, site: string): string =>
      `${slug.slice(0, 71).replace(/-$/, "")}-${createHash("sha256").update(`https://${site}.example/soup`).digest("hex").slice(0, 8)}`;
    const feed = await openFeed(deps, { publisher, kind: "RECIPES", slug: "sites" });
    const other = await openFeed(deps, { publisher, kind: "RECIPES", slug: "other-sites" });
    const long = `${"Soup of roots ".repeat(16)}with barley`;
    const cut = `${"Soup of roots ".repeat(14).trim()}`;
    for (const [name, slug, second] of [
      ["Lentil soup", "lentil-soup", "Lentil soup (2)"],
      ["Süßkartoffel-Suppe", "susskartoffel-suppe", "Süßkartoffel-Suppe (2)"],
      [long, slugOf(long) ?? "", expect.stringMatching(new RegExp(`^${cut.slice(0, 150)}.*… \\(2\\)$`))],
    ] as const) {
      expect(ending(await feed.run(page("one", name)))).toEqual(["DONE", 1, 1, 0, 0, 0, 0]);
      expect(ending(await other.run(page("two", name)))).toEqual([...["DONE", 1, 1, 0, 0, 0, 0]]);
      const two = slugs(slug, "two");
      const [first, then] = await titlesOf(slug, two);
      expect(first?.length).toBeLessThanOrEqual(200);
      expect([slug, then]).toEqual([slug, second]);
      // Read again after it changed, each keeps its title and its place.
      await feed.run(page("two", name, 250));
      await feed.run(page("one", name, 250));
      expect(await titlesOf(slug, two)).toEqual([first, then]);
    }
    await other.run(page("three", "LENTIL SOUP"));
    expect(await titlesOf(slugs("lentil-soup", "three"))).toEqual(["LENTIL SOUP (3)"]);
    // A writer's own plan has the name, under another address.
    const feedOfPlans = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "plans-of-that-name" });
    await feedOfPlans.run(`${barley(100)}---\n${plan(300, "my-own").replace("title: Barley days", "title: Bean pot")}`);
    await feed.run(page("one", "Bean pot"));
    expect(await titlesOf("my-own", "bean-pot")).toEqual(["Bean pot", "Bean pot (2)"]);
  });

  it("that were put aside never become what another recipe or a writer's own plan is", async () => {
    const feed = await openFeed(deps, { publisher, kind: "RECIPES", slug: "aside" });
    const open = (site: string): string =>
      JSON.stringify(recipe({ "@id": `https://${site}.example/stew`, name: "Late stew", recipeYield: "2 loaves" }));
    const offers: string[] = [];
    for (const site of ["one", "two"]) {
      const run = await feed.run(open(site));
      offers.push(((await feed.quarantined(run))[0]?.offer ?? "").replace(/^title: (.*)$/m, "title: $1\nserves: 4"));
    }
    const [first = "", second = ""] = offers;
    expect(ending(await feed.run(first))).toEqual(["DONE", 1, 1, 0, 0, 0, 0]);
    const kept = await textOf("late-stew");
    expect(kept).toContain("https://one.example/stew");
    const withoutOrigin = second.replace(/^# Read from .*\n/m, "");
    for (const text of [second, withoutOrigin]) {
      const refused = await feed.run(text);
      expect(ending(refused)).toEqual(["DONE", 1, 0, 0, 0, 1, 0]);
      const [row] = await feed.quarantined(refused);
      const [problem] = row?.problems ?? [];
      expect(text.split("\n")[(problem?.place?.line ?? 0) - 1]).toBe("slug: late-stew");
      expect(problemText(problem!)).toContain("https://one.example/stew");
      expect(await textOf("late-stew")).toBe(kept);
    }
    const own = second.replaceAll("late-stew", "later-stew");
    expect(ending(await feed.run(own))).toEqual(["DONE", 1, 1, 0, 0, 0, 0]);
    // Its own draft may be mended, with the line that says whose it is.
    expect(ending(await feed.run(first.replace("serves: 4", "serves: 6")))).toEqual(["DONE", 1, 0, 1, 0, 0, 0]);
  });

  it("O-35: are put aside with a draft to start from where anything is open, and every fault of a page is a row", async () => {
    const feed = await openFeed(deps, { publisher, kind: "RECIPES", slug: "open" });
    const page = `<html><script type="application/ld+json">{"broken</script>
<script type="application/ld+json">${JSON.stringify([
      recipe({ "@id": "https://society.example/loaves", recipeYield: ["2 loaves", "12 rolls"] }),
      recipe({ "@id": "https://society.example/odd", recipeIngredient: ["1/2 moon root"], cookTime: "90 minutes" }),
      recipe({ "@id": "https://society.example/twice" }),
      recipe({ "@id": "https://society.example/twice", "@type": ["Recipe", "NewsArticle"] }),
    ])}</script></html>`;
    const run = await feed.run(page);
    expect([run.state, run.quarantined]).toEqual(["DONE", 3]);
    expect(run.read).toBe(run.created + run.changed + run.unchanged + run.quarantined + run.repeated);
    const rows = await feed.quarantined(run);
    expect(rows.map(({ problems }) => problems.map(({ code }) => code))).toEqual([
      ["BAD_SHAPE"],
      ["RECIPE_OPEN"],
      ["BAD_SHAPE", "RECIPE_OPEN"],
    ]);
    expect(rows[1]?.offer).toContain("How many it serves");
    expect(rows[2]?.offer).toContain("moon root");
  });

  it("take each line for what a cook means, with what the foods inherit, or leave it to a person", async () => {
    const rows = [...openFoodTable.values()];
    await loadCatalogue(deps, { edition: shippedEdition, hash: "shipped" }, () => Promise.resolve(rows));
    const feed = await openFeed(deps, {
      publisher,
      kind: "RECIPES",
      slug: "lines",
      settings: { measures: "US_CUSTOMARY" },
    });
    const read = [
      ["1 (15 oz) can red kidney beans", "food: tinned-red-kidney-beans", "amount: 1 tin"],
      ["2 x 400g tins chickpeas, drained", "food: tinned-chickpeas", "amount: 2 tin"],
      ["1 large onion (about 1 cup chopped)", "food: onion", "amount: 1 large"],
      ["1 cup (160 g) wheat flour", "food: wheat-flour", "amount: 160 g"],
      ["4 (6-ounce) potatoes", "food: potato", "amount: 4 piece", "each: 6 oz"],
      ["1 lb peeled, diced butternut squash", "food: butternut-squash", "amount: 1 lb", "measured: ready"],
      ["3 cups/384 g plus 3 tbsp wheat flour", "food: wheat-flour", "amount: 408 g"],
    ] as const;
    const page = (written: readonly string[], id: string) =>
      JSON.stringify(
        recipe({ "@id": `https://society.example/${id}`, name: id, recipeIngredient: written, inLanguage: "en-US" }),
      );
    expect(
      ending(
        await feed.run(
          page(
            read.map(([written]) => written),
            "read-lines",
          ),
        ),
      ),
    ).toEqual(["DONE", 1, 1, 0, 0, 0, 0]);
    const text = (await textOf("read-lines")) ?? "";
    const lines = text
      .split("- food: ")
      .slice(1)
      .map((line) => `food: ${line}`);
    for (const [at, [, ...facts]] of read.entries()) for (const fact of facts) expect(lines[at]).toContain(fact);

    const asked = [
      "1 (15 oz) can white beans",
      "400 g chickpeas, drained",
      "1 cup (300 g) wheat flour",
      "1 kl. Zwiebel",
    ];
    const run = await feed.run(page(asked, "asked-lines"));
    const [row] = await feed.quarantined(run);
    expect(row?.problems.map((problem) => problem.code === "RECIPE_OPEN" && problem.written)).toEqual(asked);
  });

  it("leave alone what a writer made of a draft, and offer what the page says now", async () => {
    const feed = await openFeed(deps, { publisher, kind: "RECIPES", slug: "writers" });
    const own = (grams: number): string =>
      JSON.stringify(
        recipe({
          "@id": "https://society.example/own",
          name: "Own broth",
          recipeIngredient: [`${grams} g pearl barley`],
        }),
      );
    await feed.run(own(100));
    const [draft] = await deps.data.plans.drafts([{ publisher, slug: "own-broth" }]);
    if (!draft?.document) throw new Error("no draft");
    const text = draft.document.text.replace("serves: 4", "serves: 6");
    await deps.data.plans.saveDraft({ ...draft.value, serves: 6 }, draft.version, {
      document: { text, format: "YAML" },
      by: "a-token",
    });
    expect(ending(await feed.run(`${own(100)} `))).toEqual(["DONE", 1, 0, 0, 1, 0, 0]);
    const run = await feed.run(own(120));
    expect(ending(run)).toEqual(["DONE", 1, 0, 0, 0, 1, 0]);
    expect((await feed.quarantined(run))[0]?.offer).toContain("120 g");
    expect(await textOf("own-broth")).toBe(text);
  });
});
