import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { receiveFile } from "../../../src/services/imports/files/receive-file.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { bytesOf } from "../../services/imports/open-feed.js";
import { demo, openTestApp, type Answer, type TestApp } from "../open-test-app.js";

const program = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;
const counts = "counts { read created changed unchanged quarantined repeated }";

describeOnBothDatabases("imports over GraphQL", (open) => {
  let app: TestApp;
  let operator: string;
  let own: string;
  let foreign: string;
  let writer: string;

  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data);
    await data.foods.save(demo.foods);
    await data.publishers.save({ slug: "own", name: "Own" });
    await data.publishers.save({ slug: "foreign", name: "Foreign" });
    operator = await app.tokenFor(null, ["IMPORT"]);
    own = await app.tokenFor("own", ["IMPORT"]);
    foreign = await app.tokenFor("foreign", ["IMPORT"]);
    writer = await app.tokenFor("own", ["WRITE", "PUBLISH", "READ_DRAFTS", "ADMIN"]);
  });
  afterAll(() => app.close());

  const saveFeed = `mutation ($input: SaveFeedInput!) { saveFeed(input: $input) {
    feed { slug kind publisher { slug } cron zone enabled settings { source place { kind } measures columns { inFile ours }
      limits { changed quarantined } publish } } problems { code path message } } }`;

  async function load(publisher: string | null, slug: string, text: string): Promise<string> {
    const file = { publisher, slug, name: "list", bytes: bytesOf(text), dryRun: false, force: false };
    const received = await receiveFile(app.deps, program, file);
    if (!received.ok) throw new Error(JSON.stringify(received.problems));
    await runImports(app.deps, "worker-1");
    return received.value.run;
  }

  const field = (answer: Answer, name: string): unknown => answer.data?.[name];

  it("save a feed with all it is read by, and say every fault of one", async () => {
    const settings = { source: "Corner shop", currency: "XTS", columns: [{ inFile: "Ware", ours: "food" }] };
    const input = { slug: "corner-shop", kind: "PRICES", settings, cron: "30 2 * * *", zone: "Europe/Lisbon" };
    const saved = await app.ask(saveFeed, { input }, operator);
    expect(field(saved, "saveFeed")).toEqual({
      feed: {
        ...{
          slug: "corner-shop",
          kind: "PRICES",
          publisher: null,
          cron: "30 2 * * *",
          zone: "Europe/Lisbon",
          enabled: true,
        },
        settings: {
          ...{ source: "Corner shop", place: { kind: "UPLOAD" }, measures: "METRIC", publish: false },
          columns: [{ inFile: "Ware", ours: "food" }],
          limits: { changed: 0.3, quarantined: 0.2 },
        },
      },
      problems: [],
    });
    const wrong = {
      ...input,
      slug: "x",
      settings: { ...settings, place: { kind: "ADDRESS", url: "http://plain.example/" } },
    };
    const refused = await app.ask(saveFeed, { input: wrong }, operator);
    expect(field(refused, "saveFeed")).toMatchObject({
      feed: null,
      problems: [{ code: "BAD_SHAPE", path: ["input", "settings", "place", "url"] }],
    });
  });

  it("show an import with its counts, what it put aside and its report; mend a row; replay and undo it", async () => {
    await app.ask(
      saveFeed,
      { input: { publisher: "own", slug: "plans", kind: "RECIPES", settings: { source: "Our pages" } } },
      own,
    );
    const recipe = {
      "@type": "Recipe",
      name: "Egg pot",
      recipeYield: 4,
      recipeIngredient: ["4 eggs"],
      recipeInstructions: "Boil.",
    };
    const run = await load("own", "plans", JSON.stringify(recipe));
    const shown = await app.ask(
      `query ($run: ID!) {
        importRun(id: $run) { state kind feed { slug } ${counts} problems { code } }
        quarantinedRows(run: $run) { edges { node { line part raw offer settledAt problems { code message } } } }
        importReport(run: $run) { changes { what } moreChanges markdown run { id } }
        importRuns(publisher: "own", feed: "plans") { edges { node { id state } } pageInfo { hasNextPage } } }`,
      { run },
      own,
    );
    expect(shown.errors).toEqual([]);
    expect(field(shown, "importRun")).toMatchObject({
      ...{ state: "DONE", kind: "LOAD", feed: { slug: "plans" }, problems: [] },
      counts: { read: 1, created: 0, changed: 0, unchanged: 0, quarantined: 1, repeated: 0 },
    });
    const [edge] = (field(shown, "quarantinedRows") as { edges: { node: { line: number; offer: string } }[] }).edges;
    const offer = edge?.node.offer ?? "";
    expect(offer).toContain("How many it serves");
    expect(field(shown, "importReport")).toMatchObject({ moreChanges: false, run: { id: run } });
    expect((field(shown, "importReport") as { markdown: string }).markdown).toContain("1 put aside");
    expect(field(shown, "importRuns")).toMatchObject({ edges: [{ node: { id: run, state: "DONE" } }] });

    // The offer, with what was open settled by a writer.
    const text = offer
      .replace(/^locale:/m, "serves: 4\nlocale:")
      .replace(/- do: Boil\./, "- do: Boil.\n        time: 12 min");
    const settled = await app.ask(
      `mutation ($input: SettleRowInput!) { settleRow(input: $input) { row { settledAt } run { id state } problems { message } } }`,
      { input: { run, line: edge?.node.line, text } },
      own,
    );
    const { run: replay } = field(settled, "settleRow") as { run: { id: string } };
    await runImports(app.deps, "worker-1");
    const mended = await app.ask(`query ($id: ID!) { importRun(id: $id) { state ${counts} } }`, { id: replay.id }, own);
    expect(field(mended, "importRun")).toMatchObject({ state: "DONE", counts: { created: 1, quarantined: 0 } });
    // The page says what it said when the draft was made of it.
    const again = await app.ask(
      `mutation ($run: ID!) { replayImport(input: { run: $run }) { run { id } problems { code } } }`,
      { run },
      own,
    );
    await runImports(app.deps, "worker-1");
    const { run: second } = field(again, "replayImport") as { run: { id: string } };
    const unchanged = await app.ask(`query ($id: ID!) { importRun(id: $id) { ${counts} } }`, { id: second.id }, own);
    expect(field(unchanged, "importRun")).toMatchObject({ counts: { unchanged: 1 } });
    const undone = await app.ask(
      `mutation ($run: ID!) { undoImport(input: { run: $run }) { run { kind undoes } problems { code } } }`,
      { run: replay.id },
      own,
    );
    expect(field(undone, "undoImport")).toEqual({ run: { kind: "UNDO", undoes: replay.id }, problems: [] });
    await runImports(app.deps, "worker-1");
    expect(await app.deps.data.drafts.versions([{ kind: "PLAN", publisher: "own", slug: "egg-pot" }])).toEqual([null]);
  });

  describe("ask for the scope IMPORT of the feed's owner", () => {
    const operations: readonly (readonly [string, string, "FORBIDDEN" | "ABSENT"])[] = [
      ["feeds", `{ feeds(publisher: "own") { slug } }`, "FORBIDDEN"],
      ["feed", `{ feed(publisher: "own", slug: "kept") { slug } }`, "FORBIDDEN"],
      ["importRuns", `{ importRuns(publisher: "own", feed: "kept") { pageInfo { hasNextPage } } }`, "FORBIDDEN"],
      ["importRun", `{ importRun(id: "RUN") { id } }`, "ABSENT"],
      ["quarantinedRows", `{ quarantinedRows(run: "RUN") { pageInfo { hasNextPage } } }`, "ABSENT"],
      ["importReport", `{ importReport(run: "RUN") { markdown } }`, "ABSENT"],
      [
        "saveFeed",
        `mutation { saveFeed(input: { publisher: "own", slug: "kept", kind: RECIPES, settings: { source: "s" } }) { feed { slug } problems { code } } }`,
        "FORBIDDEN",
      ],
      [
        "startImport",
        `mutation { startImport(input: { publisher: "own", slug: "none" }) { problems { code } } }`,
        "FORBIDDEN",
      ],
      ["cancelImport", `mutation { cancelImport(input: { run: "RUN" }) { problems { code } } }`, "ABSENT"],
      ["undoImport", `mutation { undoImport(input: { run: "RUN" }) { problems { code } } }`, "ABSENT"],
      [
        "replayImport",
        `mutation { replayImport(input: { run: "RUN", dryRun: true }) { problems { code } } }`,
        "ABSENT",
      ],
      ["settleRow", `mutation { settleRow(input: { run: "RUN", line: 99 }) { problems { code } } }`, "ABSENT"],
      [
        "removeFeed",
        `mutation { removeFeed(input: { publisher: "own", slug: "none" }) { problems { code } } }`,
        "FORBIDDEN",
      ],
    ];
    let run: string;
    beforeAll(async () => {
      await app.ask(
        saveFeed,
        { input: { publisher: "own", slug: "kept", kind: "RECIPES", settings: { source: "s" } } },
        own,
      );
      run = await load("own", "kept", "[]");
    });

    it.each(operations)("%s", async (name, query, forForeign) => {
      const ask = (token?: string) => app.ask(query.replace("RUN", run), {}, token);
      const code = ({ errors }: Answer) => errors[0]?.extensions["code"];
      expect(code(await ask())).toBe("UNAUTHENTICATED");
      expect(code(await ask(writer))).toBe("FORBIDDEN");
      const others = await ask(foreign);
      if (forForeign === "FORBIDDEN") expect(code(others)).toBe("FORBIDDEN");
      else expect(JSON.stringify([field(others, name)])).toMatch(/^\[null\]$|UNKNOWN_RUN/);
      for (const token of [own, operator]) {
        const answer = await ask(token);
        expect(answer.errors).toEqual([]);
        expect(JSON.stringify(answer.data)).not.toContain("UNKNOWN_RUN");
      }
    });
  });
});
