import type { AllergenFinding, AllergenStatement } from "../../../domain/nutrition/allergens.js";
import type { DietStatement } from "../../../domain/nutrition/diets.js";
import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { allergenGroups, byWhatFor } from "../../sentences/allergen-groups.js";
import { listOf, paragraph, section, strong, text, type Block, type Lines } from "../document.js";
import type { NameBook } from "../../words/name-book.js";
import { codeName } from "../../words/rule-words.js";

/** Allergens in their values and diets in theirs; what is not known is said, never left out. */
export function contentsSection({ contents }: Pick<PlanAnswer, "contents">, book: NameBook): readonly Block[] {
  const { allergens, diets } = contents.plan;
  const lists = allergens.lists.map(({ law, region }) => `${law} (${region})`).join("; ");
  return section(2, book.words.contents, [
    paragraph([text(lists === "" ? book.words.noLists : book.words.allergenLists({ lists }))]),
    ...listOf("ITEMS", [...allergenItems(allergens, book), ...dietItems(diets, book)]),
  ]);
}

function allergenItems(statement: AllergenStatement, book: NameBook): readonly Lines[] {
  const { words, foods } = book;
  const groups = allergenGroups(statement);
  const also = statement.alsoContains.map((each) => `${codeOf(each.code, book)} (${foods(each.foods)})`).join(", ");
  const because = (found: readonly AllergenFinding[], of: (finding: AllergenFinding) => readonly string[]) =>
    found.map((finding) => `${finding.name}${becauseOf(of(finding), book)}`);
  const labels = byWhatFor(groups.labels).map((each) =>
    words.labelsFor({ foods: foods(each.foods), names: each.names.join(", ") }),
  );
  const called =
    groups.glutenFreeOnly.length === 0 ? [] : [words.glutenFreeOnly({ foods: foods(groups.glutenFreeOnly) })];
  const noIngredient = groups.noIngredient.map(({ name }) => name).join(", ");
  return [
    ...item(
      words.presence.CONTAINS,
      because(groups.contains, ({ contains }) => contains),
    ),
    ...(also === "" ? [] : [said(words.alsoContains, also)]),
    ...item(
      words.presence.MAY_CONTAIN,
      because(groups.mayContain, ({ mayContain }) => mayContain),
    ),
    ...item(words.labelsToRead, labels.length === 0 ? [] : [[labels.join("; "), ...called].join("; ")]),
    // Open for another reason than a food's silence: there is no food at all.
    ...item(
      words.presence.UNKNOWN,
      groups.open.flatMap(({ name, unknown }) => (unknown.length === 0 ? [name] : [])),
    ),
    ...item(words.noIngredient, noIngredient === "" ? [] : [`${noIngredient}; ${words.tracesNotKnown}`]),
    ...item(
      words.presence.DOES_NOT_CONTAIN,
      groups.absent.map(({ name }) => name),
    ),
  ];
}

/** Readers of English know what is on no list by its code. */
const codeOf = (code: string, { words }: NameBook): string =>
  words.language === "en" ? code : codeName("allergens", code, words);

/** What the same foods leave open is said once. */
function dietItems(diets: readonly DietStatement[], book: NameBook): readonly Lines[] {
  const { words, foods } = book;
  const open = diets.filter(({ fits }) => fits === null);
  const leaving = [...new Set(open.map(({ unknown }) => unknown.join()))].map((key) => {
    const alike = open.filter(({ unknown }) => unknown.join() === key);
    const names = alike.map(({ name }) => name).join(", ");
    const slugs = alike[0]?.unknown ?? [];
    return slugs.length === 0 ? names : `${names} (${words.labelsToReadOf({ foods: foods(slugs) })})`;
  });
  return [
    ...item(
      words.fits,
      diets.filter(({ fits }) => fits === true).map(({ name }) => name),
    ),
    ...item(
      words.breaks,
      diets.filter(({ fits }) => fits === false).map(({ name, breaks }) => `${name}${becauseOf(breaks, book)}`),
    ),
    ...item(words.dietUnknown, leaving, "; "),
  ];
}

/** More foods than a sentence bears are counted. */
const mostNamed = 6;

const becauseOf = (slugs: readonly string[], { words, foods }: NameBook): string => {
  if (slugs.length === 0) return "";
  return ` (${slugs.length > mostNamed ? words.foods({ count: slugs.length }) : foods(slugs)})`;
};

const item = (title: string, named: readonly string[], between = ", "): readonly Lines[] =>
  named.length === 0 ? [] : [said(title, named.join(between))];

const said = (title: string, words: string): Lines => [[strong(`${title}:`), text(words)]];
