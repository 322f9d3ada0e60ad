import { hash } from "node:crypto";
import type { Food } from "../../domain/model/food.js";
import type { Db } from "../database/session.js";
import { namesOf, wordsOfFood, type FoodRow } from "./food-rows.js";

type NamedFood = Pick<Food, "slug" | "names" | "aisle"> & { readonly base?: boolean };

/** The names read last, by the contents of all foods: nothing else decides them, in whichever database they stand. */
let last: { readonly contents: string; readonly names: readonly NamedFood[] } | null = null;

/**
 * Slug and names of every food. Names are read again only where some food differs: a base of a thousand foods has twenty times as
 * many words, and readers of lines ask for them each time.
 */
export async function foodNames(db: Db): Promise<readonly NamedFood[]> {
  const [found] = await db.$queryRaw<{ readonly contents: string | null }[]>`
    SELECT encode(sha256(convert_to(string_agg(concat_ws(' ', slug, content_hash, base_hash), ',' ORDER BY slug), 'UTF8')), 'hex')
      AS contents FROM foods`;
  const contents = found?.contents ?? "";
  const known = last;
  if (known?.contents === contents) return known.names;
  const rows = await db.$queryRaw<(Pick<FoodRow, "slug" | "words" | "aisle"> & Contents)[]>`
    SELECT f.slug, f.aisle, f.content_hash AS "contentHash", f.base_hash AS "baseHash", ${wordsOfFood} AS words
    FROM foods f ORDER BY f.slug`;
  const names = rows.map(({ slug, aisle, words, contentHash, baseHash }) => ({
    slug,
    aisle,
    names: namesOf(words),
    ...(baseHash === contentHash ? { base: true } : {}),
  }));
  // Of what was read, since a food may have been saved meanwhile.
  const read = rows.map(({ slug, contentHash, baseHash }) => [
    slug,
    contentHash,
    ...(baseHash === null ? [] : [baseHash]),
  ]);
  last = {
    contents: hash("sha256", read.map((each) => each.join(" ")).join(",")),
    names,
  };
  return names;
}

interface Contents {
  readonly contentHash: string;
  readonly baseHash: string | null;
}
