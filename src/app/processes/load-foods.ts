import { hash as hashOf } from "node:crypto";
import { readBaseFoods } from "../../imports/base-foods/read-base-foods.js";
import { shippedEdition } from "../../imports/usda/read-usda.js";
import type { RuleProblem } from "../../imports/rules/rule-texts.js";
import type { BaseFoodsChanged } from "../../services/deps.js";
import { loadShippedBaseFoods } from "../../services/foods/load-base-foods.js";
import { reviewRevisions } from "../../services/plans/review-revisions.js";
import { rulesToday } from "../../services/rules/find-rules.js";
import type { Environment } from "../setup/environment.js";
import { openDatabase, type OpenDatabase } from "../setup/open-database.js";
import { openLog } from "../setup/open-log.js";
import { projectRoot } from "../setup/project-root.js";
import { tableBytes } from "../setup/read-base-folder.js";
import { readShipped } from "../setup/shipped-data.js";

interface FoodsLoaded {
  readonly problems: readonly RuleProblem[];
  /** The edition in force afterwards. */
  readonly edition: string | null;
  /** null: the database had this edition or a later one. */
  readonly changed: BaseFoodsChanged | null;
  /** Published plans of which something less safe is told now, as `publisher/slug`. */
  readonly lessSafePlans: readonly string[];
}

/**
 * Loads an edition of the base foods: the one in these files, or else the one that comes with the program. Then it reviews what is
 * published, since a corrected food may make an answer less safe.
 */
export async function loadFoods(
  settings: Environment,
  files: readonly { readonly name: string; readonly text: string }[],
): Promise<FoodsLoaded> {
  const database = await openDatabase(settings, openLog(settings.logLevel));
  try {
    return await load(database, files);
  } finally {
    await database.close();
  }
}

async function load(
  { deps, baseFoods }: OpenDatabase,
  files: readonly { readonly name: string; readonly text: string }[],
): Promise<FoodsLoaded> {
  const given = files.length === 0 ? { problems: [], changed: baseFoods } : await loadFiles(deps, files);
  const edition = (await deps.data.foods.baseEdition())?.code ?? null;
  if (given.changed === null) return { ...given, edition, lessSafePlans: [] };
  const { lessSafePlans } = await reviewRevisions(deps);
  return { ...given, edition, lessSafePlans };
}

async function loadFiles(
  deps: OpenDatabase["deps"],
  files: readonly { readonly name: string; readonly text: string }[],
): Promise<Pick<FoodsLoaded, "problems" | "changed">> {
  const root = projectRoot();
  const [rules, tables, rows, shipped] = await Promise.all([
    rulesToday(deps),
    readShipped("base-tables", root),
    readShipped("catalogue", root),
    readShipped("base-foods", root),
  ]);
  const { base, problems } = readBaseFoods({
    files,
    ...tableBytes(tables),
    catalogue: { edition: shippedEdition, rows: new Map(rows.map((row) => [row.ndbNo, row])) },
    rules: rules.safety,
    known: shipped.map(({ slug }) => slug),
  });
  if (base === null) return { problems, changed: null };
  const hash = hashOf("sha256", JSON.stringify(base.foods));
  const changed = await loadShippedBaseFoods(deps, { ...base.edition, hash }, () => Promise.resolve(base.foods));
  return { problems, changed };
}
