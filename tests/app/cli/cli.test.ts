import { execFileSync } from "node:child_process";
import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { runCli, runCliJson } from "./run-cli.js";

const publisher = "third-gate-allotments";
const example = "examples/first-plan.yaml";
const plan = `${publisher}/barley-and-carrots`;
let folder: string;

beforeAll(async () => {
  execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
  folder = await mkdtemp(join(tmpdir(), "prepwright-cli-"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const file = async (name: string, content: string | Uint8Array): Promise<string> => {
  const path = join(folder, name);
  await writeFile(path, content);
  return path;
};

describeOnBothDatabases("the command line and a service", (open) => {
  let app: TestApp;
  let server: string;
  let writer: Record<string, string>;
  let operator: Record<string, string>;

  const as = (token: string) => ({ PREPWRIGHT_SERVER: server, PREPWRIGHT_TOKEN: token });

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    await app.app.listen({ port: 0, host: "127.0.0.1" });
    server = `http://127.0.0.1:${(app.app.server.address() as AddressInfo).port}`;
    writer = as(await app.tokenFor(publisher, ["READ_DRAFTS", "WRITE", "PUBLISH"]));
    operator = as(await app.tokenFor(null, ["ADMIN", "READ_DRAFTS", "WRITE", "PUBLISH"]));
  });
  afterAll(() => app.close());

  it("looks up foods that are not among the files, and finds nothing wrong with the example", async () => {
    const { exit, answer } = await runCliJson(["check", example], writer);
    expect([exit, answer]).toEqual([
      0,
      {
        command: "check",
        ok: true,
        exit: 0,
        problems: [],
        findings: [],
        result: { documents: 3, whole: true, notAtHand: { foods: [], components: [] } },
      },
    ]);
  });

  it("publishes several files in any order, and a second time changes nothing", async () => {
    const parts = (await readFile(example, "utf8")).split(/^---\n/m);
    const names = ["c1.yaml", "c2.yaml", "p.yaml"];
    const files = await Promise.all(parts.map((part, at) => file(names[at] ?? "", part)));
    const first = await runCliJson(["publish", ...files.toReversed()], writer);
    const published = { slug: "barley-and-carrots", title: "Barley and carrots, three ways", revision: 1 };
    expect([first.exit, first.answer.result]).toEqual([
      0,
      { publisher, saved: 3, plans: [{ ...published, created: true }] },
    ]);
    const again = await runCli(["publish", ...files], writer);
    expect(again).toMatchObject({
      exit: 0,
      out: `No draft changed.\n${plan} is published like this already, as revision 1.\n`,
    });
  });

  it("pulls drafts back to the byte, and never writes over a file that says something else", async () => {
    const to = join(await mkdtemp(join(folder, "pulled-")), "new");
    const pulled = await runCliJson(["pull", plan, "--to", to], writer);
    expect(pulled.answer.result?.["files"]).toEqual(
      ["barley-and-carrots.plan", "sunday-barley.component", "sunday-carrots.component"].map((name) => ({
        path: join(to, `${name}.yaml`),
        kind: name.endsWith("plan") ? "PLAN" : "COMPONENT",
        slug: name.split(".")[0],
        version: 1,
        written: true,
      })),
    );
    const parts = (await readFile(example, "utf8")).split(/^---\n/m);
    const text = (name: string) => readFile(join(to, name), "utf8");
    expect(await text("barley-and-carrots.plan.yaml")).toBe(parts[2]);
    expect(await text("sunday-barley.component.yaml")).toBe(parts[0]);
    expect((await runCli(["publish", ...(await readdir(to)).map((name) => join(to, name))], writer)).out).toContain(
      "No draft changed.",
    );
    await writeFile(join(to, "sunday-carrots.component.yaml"), "mine");
    const refused = await runCliJson(["pull", plan, "--to", to], writer);
    expect([refused.exit, refused.answer.problems.map(({ code }) => code)]).toEqual([5, ["FILE_DIFFERS"]]);
    expect(await text("sunday-carrots.component.yaml")).toBe("mine");
    expect((await runCli(["pull", plan, "--to", to, "--overwrite"], writer)).exit).toBe(0);
    expect(await text("sunday-carrots.component.yaml")).toBe(parts[1]);
  });

  it("pulls what the publisher says of itself too, so that another folder publishes the same", async () => {
    const says = await file(
      "publisher.yaml",
      `kind: publisher\nslug: ${publisher}\nregion: US\nlanguages: [en-US, de]\n`,
    );
    expect((await runCli(["publish", says], writer)).exit).toBe(0);
    const to = join(await mkdtemp(join(folder, "pulled-")), "new");
    const path = join(to, `${publisher}.publisher.yaml`);
    const pulled = await runCliJson(["pull", plan, "--to", to], writer);
    expect(pulled.answer.result).toMatchObject({ publisher: { path, written: true } });
    expect((await runCliJson(["pull", plan, "--to", to], writer)).answer.result).toMatchObject({
      publisher: { path, written: false },
    });
    expect(await readFile(path, "utf8")).toMatch(/^kind: publisher\nslug: \S+\nregion: US\n/);
    expect((await runCli(["check", path], writer)).exit).toBe(0);
    await app.deps.data.publishers.describe(publisher, {
      region: null,
      currency: null,
      languages: [],
      description: null,
      website: null,
    });
    expect((await runCli(["publish", path], writer)).exit).toBe(0);
    expect((await app.deps.data.publishers.bySlugs([publisher]))[0]).toMatchObject({
      region: "US",
      languages: ["en-US", "de"],
    });
    await app.deps.data.publishers.describe(publisher, {
      region: null,
      currency: null,
      languages: [],
      description: null,
      website: null,
    });
    expect((await runCliJson(["pull", plan, "--to", to], writer)).answer.result).toMatchObject({ publisher: null });
  });

  it("corrects with a note for readers, and withdraws with a reason", async () => {
    const text = (await readFile(example, "utf8")).replace("amount: 300 g, preparation", "amount: 320 g, preparation");
    const corrected = await file("corrected.yaml", text);
    const done = await runCliJson(["publish", corrected, "--note", "320 g of barley, not 300 g."], writer);
    expect(done.answer.result).toMatchObject({ saved: 1, plans: [{ revision: 2, created: true }] });
    const read = `{ plan(publisher: "${publisher}", slug: "barley-and-carrots") { revision changeNote } }`;
    expect((await app.ask(read)).data).toEqual({ plan: { revision: 2, changeNote: "320 g of barley, not 300 g." } });
    // Two of the three documents of that file are as they were.
    const pulled = await runCliJson(["pull", plan, "--to", await mkdtemp(join(folder, "corrected-"))], writer);
    const versions = pulled.answer.result?.["files"] as readonly { readonly slug: string; readonly version: number }[];
    expect(versions.map(({ slug, version }) => [slug, version])).toEqual([
      ["barley-and-carrots", 1],
      ["sunday-barley", 2],
      ["sunday-carrots", 1],
    ]);
    const same = await runCliJson(["publish", corrected, "--note", "Once more."], writer);
    expect(same.answer.result).toMatchObject({ saved: 0, plans: [{ revision: 2, created: false }] });
    const withdrawn = await runCliJson(["withdraw", plan, "--revision", "2", "--reason", "The wrong sack."], writer);
    expect(withdrawn.answer.result).toEqual({ publisher, slug: "barley-and-carrots", revision: 2, inForce: 1 });
    const again = await runCliJson(["withdraw", plan, "--revision", "2", "--reason", "Again."], writer);
    expect([again.exit, again.answer.problems[0]?.code]).toEqual([1, "ALREADY_WITHDRAWN"]);
  });

  it("discards a food of the publisher's own, and names the drafts that still name it", async () => {
    const text = `kind: food
slug: sea-beet
names: { en: sea beet }
aisle: vegetables
shopped-by: mass
---
kind: component
slug: boiled-beet
title: Boiled beet
yield: { amount: 1 kg, source: writer }
lines: [{ food: sea-beet, amount: 1 kg }]
`;
    const saved = await runCli(["publish", await file("beet.yaml", text)], writer);
    expect(saved.exit).toBe(0);
    const name = `${publisher}/sea-beet`;
    expect((await runCliJson(["discard", "food", name], writer)).answer.result).toEqual({
      ...{ publisher, kind: "FOOD", slug: "sea-beet", version: 1 },
      namedBy: [{ kind: "COMPONENT", slug: "boiled-beet" }],
    });
    const again = await runCliJson(["discard", "food", name], writer);
    expect([again.exit, again.answer.problems[0]?.code]).toEqual([1, "UNKNOWN_DRAFT"]);
    const said = await runCli(["discard", "component", `${publisher}/boiled-beet`], writer);
    expect(said).toMatchObject({ exit: 0, out: expect.stringMatching(/^Discarded the component .*version 1\./) });
  });

  it("takes a note with a first revision, which has no reader to tell", async () => {
    const text = (await readFile(example, "utf8"))
      .replaceAll("sunday-", "monday-")
      .replace("slug: barley-and-carrots", "slug: first-with-note");
    const done = await runCliJson(["publish", await file("note.yaml", text), "--note", "New."], writer);
    expect(done.answer).toMatchObject({ exit: 0, result: { plans: [{ revision: 1, created: true }] } });
  });

  it("saves nothing of what could not be published, and says where and why", async () => {
    const text = (await readFile(example, "utf8"))
      .replaceAll("sunday-", "tuesday-")
      .replace("slug: barley-and-carrots", "slug: broken")
      .replace("food: carrot,", "food: carot,");
    const broken = await file("broken.yaml", text);
    const line = text.split("\n").findIndex((each) => each.includes("carot")) + 1;
    const { exit, err } = await runCli(["publish", broken], writer);
    expect(exit).toBe(1);
    expect(err).toContain(`${broken}:${line}:`);
    expect(err).toContain('There is no food "carot".');
    expect((await runCli(["pull", `${publisher}/broken`], writer)).exit).toBe(1);
    const claims = text.replace("carot,", "carrot,").replace("serves: 2", "serves: 2\nclaims: [vegan]");
    const claimed = await runCliJson(["publish", await file("claims.yaml", claims)], writer);
    expect(claimed.exit).toBe(1);
    expect(claimed.answer.findings).toContainEqual(
      expect.objectContaining({ severity: "STOPS", code: "CLAIM_BROKEN" }),
    );
    expect((await runCli(["pull", `${publisher}/broken`], writer)).exit).toBe(1);
  });

  it("does not overwrite unasked what somebody else saved", async () => {
    const other = as(await app.tokenFor(publisher, ["READ_DRAFTS", "WRITE", "PUBLISH"]));
    const text = (await readFile(example, "utf8"))
      .replaceAll("sunday-", "friday-")
      .replace("slug: barley-and", "slug: two-writers");
    const mine = await file("mine.yaml", text);
    expect((await runCli(["publish", mine], writer)).exit).toBe(0);
    const theirs = await file("theirs.yaml", text.replace("title: Roast carrots", "title: Burnt carrots"));
    const refused = await runCliJson(["publish", theirs], other);
    expect(refused.exit).toBe(5);
    expect(refused.answer.problems).toMatchObject([{ code: "SAVED_BY_ANOTHER", file: theirs, path: ["slug"] }]);
    const overwritten = await runCliJson(["publish", theirs, "--overwrite"], other);
    expect([overwritten.exit, overwritten.answer.result]).toMatchObject([0, { saved: 1 }]);
    expect((await runCli(["publish", mine], writer)).exit).toBe(5);
  });

  it("ends with 4 and without a word of the token where the token may not", async () => {
    const reader = as(await app.tokenFor(publisher, ["READ_DRAFTS"]));
    const foreign = as(await app.tokenFor(null, ["IMPORT"]));
    const text = (await readFile(example, "utf8")).replace("title: Roast", "title: Stolen");
    const stolen = await file("stolen.yaml", text);
    for (const environment of [reader, foreign, { PREPWRIGHT_SERVER: server }]) {
      const { exit, answer, out, err } = await runCliJson(["publish", stolen, "--overwrite"], environment);
      expect(exit).toBe(4);
      expect(answer.problems).toMatchObject([{ code: expect.stringMatching(/^(FORBIDDEN|UNAUTHENTICATED)$/) }]);
      expect(out + err).not.toContain("prepwright_");
    }
    const list = await runCli(["token", "list"], reader);
    expect(list).toMatchObject({ exit: 4, out: "" });
  });

  it("gives, lists and takes away tokens, and shows a secret only once", async () => {
    const words = ["token", "create", "--name", "script", "--publisher", publisher, "--scopes", "read-drafts,write"];
    const made = await runCli(words, operator);
    expect(made.out).toMatch(/^prepwright_[0-9A-Za-z]{44}\n$/);
    const secret = made.out.trim();
    const id = secret.slice("prepwright_".length, "prepwright_".length + 8);
    const { answer, out } = await runCliJson(["token", "list", "--publisher", publisher], operator);
    expect(answer.result?.["tokens"]).toContainEqual(
      expect.objectContaining({ id, name: "script", publisher, scopes: ["READ_DRAFTS", "WRITE"], revokedAt: null }),
    );
    expect(out).not.toContain("prepwright_");
    const pasted = await runCli(["token", "revoke", secret], operator);
    expect(pasted).toEqual({ exit: 0, out: `Revoked ${id} (script).\n`, err: "" });
    const used = await runCli(["check", example], as(secret));
    expect(used.exit).toBe(4);
    expect(used.out + used.err).not.toContain(secret);
    const none = await runCliJson(["token", "revoke", "00000000"], operator);
    expect([none.exit, none.answer.problems[0]?.code]).toEqual([1, "UNKNOWN_TOKEN"]);
  });

  it("makes publishers for the operator alone", async () => {
    const words = ["publisher", "create", "fourth-gate", "--name", "Fourth Gate"];
    expect((await runCli(words, writer)).exit).toBe(4);
    const made = await runCliJson(words, operator);
    expect([made.exit, made.answer.result]).toEqual([0, { publisher: { slug: "fourth-gate", name: "Fourth Gate" } }]);
    const again = await runCliJson(words, operator);
    expect([again.exit, again.answer.problems[0]?.code]).toEqual([1, "SLUG_TAKEN"]);
  });

  it("loads published rules, and says in which file one is wrong", async () => {
    const names = ["allergens.yaml", "cautions.yaml", "food-safety.yaml", "keeping-classes.yaml", "rule-set.yaml"];
    const files = await Promise.all(
      names.map(async (name) =>
        file(name, (await readFile(join("seeds/rules", name), "utf8")).replace(/^code: .*$/m, "code: by-hand")),
      ),
    );
    const loaded = await runCliJson(["rules", "load", ...files], operator);
    expect([loaded.exit, loaded.answer.result]).toMatchObject([0, { ruleSet: { code: "by-hand" } }]);
    const wrong = await file("rule-set.yaml", "kind: rule-set\ncode: half\n");
    const refused = await runCliJson(["rules", "load", ...files.slice(0, -1), wrong], operator);
    expect(refused.exit).toBe(1);
    expect(refused.answer.problems.map((problem) => problem.file)).toContain(wrong);
  });

  it("takes a plan back as a whole, and puts it in force again by publishing", async () => {
    const words = ["unpublish", plan, "--reason", "The soak is too short."];
    expect((await runCli(words.slice(0, 2), writer)).exit).toBe(2);
    const misspelt = await runCliJson(["unpublish", `${publisher}/barley-and-carrot`, ...words.slice(2)], writer);
    expect([misspelt.exit, misspelt.answer.problems[0]?.code]).toEqual([1, "UNKNOWN_PLAN"]);
    const taken = await runCliJson(words, writer);
    expect([taken.exit, taken.answer.result]).toMatchObject([0, { slug: "barley-and-carrots", inForce: null }]);
    const read = `{ plan(publisher: "${publisher}", slug: "barley-and-carrots") { revision } }`;
    expect((await app.ask(read)).errors[0]?.extensions["code"]).toBe("WITHDRAWN");
    const again = await runCliJson(words, writer);
    expect([again.exit, again.answer.problems[0]?.code]).toEqual([1, "WITHDRAWN"]);
    const published = await runCliJson(["publish", example, "--overwrite"], writer);
    expect(published.exit).toBe(0);
    expect((await app.ask(read)).errors).toEqual([]);
    const alone = [
      "withdraw",
      plan,
      "--revision",
      String((published.answer.result?.["plans"] as { revision: number }[])[0]?.revision),
    ];
    const none = await runCliJson([...alone, "--then", "nothing", "--reason", "Once more."], writer);
    expect(none.answer.result).toMatchObject({ inForce: null });
  });
});
