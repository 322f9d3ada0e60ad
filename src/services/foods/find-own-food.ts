import type { Food } from "../../domain/model/food.js";
import { mayUse, type Actor } from "../access/actor.js";
import type { Data, Deps, OwnedSlug } from "../deps.js";
import { isStorable } from "../storable-text.js";
import { findFoods } from "./find-foods.js";
import { findFoodsOf } from "./find-foods-of.js";

/**
 * A food as a publisher's plans have it: to whoever may read its drafts as it is saved, to all others as its newest published plan
 * froze it. A food that all share where the publisher has none of its own; null: there is neither.
 */
export async function findOwnFood(deps: Deps, actor: Actor, name: OwnedSlug): Promise<Food | null> {
  const { publisher, slug } = name;
  const { data } = deps;
  if (!isStorable(publisher) || !isStorable(slug)) return null;
  if (mayUse(actor, "READ_DRAFTS", publisher)) return (await findFoodsOf(data, publisher, [slug]))[0] ?? null;
  return (await findPublishedFoods(data, publisher, [slug]))[0] ?? null;
}

/** Foods as everybody sees a publisher's, in the order asked for. What is not published is not there: then it is the one that all share. */
export async function findPublishedFoods(
  data: Data,
  publisher: string,
  slugs: readonly string[],
): Promise<readonly (Food | null)[]> {
  const names = slugs.map((slug) => ({ publisher, slug }));
  const [foods, packs] = [await data.publisherFoods.published(names), await data.publisherPacks.published(names)];
  const published = slugs.map((_, at) => foods[at] ?? packs[at] ?? null);
  const missing = slugs.filter((_, at) => published[at] === null);
  const shared = missing.length === 0 ? [] : await findFoods({ data }, missing);
  const bySlug = new Map(missing.map((slug, at) => [slug, shared[at] ?? null]));
  return slugs.map((slug, at) => published[at] ?? bySlug.get(slug) ?? null);
}
