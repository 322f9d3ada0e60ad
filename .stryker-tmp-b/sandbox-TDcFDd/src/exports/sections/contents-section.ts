// @ts-nocheck
import type { AllergenPresence } from "../../domain/model/food.js";
import type { AllergenStatement } from "../../domain/nutrition/allergens.js";
import type { DietStatement } from "../../domain/nutrition/diets.js";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { listOf, paragraph, section, strong, text, type Block, type Lines } from "../document.js";
import type { NameBook } from "../name-book.js";

/** Allergens in their values and diets in theirs; what is not known is said, never left out. */
export function contentsSection({ contents }: Pick<PlanAnswer, "contents">, book: NameBook): readonly Block[] {
  const { allergens, diets } = contents.plan;
  const lists = allergens.lists.map(({ law, region }) => `${law} (${region})`).join("; ");
  return section(2, book.words.contents, [
    paragraph([text(lists === "" ? book.words.noLists : book.words.allergenLists(lists))]),
    ...listOf("ITEMS", [...allergenItems(allergens, book), ...dietItems(diets, book)]),
  ]);
}

const values = [
  "CONTAINS",
  "MAY_CONTAIN",
  "UNKNOWN",
  "DOES_NOT_CONTAIN",
] as const satisfies readonly AllergenPresence[];

function allergenItems({ findings, alsoContains }: AllergenStatement, book: NameBook): readonly Lines[] {
  const { words, foods } = book;
  const also = alsoContains.map((each) => `${each.code} (${foods(each.foods)})`).join(", ");
  return [
    ...values.flatMap((presence) => {
      const named = findings
        .filter((finding) => finding.presence === presence)
        .map(({ name, contains, mayContain, unknown }) => {
          const because = { CONTAINS: contains, MAY_CONTAIN: mayContain, UNKNOWN: unknown, DOES_NOT_CONTAIN: [] }[
            presence
          ];
          return [name, becauseOf(because, book)].join("");
        });
      return named.length === 0 ? [] : [said(words.presence[presence], named.join(", "))];
    }),
    ...(also === "" ? [] : [said(words.alsoContains, also)]),
  ];
}

function dietItems(diets: readonly DietStatement[], book: NameBook): readonly Lines[] {
  const { words } = book;
  const item = (title: string, named: readonly string[]): readonly Lines[] =>
    named.length === 0 ? [] : [said(title, named.join(", "))];
  const because = (fits: boolean | null, of: (diet: DietStatement) => readonly string[]): readonly string[] =>
    diets.filter((diet) => diet.fits === fits).map((diet) => [diet.name, becauseOf(of(diet), book)].join(""));
  return [
    ...item(
      words.fits,
      because(true, () => []),
    ),
    ...item(
      words.breaks,
      because(false, ({ breaks }) => breaks),
    ),
    ...item(
      words.dietUnknown,
      because(null, ({ unknown }) => unknown),
    ),
  ];
}

/** More foods than a sentence bears are counted. */
const mostNamed = 6;

const becauseOf = (slugs: readonly string[], { words, foods }: NameBook): string => {
  if (slugs.length === 0) return "";
  return ` (${slugs.length > mostNamed ? words.foods(String(slugs.length)) : foods(slugs)})`;
};

const said = (title: string, words: string): Lines => [[strong(`${title}:`), text(words)]];
