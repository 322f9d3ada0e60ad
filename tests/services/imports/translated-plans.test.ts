import { beforeAll, expect, it } from "vitest";
import type { Translation } from "../../../src/domain/model/translation.js";
import type { Deps } from "../../../src/services/deps.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { ending, nightClock, openFeed, silentLog } from "./open-feed.js";

const publisher = "third-gate-allotments";

/** What a file of the feed says; every test has names of its own. */
interface Said {
  readonly name: string;
  readonly minutes?: number;
  readonly title?: string;
  readonly component?: string;
}

const component = ({ name, minutes = 30 }: Said): string => `kind: component
slug: ${name}-barley
title: Boiled barley
yield: { amount: 900 g }
lines: [{ food: pearl-barley, amount: 300 g }, { food: water, amount: 1 l, rule: per batch }]
steps: [{ id: boil, do: "Boil for ${minutes} minutes.", time: 30 min, hands: off, appliance: hob-ring }]
`;
const around = ({ name }: Said): string => `kind: component
slug: ${name}-bowl
title: Barley bowl
yield: { amount: 900 g }
lines: [{ component: ${name}-barley, amount: 900 g }]
`;
const plan = ({ name, minutes = 30 }: Said, made = `${name}-barley`): string => `kind: plan
publisher: ${publisher}
slug: ${name}
title: Barley days
locale: en-GB
measured-in: metric
serves: 4
meals:
  - slug: barley
    title: Barley
    day: 0
    lines: [{ component: ${made}, amount: 800 g }]
    steps: [{ id: rest, do: "Let it rest for ${minutes} minutes.", time: 5 min }]
`;
const planIn = (language: string, { name, minutes = 30, title = "Graupen" }: Said): string => `kind: translation
plan: ${name}
language: ${language}
title: ${title} ${language}
meals: { barley: { steps: { rest: "${minutes} min" } } }
`;
const componentIn = (
  language: string,
  { name, minutes = 30, component = "Graupen" }: Said,
): string => `kind: translation
component: ${name}-barley
language: ${language}
title: ${component} ${language}
steps: { boil: "${minutes} min" }
`;
/** In an order that nothing can be loaded in as it stands. */
const whole = (said: Said): string =>
  [planIn("de", said), componentIn("de", said), planIn("fr", said), plan(said), component(said)].join("---\n");

