import { afterAll, beforeAll, expect, it } from "vitest";
import { NotAllowed, type Actor, type Caller } from "../../../src/services/access/actor.js";
import { rulesToday } from "../../../src/services/rules/find-rules.js";
import { listRuleSets } from "../../../src/services/rules/find-rule-sets.js";
import { loadRuleSet } from "../../../src/services/rules/load-rule-set.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { publishedRules, ruleFiles } from "../../imports/rules/published-rules.js";
import { describeOnBothDatabases } from "../../kit/databases.js";

const operator: Caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null };

/** The files of the program as another set. */
const edition = (code: string, from: string, change: readonly [from: string, to: string] = ["", ""]) =>
  ruleFiles.map(({ name, text }) => ({
    name,
    text: text
      .replace(`code: "${publishedRules.code}"`, `code: "${code}"`)
      .replace(/in-force-from: .*/, `in-force-from: ${from}`)
      .replace(...change),
  }));

describeOnBothDatabases("loading published rules", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
  });
  afterAll(() => app.close());

  const codes = async () => (await listRuleSets(app.deps)).map(({ code }) => code);

  it("adds a set that is used from the day it names, and says so when it is loaded again", async () => {
    const files = edition("tightened", "2026-12-24", ["days: 4", "days: 3"]);
    const first = await loadRuleSet(app.deps, operator, { files });
    expect(first).toMatchObject({ ok: true, added: true, summary: { code: "tightened", inForceFrom: "2026-12-24" } });
    expect(await loadRuleSet(app.deps, operator, { files })).toMatchObject({ ok: true, added: false });
    expect(await codes()).toEqual(["tightened", publishedRules.code]);
    expect((await rulesToday(app.deps)).code).toBe(publishedRules.code);
    const later = { ...app.deps, clock: () => new Date("2026-12-24T00:00:00Z") };
    expect((await rulesToday(later)).code).toBe("tightened");
  });

  it("refuses another set under a code that is taken, and a file with a fault, by file and line", async () => {
    const before = await codes();
    const taken = await loadRuleSet(app.deps, operator, { files: edition(publishedRules.code, "2027-05-01") });
    expect(taken).toMatchObject({
      ok: false,
      problems: [{ problem: { code: "RULE_SET_EXISTS", set: publishedRules.code } }],
    });
    const files = edition("broken", "2027-06-01", ["keeps-as: leftovers", "keeps-as: left-overs"]);
    const broken = await loadRuleSet(app.deps, operator, { files });
    expect(broken).toMatchObject({ ok: false, problems: [{ file: "food-safety.yaml", line: expect.any(Number) }] });
    expect(await loadRuleSet(app.deps, operator, { files: [] })).toMatchObject({ ok: false });
    expect(await codes()).toEqual(before);
  });

  it.each<[string, Actor]>([
    ["nobody", { kind: "ANYONE" }],
    ["a publisher's token", { kind: "TOKEN", token: "t", publisher: "third-gate-allotments", scopes: ["ADMIN"] }],
    ["an operator's token for other things", { kind: "TOKEN", token: "t", publisher: null, scopes: ["WRITE"] }],
  ])("is not for %s", async (_, actor) => {
    const files = edition("stray", "2027-07-01");
    await expect(loadRuleSet(app.deps, { actor, requestId: null }, { files })).rejects.toThrow(NotAllowed);
    expect(await codes()).not.toContain("stray");
  });
});
