import type { NotEatenReason, Nutrition } from "../../domain/nutrition/nutrients.js";
import type { NameBook } from "../words/name-book.js";

const ofDraining: ReadonlySet<NotEatenReason> = new Set(["DRAINED", "DRAINED_BY_CLASS"]);

/** What figures leave out and what they rest on, in sentences: the same beside them in every way out. */
export function nutritionNotes(
  { missing, added, unweighed, notEaten }: Nutrition,
  { words, foods, food }: Pick<NameBook, "words" | "foods" | "food">,
): readonly string[] {
  const named = (slugs: readonly string[], say: (given: { readonly foods: string }) => string): readonly string[] =>
    slugs.length === 0 ? [] : [say({ foods: foods(slugs) })];
  const because = (is: (reason: NotEatenReason) => boolean) => notEaten.filter(({ why }) => why.some(is));
  const shares = because((reason) => ofDraining.has(reason)).map((each) =>
    each.share === null
      ? food(each.food)
      : words.shareOf({ share: `${Math.round(each.share.low * 100)} %`, food: food(each.food) }),
  );
  return [
    ...named(missing, words.missingEnergy),
    ...named(added, words.plusWhatYouAdd),
    ...named(
      unweighed.filter((each) => !added.includes(each)),
      words.unweighed,
    ),
    ...named(
      because((reason) => reason === "STATED").map((each) => each.food),
      words.notEaten,
    ),
    ...(shares.length === 0 ? [] : [words.pouredAway({ shares: shares.join(", ") })]),
    ...(because((reason) => reason === "DRAINED_BY_CLASS").length === 0 ? [] : [words.drainedByClass]),
    ...named(
      because((reason) => reason === "DRAINED_UNWEIGHED").map((each) => each.food),
      words.drainedUnweighed,
    ),
  ];
}
