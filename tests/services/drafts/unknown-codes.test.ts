import { beforeAll, expect, it } from "vitest";
import { importReportMarkdown } from "../../../src/exports/document/import-report.js";
import type { Deps } from "../../../src/services/deps.js";
import { checkDraft } from "../../../src/services/drafts/check/check-draft.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { publishDraft } from "../../../src/services/plans/publish-draft.js";
import { reportImport } from "../../../src/services/imports/reports/report-import.js";
import { saveDocuments } from "../../../src/services/drafts/save-documents.js";
import { saveFoods } from "../../../src/services/foods/save-foods.js";
import { resolveRow } from "../../../src/services/imports/rows/resolve-row.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { ending, nightClock, openFeed, silentLog } from "../imports/open-feed.js";

const publisher = "third-gate-allotments";
const actor = { kind: "PROGRAM", name: "test" } as const;
const caller = { actor, requestId: null };

const component = (keepsAs: string): string => `kind: component
slug: roast-carrots
title: Roast carrots
yield: { amount: 600 g }
lines:
  - { food: carrot, amount: 800 g }
keeps-as: ${keepsAs}
keeping: [{ place: fridge, days: 2, source: writer }]
`;

const plan = `kind: plan
publisher: ${publisher}
slug: carrot-days
title: Carrot days
locale: en-GB
measured-in: metric
serves: 4
meals:
  - { slug: carrots, title: Carrots, day: 1, lines: [{ component: roast-carrots, amount: 400 g }] }
`;

const relish = (code: string): string => `kind: food
slug: relish
names: { en: relish }
aisle: jars
shopped-by: mass
allergens: [{ code: ${code}, presence: contains, source: writer }]
`;

describeOnBothDatabases("a code that its list does not have", (open) => {
  let deps: Deps;
  beforeAll(async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    await data.publishers.save({ slug: publisher, name: "Third Gate Allotments" });
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
  });

  it("is refused at once where somebody saves documents, and nothing is saved", async () => {
    const texts = [{ name: "week.yaml", text: `${component("cooked-vegetables")}---\n${plan}` }];
    expect(await saveDocuments(deps, caller, { publisher, texts })).toMatchObject({
      ok: false,
      problems: [
        {
          code: "UNKNOWN_CODE",
          list: "keeping-class",
          nearest: expect.arrayContaining(["cooked-vegetable"]) as unknown,
          place: { file: "week.yaml", line: 7, column: 11 },
        },
      ],
    });
    const [draft] = await deps.data.drafts.texts([{ kind: "COMPONENT", publisher, slug: "roast-carrots" }]);
    expect(draft).toBeNull();
  });

  it("is refused where the operator saves foods, and a usual spelling is saved as the code", async () => {
    expect(await saveFoods(deps, caller, { texts: [{ name: "relish.yaml", text: relish("penut") }] })).toMatchObject({
      ok: false,
      problems: [{ code: "UNKNOWN_CODE", list: "allergen", nearest: ["peanut"], place: { line: 6 } }],
    });
    expect((await saveFoods(deps, caller, { texts: [{ name: "relish.yaml", text: relish("peanuts") }] })).ok).toBe(
      true,
    );
    const [saved] = await deps.data.foods.bySlugs(["relish"]);
    expect(saved?.allergens.map(({ code }) => code)).toEqual(["peanut"]);
  });

  it("does not stop a night's import of documents: the row is taken, and the report warns of it with the nearest", async () => {
    const feed = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "weekly", settings: { publish: true } });
    const file = `${component("cooked-vegetables")}---\n${plan}`;
    const run = await feed.run(file);
    expect(ending(run)).toEqual(["DONE", 2, 2, 0, 0, 0, 0]);
    expect(run.warnings).toMatchObject([
      { line: 1, part: 0, problem: { code: "UNKNOWN_CODE", written: "cooked-vegetables", place: { line: 7 } } },
    ]);
    // The same file the next night changes nothing, and is warned of again.
    const again = await feed.run(file);
    expect([ending(again), again.warnings.length]).toEqual([["DONE", 2, 0, 0, 2, 0, 0], 1]);
    const known = await deps.data.feeds.find(publisher, "weekly");
    if (known === null) throw new Error("the feed is gone");
    const report = importReportMarkdown(await reportImport(deps, { run: again, feed: known }));
    expect(report).toContain("## Taken, and to be mended");
    expect(report).toContain("cooked-vegetable");
  });

  it("is refused where that draft is checked or published by hand", async () => {
    const answer = await checkDraft(deps, actor, { publisher, slug: "carrot-days" });
    const checked = answer.ok ? answer.value : null;
    expect(checked?.problems).toMatchObject([
      { code: "UNKNOWN_CODE", written: "cooked-vegetables", place: { line: 7 } },
    ]);
    const published = await publishDraft(deps, caller, {
      publisher,
      slug: "carrot-days",
      expectedVersion: checked?.version ?? 0,
    });
    expect(published).toMatchObject({ ok: false, problems: [{ code: "UNKNOWN_CODE", list: "keeping-class" }] });
  });

  it("does not stop a night's import of foods, and of a row that somebody mended is refused", async () => {
    const feed = await openFeed(deps, { publisher: null, kind: "FOODS", slug: "foods" });
    const run = await feed.run(
      "slug,name,aisle,keeps-as,contains\nmoon-root,moon root,dry-gods,cooked-vegetables,penut|soya\nbad slug,x,,,\n",
    );
    expect(ending(run)).toEqual(["DONE", 2, 1, 0, 0, 1, 0]);
    expect(
      run.warnings.map(({ line, problem }) => [line, problem.path, problem.code === "UNKNOWN_CODE" && problem.written]),
    ).toEqual([
      [2, ["aisle"], "dry-gods"],
      [2, ["contains"], "penut"],
      [2, ["keeps-as"], "cooked-vegetables"],
    ]);
    const [saved] = await deps.data.foods.bySlugs(["moon-root"]);
    expect(saved?.allergens.map(({ code }) => code)).toEqual(["penut", "soy"]);
    const settled = await resolveRow(deps, caller, { run: run.id, line: 3, text: "moon-leaf,moon leaf,,,penut" });
    expect(settled.ok).toBe(true);
    await runImports(deps, "worker-1");
    expect(await deps.data.foods.bySlugs(["moon-leaf"])).toEqual([null]);
  });
});