describeOnBothDatabases("feeds that publish plans with translations", (open) => {
  let deps: Deps;
  beforeAll(async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    await data.publishers.save({ slug: publisher, name: "Third Gate Allotments" });
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
  });

  const opened = (slug: string) => openFeed(deps, { publisher, kind: "DOCUMENTS", slug, settings: { publish: true } });
  const read = async (slug: string) => {
    const [summary] = await deps.data.revisions.summaries([{ publisher, slug, revision: null }]);
    if (!summary) return null;
    const [bundle] = await deps.data.revisions.bundles([summary.id]);
    const titled = ({ language, of, texts }: Translation): string =>
      `${of.kind} ${language}: ${texts.find(({ path }) => path.join() === "title")?.text ?? ""}`;
    return { revision: summary.revision, titles: (bundle?.translations ?? []).map(titled) };
  };

  it("publish a plan once, with all of them, and nothing the second time", async () => {
    const feed = await opened("whole");
    const file = whole({ name: "whole" });
    expect(ending(await feed.run(file))).toEqual(["DONE", 5, 5, 0, 0, 0, 0]);
    const titles = ["COMPONENT de: Graupen de", "PLAN de: Graupen de", "PLAN fr: Graupen fr"];
    expect(await read("whole")).toEqual({ revision: 1, titles });
    expect(ending(await feed.run(file))).toEqual(["DONE", 5, 0, 0, 5, 0, 0]);
    expect(await read("whole")).toEqual({ revision: 1, titles });
  });

  it("publish a translation that alone changed, of the plan or of a component, and take it back", async () => {
    const feed = await opened("alone");
    const first = whole({ name: "alone" });
    await feed.run(first);
    const before = await read("alone");
    for (const [said, titles] of [
      [{ title: "Rollgerste" }, ["COMPONENT de: Graupen de", "PLAN de: Rollgerste de", "PLAN fr: Rollgerste fr"]],
      [{ component: "Gerste" }, ["COMPONENT de: Gerste de", "PLAN de: Graupen de", "PLAN fr: Graupen fr"]],
    ] as const) {
      const run = await feed.run(whole({ name: "alone", ...said }));
      expect([run.state, run.created, run.quarantined]).toEqual(["DONE", 0, 0]);
      const now = await read("alone");
      expect(now?.titles).toEqual(titles);
      await feed.run(null, { kind: "UNDO", undoes: run.id });
      expect(await read("alone")).toEqual({ revision: (now?.revision ?? 0) + 1, titles: before?.titles });
      expect(ending(await feed.run(first))).toEqual(["DONE", 5, 0, 0, 5, 0, 0]);
    }
  });

  it("publish a plan that is in print with a translation that comes by itself, and none that never was", async () => {
    const drafts = await openFeed(deps, { publisher, kind: "DOCUMENTS", slug: "saved" });
    await drafts.run(`${plan({ name: "saved" })}---\n${component({ name: "saved" })}`);
    const feed = await opened("later");
    expect(ending(await feed.run(planIn("de", { name: "saved" })))).toEqual(["DONE", 1, 1, 0, 0, 0, 0]);
    expect(await read("saved")).toBeNull();
    await feed.run(`${plan({ name: "saved" })}---\n${component({ name: "saved" })}`);
    expect(await read("saved")).toEqual({ revision: 1, titles: ["PLAN de: Graupen de"] });
    expect(ending(await feed.run(planIn("fr", { name: "saved" })))).toEqual(["DONE", 1, 1, 0, 0, 0, 0]);
    expect(await read("saved")).toEqual({ revision: 2, titles: ["PLAN de: Graupen de", "PLAN fr: Graupen fr"] });
  });

  it("publish a plan whose numbers change in all languages at once", async () => {
    const feed = await opened("numbers");
    await feed.run(whole({ name: "numbers" }));
    expect(ending(await feed.run(whole({ name: "numbers", minutes: 40 })))).toEqual(["DONE", 5, 0, 5, 0, 0, 0]);
    expect((await read("numbers"))?.revision).toBe(2);
    // In one of them it was forgotten.
    const forgotten = whole({ name: "numbers", minutes: 50 }).replace('"50 min"', '"40 min"');
    const run = await feed.run(forgotten);
    expect(run.quarantined).toBeGreaterThan(0);
    expect((await read("numbers"))?.revision).toBe(2);
  });

  it("publish a plan of which a component of a component is said otherwise", async () => {
    const feed = await opened("deep");
    const file = (said: Said): string =>
      [plan(said, "deep-bowl"), componentIn("de", said), planIn("de", said), around(said), component(said)].join(
        "---\n",
      );
    await feed.run(file({ name: "deep" }));
    expect((await read("deep"))?.revision).toBe(1);
    expect(ending(await feed.run(file({ name: "deep", component: "Gerste" })))).toEqual(["DONE", 5, 0, 2, 3, 0, 0]);
    expect((await read("deep"))?.titles).toContain("COMPONENT de: Gerste de");
  });

  it("save nothing of a plan that cannot be published, whatever it is translated into", async () => {
    const feed = await opened("refused");
    const said = { name: "refused" };
    const claims = plan(said).replace("serves: 4", "serves: 4\nclaims: [moon-diet]");
    const run = await feed.run(`${claims}---\n${component(said)}---\n${planIn("de", said)}`);
    expect([run.state, run.created, run.quarantined]).toEqual(["DONE", 1, 2]);
    expect(await deps.data.drafts.versions([{ kind: "PLAN", publisher, slug: "refused" }])).toEqual([null]);
  });

  it("take back a plan with all of its translations", async () => {
    const feed = await opened("gone");
    const run = await feed.run(whole({ name: "gone" }));
    await feed.run(null, { kind: "UNDO", undoes: run.id });
    expect(await read("gone")).toBeNull();
    expect(
      await deps.data.drafts.versions(
        ["de-plan-gone", "fr-plan-gone", "de-component-gone-barley"].map((slug) => ({
          ...{ kind: "TRANSLATION" as const, publisher, slug },
        })),
      ),
    ).toEqual([null, null, null]);
  });
});
