import { beforeAll, afterAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { publishPlan } from "../../../src/services/plans/publish-plan.js";
import type { KeepingRule } from "../../../src/domain/model/keeping.js";
import type { RuleSet } from "../../../src/domain/plan/compile/rule-set.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { ruleFiles } from "../../imports/rules/published-rules.js";
import { demo, demoBundle, openTestApp, renamed, rules, type TestApp } from "../open-test-app.js";

/** The rules that come with the program, except that cooked pulses keep a day less than the source says. */
const stricter = (code: string, inForceFrom: string): RuleSet => ({
  ...rules,
  code,
  title: "Tightened",
  inForceFrom,
  safety: {
    ...rules.safety,
    keeping: rules.safety.keeping.map((rule) =>
      rule.place === "FRIDGE" && rule.purpose === "SAFETY"
        ? { ...rule, days: Math.min(rule.days, 1), daysFrom: null }
        : rule,
    ),
    cautions: [
      ...rules.safety.cautions,
      {
        code: "new-advice",
        text: "Label each box with its day.",
        source: { kind: "COMMON_PRACTICE", title: "Common practice, no source", section: null },
        rules: [],
        when: { always: true, perishable: false, keepsAs: [], foods: [], foodWords: [], stepWords: [] },
      },
    ],
  },
});

const publisher = "third-gate-allotments";

interface Kept {
  readonly plan: {
    readonly checkedAgainst: { readonly code: string } | null;
    readonly scaled: {
      readonly storage: readonly {
        readonly subject: { readonly slug?: string };
        readonly place: string;
        readonly days: number;
      }[];
      readonly cautions: readonly { readonly code: string }[];
    };
  };
}

describeOnBothDatabases("a later set of published rules", (open) => {
  let now = new Date("2026-12-01T12:00:00Z");
  let one: TestApp;
  let other: TestApp;

  beforeAll(async () => {
    const { data } = await open();
    one = await openTestApp(data, undefined, () => now);
    other = await openTestApp(data, undefined, () => now);
    await loadSeeds(one.deps, demo);
  });
  afterAll(() => Promise.all([one.close(), other.close()]));

  const keeping = async (app: TestApp, slug = "lentils-and-greens", sessionStart = "") => {
    const { data, errors } = await app.ask(`{ plan(publisher: "${publisher}", slug: "${slug}") {
      checkedAgainst { code }
      scaled(servings: 2, household: { region: "US" ${sessionStart} }) {
        storage { subject { ... on Component { slug } } place days }
        cautions { code }
      } } }`);
    expect(errors).toEqual([]);
    const { checkedAgainst, scaled } = (data as unknown as Kept).plan;
    const lentils = scaled.storage.find(
      ({ subject, place }) => subject.slug === "boiled-lentils" && place === "FRIDGE",
    );
    return {
      checkedAgainst: checkedAgainst?.code ?? null,
      days: lentils?.days,
      advised: scaled.cautions.some(({ code }) => code === "new-advice"),
    };
  };

  it("changes answers from its first day on, in every process, and not a day earlier", async () => {
    const before = await keeping(other);
    expect(before).toMatchObject({ checkedAgainst: rules.code, advised: false });
    expect(before.days).toBeGreaterThan(1);
    await one.deps.data.ruleSets.add(stricter("tightened", "2027-01-01"), now);
    expect(await keeping(other)).toEqual(before);
    now = new Date("2026-12-31T23:59:59Z");
    expect(await keeping(other)).toEqual(before);
    now = new Date("2027-01-01T00:00:00Z");
    // The revision keeps saying what it was checked against; what it answers is of today.
    for (const app of [one, other])
      expect(await keeping(app)).toEqual({ checkedAgainst: rules.code, days: 1, advised: true });
  });

  it("already rules a session that is planned for after its first day", async () => {
    now = new Date("2026-12-20T12:00:00Z");
    const start = `, sessionStart: { local: "2027-01-03T09:00", zone: "America/New_York" }`;
    expect((await keeping(other, "lentils-and-greens", start)).days).toBe(1);
    expect((await keeping(other)).days).toBeGreaterThan(1);
  });

  it("is what plans published from then on are checked against", async () => {
    now = new Date("2027-01-02T12:00:00Z");
    const bundle = renamed(demoBundle("lentils-and-greens"), "published-later");
    // Beyond the tightened rules it would be refused.
    const aDay = <T extends { readonly keeping: readonly KeepingRule[] }>(thing: T): T => ({
      ...thing,
      keeping: thing.keeping.map((rule) => ({ ...rule, days: Math.min(rule.days, 1) })),
    });
    const components = bundle.components.map((each) => aDay({ ...each, routes: each.routes.map(aDay) }));
    expect(await publishPlan(one.deps, { ...bundle, components })).toMatchObject({ ok: true });
    expect(await keeping(other, "published-later")).toMatchObject({ checkedAgainst: "tightened" });
    expect(await keeping(other)).toMatchObject({ checkedAgainst: rules.code });
  });

  it("stands in the list beside the one it superseded", async () => {
    const { data, errors } = await other.ask(`{ ruleSets { code title inForceFrom inForceTo loadedAt checksum } }`);
    expect(errors).toEqual([]);
    expect(data?.["ruleSets"]).toEqual([
      {
        code: "tightened",
        title: "Tightened",
        inForceFrom: "2027-01-01",
        inForceTo: null,
        loadedAt: "2026-12-01T12:00:00.000Z",
        checksum: expect.stringMatching(/^[0-9a-f]{64}$/),
      },
      expect.objectContaining({ code: rules.code, inForceFrom: rules.inForceFrom, inForceTo: "2027-01-01" }),
    ]);
  });

  const mutation = `mutation ($input: LoadRuleSetInput!) { loadRuleSet(input: $input) {
    ruleSet { code inForceFrom } problems { code path line column message } } }`;
  const edition = (code: string, from: string, to: string) =>
    ruleFiles.map(({ name, text }) => ({
      name,
      text: text
        .replace(`code: "${rules.code}"`, `code: "${code}"`)
        .replace(`${rules.inForceFrom}\n`, "2028-01-01\n")
        .replace(from, to),
    }));

  it("is loaded by the operator over the API, while everything runs", async () => {
    const token = await one.tokenFor(null, ["ADMIN"]);
    const input = { files: edition("2028-01", "", "") };
    const { data, errors } = await one.ask(mutation, { input }, token);
    expect(errors).toEqual([]);
    expect(data).toMatchObject({ loadRuleSet: { ruleSet: { code: "2028-01" }, problems: [] } });
    const { data: listed } = await other.ask(`{ ruleSets { code } }`);
    expect(listed?.["ruleSets"]).toContainEqual({ code: "2028-01" });
  });

  it("with a fault is refused by place, and by anybody else for good", async () => {
    const token = await one.tokenFor(null, ["ADMIN"]);
    const input = { files: edition("2028-02", "keeps-as: leftovers", "keeps-as: left-overs") };
    const { data } = await one.ask(mutation, { input }, token);
    const path = expect.arrayContaining(["input", "files", "0", "keeping", "keeps-as"]);
    const problem = { code: "BAD_SHAPE", path, line: expect.any(Number), column: expect.any(Number) };
    expect(data).toMatchObject({ loadRuleSet: { ruleSet: null, problems: [problem] } });
    const theirs = await one.tokenFor(publisher, ["ADMIN"]);
    const { errors } = await one.ask(mutation, { input: { files: edition("2028-03", "", "") } }, theirs);
    expect(errors[0]?.extensions["code"]).toBe("FORBIDDEN");
  });
});
