import type { Deps, ListedPlan, Page } from "../../deps.js";
import { findPublishers } from "../../access/find-publishers.js";
import { rulesToday } from "../../rules/find-rules.js";
import { readKnown } from "./known-by.js";
import { workOutContents } from "./work-out-facts.js";

type Items = Page<ListedPlan>["items"];

/**
 * Plans of a list as the rules and the foods of today have them. As long as nothing else is said of a plan's foods than when its facts were worked out,
 * they hold; else it is computed anew, and left out where it has not one label of each group any more, or cannot be computed.
 */
export async function judgedToday(deps: Deps, items: Items, groups: readonly (readonly string[])[]): Promise<Items> {
  const listed = items.flatMap(({ item }) => (item.facts === null ? [] : [{ ...item, facts: item.facts }]));
  if (listed.length === 0) return items;
  const rules = await rulesToday(deps);
  const known = await readKnown(
    deps,
    rules,
    listed.flatMap(({ facts }) => facts.foods),
  );
  const slugs = [...new Set(listed.map(({ summary }) => summary.publisher))];
  const publishers = await findPublishers(deps, slugs);
  const publisherOf = new Map(slugs.map((slug, at) => [slug, publishers[at] ?? null]));
  const others = listed.filter(
    ({ facts, summary }) => facts.knownBy !== known.checksum(facts.foods, publisherOf.get(summary.publisher) ?? null),
  );
  if (others.length === 0) return items;
  const now = await contentsNow(
    deps,
    others.map(({ summary }) => summary.id),
  );
  return items.flatMap(({ cursor, item }): Items => {
    if (item.facts === null || !now.has(item.summary.id)) return [{ cursor, item }];
    const contents = now.get(item.summary.id) ?? null;
    if (contents === null || !groups.every((group) => group.some((label) => contents.labels.includes(label))))
      return [];
    const unchanged = item.facts.labels.filter((label) => !isOfContents(label));
    const labels = [...contents.labels, ...unchanged];
    return [{ cursor, item: { ...item, facts: { ...item.facts, labels, allergens: contents.allergens } } }];
  });
}

const isOfContents = (label: string): boolean => label.startsWith("diet ") || label.startsWith("free ");

type ContentsNow = Pick<NonNullable<ListedPlan["facts"]>, "labels" | "allergens">;

/** By id of the revision; null: it cannot be computed today. */
async function contentsNow(deps: Deps, ids: readonly string[]): Promise<ReadonlyMap<string, ContentsNow | null>> {
  const bundles = await deps.data.revisions.bundles(ids);
  const found = new Map<string, ContentsNow | null>();
  for (const [at, id] of ids.entries()) {
    const bundle = bundles[at];
    const contents = bundle ? await workOutContents(deps, bundle) : null;
    found.set(id, contents?.ok === true ? contents.value : null);
  }
  return found;
}
