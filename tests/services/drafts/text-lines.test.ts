import { beforeAll, expect, it } from "vitest";
import { checkDocuments } from "../../../src/services/drafts/check/check-documents.js";
import type { Deps } from "../../../src/services/deps.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { saveDocuments } from "../../../src/services/drafts/save-documents.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { nightClock, silentLog } from "../imports/open-feed.js";

const publisher = "third-gate-allotments";
const actor = { kind: "PROGRAM", name: "test" } as const;
const caller = { actor, requestId: null };

const barley = `kind: component
slug: sunday-grain
title: Barley of Sunday
lines:
  - 300 g pearl barley, rinsed
  - { food: water, amount: 2 l, rule: per batch }
yield: { amount: 900 g, source: writer }
steps:
  - { do: Boil it., time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley, water] }
`;

const plan = (line: string): string => `kind: plan
publisher: ${publisher}
slug: barley-days
title: Barley days
locale: en-GB
measured-in: metric
serves: 2
meals:
  - slug: bowl
    title: Bowl
    day: 0
    lines:
      - ${line}
      - 2 cloves garlic, chopped
    steps: [{ do: Eat., time: 5 min }]
`;

describeOnBothDatabases("documents with lines as one writes them", (open) => {
  let deps: Deps;
  beforeAll(async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    for (const slug of [publisher, "other-gate"]) await data.publishers.save({ slug, name: slug });
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
  });

  it("name the foods of the service, and are saved as what they mean, with their text to the byte", async () => {
    const saved = await saveDocuments(deps, caller, { publisher, texts: [{ name: "grain.yaml", text: barley }] });
    expect(saved).toMatchObject({ ok: true });
    const [draft] = await deps.data.components.drafts([{ publisher, slug: "sunday-grain" }]);
    expect(draft?.document?.text).toBe(barley);
    expect(draft?.value.lines[0]).toMatchObject({
      id: "pearl-barley",
      item: { kind: "FOOD", food: "pearl-barley" },
      amount: { low: "300", high: "300", unit: "g" },
      written: "300 g pearl barley, rinsed",
      preparation: "rinsed",
    });
  });

  it("name the publisher's component drafts by their titles, and nobody else's", async () => {
    const text = plan("300 g barley of Sunday");
    const own = await checkDocuments(deps, actor, { publisher, texts: [{ name: "plan.yaml", text }] });
    expect(own.problems).toEqual([]);
    const texts = [{ name: "plan.yaml", text: text.replace(publisher, "other-gate") }];
    const other = await checkDocuments(deps, actor, { publisher: "other-gate", texts });
    expect(other.problems).toMatchObject([
      { code: "LINE_OPEN", written: "300 g barley of Sunday", place: { file: "plan.yaml", line: 13, column: 9 } },
    ]);
  });

  it("are refused where they are not clear, and nothing of them is saved", async () => {
    const texts = [{ name: "plan.yaml", text: plan("some of this and that") }];
    const saved = await saveDocuments(deps, caller, { publisher, texts });
    expect(saved).toMatchObject({ ok: false, problems: [{ code: "LINE_OPEN" }] });
    expect(await deps.data.plans.drafts([{ publisher, slug: "barley-days" }])).toEqual([null]);
  });
});
