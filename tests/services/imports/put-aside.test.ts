import { beforeAll, expect, it } from "vitest";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import type { Deps } from "../../../src/services/deps.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { mostPutAside } from "../../../src/persistence/imports/import-data.js";
import { nightClock, openFeed, silentLog } from "./open-feed.js";

const more = 70;
const tables = {
  PRICES: { header: "food,pack,content,price\n", good: "egg,six,6 piece,1\n", bad: "moon,x,1 kg,1\n" },
  FOODS: { header: "slug,name\n", good: "moonfruit,Moon fruit\n", bad: "Bad Slug,x\n" },
} as const;

describeOnBothDatabases("an import of which most rows cannot be taken", (open) => {
  let deps: Deps;
  let sql: Awaited<ReturnType<typeof open>>["sql"];
  beforeAll(async () => {
    const database = await open();
    ({ sql } = database);
    await database.data.foods.save(demo.foods);
    deps = { data: database.data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
  });

  it.each(["PRICES", "FOODS"] as const)(
    "%s: keeps the first rows to be mended, counts the others, and says how many more there are",
    async (kind) => {
      const { header, good, bad } = tables[kind];
      const settings = { locale: "en", currency: "XTS" };
      const feed = await openFeed(deps, { publisher: null, kind, slug: kind.toLowerCase(), settings });
      const run = await feed.run(header + bad.repeat(mostPutAside + more) + good);
      expect([run.state, run.read, run.quarantined]).toEqual(["DONE", mostPutAside + more + 1, mostPutAside + more]);
      const kept = await sql.query(
        "SELECT count(*)::int AS n, max(line) AS last FROM quarantined_rows WHERE run_id = $1",
        [run.id],
      );
      expect(kept.rows).toEqual([{ n: mostPutAside, last: mostPutAside + 1 }]);
      expect(run.problems).toEqual([{ code: "MORE_PUT_ASIDE", path: [], count: more, kept: mostPutAside }]);
      expect(run.problems.map(problemText).join()).toContain(`${String(more)} more rows`);
      const again = await feed.run(header + bad + good);
      expect([again.state, again.quarantined, again.problems]).toEqual(["DONE", 1, []]);
    },
  );
});
