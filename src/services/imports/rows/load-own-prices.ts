import { packsAlone } from "../../../domain/component/packs-alone.js";
import { documentLimits } from "../../../imports/documents/schemas/scalar-schemas.js";
import type { Food, Pack } from "../../../domain/model/food.js";
import type { Problem } from "../../../domain/problem.js";
import { packsText } from "../../../imports/documents/yaml/value-text.js";
import { findOutlyingPrices } from "../../../imports/prices/find-outlying-prices.js";
import type { PriceRow } from "../../../imports/prices/read-price-row.js";
import type { ImportChange } from "../../../persistence/imports/import-data.js";
import { checksumOf } from "../../../persistence/sql/canonical-json.js";
import { draftAuthorOf } from "../../access/draft-author.js";
import type { Deps, Draft } from "../../deps.js";
import { importCaller, type DraftAfter, type DraftBefore } from "../../drafts/store-draft.js";
import { findFoodsOf } from "../../foods/find-foods-of.js";
import { authorOf } from "../../write.js";
import type { Loaded, RunningImport } from "../running-import.js";
import { loadTable, type ComparedRows } from "./load-table.js";
import { priceRows } from "./price-rows.js";
import { priceFactor } from "./quarantine-outliers.js";

/** A food's packs, as a price list left them. */
export interface PacksAfter extends DraftAfter {
  readonly value: Food;
}

/**
 * Loads a price list of a publisher's own: its packs become those that the publisher adds to each food. Packs that the list does not name
 * stay; of one id the list counts.
 */
export async function loadOwnPrices(deps: Deps, job: RunningImport, publisher: string): Promise<Loaded> {
  const rows = await priceRows(deps, job, publisher);
  const outlying = job.mended ? new Map<string, Problem>() : await outlyingRows(deps, publisher, rows);
  return loadTable<PriceRow>(deps, job, {
    rows,
    keyOf,
    begin: (data) => data.publishers.lock(publisher),
    compare: (data, read) => comparePacks({ ...deps, data }, job, publisher, read, outlying),
  });
}

const keyOf = ({ food, pack }: PriceRow): string => `${food}\n${pack.id}`;

type Rows = Awaited<ReturnType<typeof priceRows>>;

/** What nobody should believe, by the keys of its rows. Of several rows of one pack the last counts. */
async function outlyingRows({ data }: Deps, publisher: string, rows: Rows): Promise<ReadonlyMap<string, Problem>> {
  const written = new Map<string, Map<string, Pack>>();
  for await (const some of rows()) {
    for (const row of some) {
      if (!row.ok) continue;
      const { food, pack } = row.value;
      const packs = written.get(food) ?? new Map<string, Pack>();
      packs.set(pack.id, pack);
      written.set(food, packs);
    }
  }
  const slugs = [...written.keys()];
  const foods = await findFoodsOf(data, publisher, slugs);
  const found = new Map<string, Problem>();
  slugs.forEach((food, at) => {
    const packs = [...(written.get(food)?.values() ?? [])];
    for (const [pack, problem] of findOutlyingPrices(food, packs, foods[at]?.packs ?? [], priceFactor))
      found.set(keyOf({ food, pack }), problem);
  });
  return found;
}

async function comparePacks(
  deps: Deps,
  { feed }: RunningImport,
  publisher: string,
  read: readonly PriceRow[],
  outlying: ReadonlyMap<string, Problem>,
): Promise<ComparedRows<PriceRow>> {
  const { data } = deps;
  const refused = new Map<PriceRow, readonly Problem[]>();
  const slugs = [...new Set(read.map(({ food }) => food))];
  const drafts = await data.publisherPacks.drafts(slugs.map((slug) => ({ publisher, slug })));
  const lists = new Map(slugs.map((slug, at) => [slug, listOf(drafts[at] ?? null)]));
  const counts = { created: 0, changed: 0, known: 0 };
  for (const row of read) {
    const list = lists.get(row.food);
    if (list === undefined) continue;
    const was = list.packs.get(row.pack.id);
    const problem = outlying.get(keyOf(row)) ?? tooMany(list, was);
    if (was !== undefined) counts.known += 1;
    if (problem !== null) refused.set(row, [problem]);
    else if (was === undefined || factsOf(was) !== factsOf(row.pack)) {
      counts[was === undefined ? "created" : "changed"] += 1;
      list.packs.set(row.pack.id, row.pack);
      list.isMoved = true;
    }
  }
  const moved = [...lists].filter(([, { isMoved }]) => isMoved);
  const by = importCaller(feed.slug).actor;
  const changes = moved.map(([slug, { draft, packs }]) => {
    const value = packsAlone(slug, [...packs.values()]);
    const after: PacksAfter = { version: (draft?.version ?? 0) + 1, text: packsText(value), value };
    return { slug, draft, after };
  });
  return {
    ...{ ...counts, refused },
    changes: changes.map(({ slug, draft, after }) => ({ key: keyOfChange(slug), before: beforeOf(draft), after })),
    save: async () => {
      const saved: ImportChange[] = [];
      for (const { slug, draft, after } of changes) {
        const before = draft?.version ?? null;
        const writing = { document: { text: after.text, format: "YAML" as const }, by: draftAuthorOf(by) };
        const version = await data.publisherPacks.saveDraft(publisher, after.value, before, writing);
        saved.push({ key: keyOfChange(slug), before: beforeOf(draft), after: { ...after, version } });
        await data.auditTrail.add({
          ...{ at: deps.clock(), author: authorOf(by), publisher, action: "IMPORT_DRAFT", requestId: null },
          ...{ subjectKind: "PACKS_DRAFT", subject: slug, before, after: version },
        });
      }
      return saved;
    },
  };
}

const keyOfChange = (slug: string): string => `PACKS ${slug}`;

interface PackList {
  readonly draft: Draft<Food> | null;
  readonly packs: Map<string, Pack>;
  isMoved: boolean;
}

const listOf = (draft: Draft<Food> | null): PackList => ({
  draft,
  packs: new Map(draft?.value.packs.map((pack) => [pack.id, pack])),
  isMoved: false,
});

/** The day of looking is no fact about a pack: alone it changes nothing. */
const factsOf = ({ seen: _, ...facts }: Pack): string => checksumOf(facts);

const tooMany = ({ packs }: PackList, was: Pack | undefined): Problem | null =>
  was !== undefined || packs.size < documentLimits.entries
    ? null
    : {
        code: "TOO_LARGE",
        path: ["pack"],
        what: "packs of one food",
        size: packs.size + 1,
        limit: documentLimits.entries,
      };

const beforeOf = (draft: Draft<Food> | null): DraftBefore | null => {
  if (draft === null) return null;
  const { version, updatedBy, value, document } = draft;
  return { version, updatedBy, value, document };
};
