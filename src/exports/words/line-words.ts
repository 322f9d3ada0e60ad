import type { ScaledLine } from "../../domain/plan/scaled.js";
import { compileFacts, type MeasureFacts } from "../../domain/quantity/convert.js";
import type { PresentedAmount } from "../../domain/quantity/format.js";
import { severalForm } from "../../domain/quantity/food-name.js";
import { isNamedAfterFood } from "../../domain/quantity/piece-words.js";
import { standardUnit } from "../../domain/quantity/unit.js";
import { languageOf, readerLocale } from "../../domain/quantity/reader-locale.js";
import { foodWords } from "./food-words.js";
import { noFacts, type NameBook } from "./name-book.js";
import { partName, partText } from "./part-words.js";
import { eachText, presentScaledLine } from "./shown-amount.js";

/** What is said of a line beside its amount and name. */
interface LineDetail {
  readonly text: string;
  /** It is in the writer's words. */
  readonly isWriters?: boolean;
  /** Slug of the food that it says this one takes the place of. */
  readonly inPlaceOf?: string;
}

/** A scaled line in the pieces that every way out puts together. */
export interface LineWords {
  /** `200 g`, `3 onions`; null for an amount to taste, and where `name` holds it. */
  readonly amount: string | null;
  /** null where the amount names the food already. */
  readonly name: string | null;
  /** What it takes the place of, how it is prepared, whether it is wanted at all. */
  readonly details: readonly LineDetail[];
  readonly mark: string | null;
}

export function lineWords(scaled: ScaledLine, book: NameBook): LineWords {
  const { line } = scaled;
  const { words, reader } = book;
  const shown = presentScaledLine(scaled, factsOf(scaled, book), reader);
  const details = [
    ...swappedFrom(scaled, book),
    ...[swapNote(scaled), line.preparation].flatMap((text) => (text === null ? [] : [{ text, isWriters: true }])),
    ...(shown === null ? [{ text: words.toTaste }] : []),
    ...(line.extra ? [{ text: words.plusMore }] : []),
    ...(line.optional ? [{ text: words.optional }] : []),
  ];
  const each = eachText(scaled, factsOf(scaled, book), reader);
  const said = named(scaled, shown, book);
  return { ...(each === null ? said : withEach(said, words.each({ weight: each }))), details, mark: line.mark };
}

/** BCP 47 tag of the language of the name of what a line takes, where it is another than that of the fixed words; else null. */
export const itemLanguage = ({ item }: ScaledLine, book: NameBook): string | null =>
  item.kind === "COMPONENT" ? book.languageOf(book.component(item.component)) : book.foodLanguage(item.food);

/** "8 potatoes (6 oz each)" */
const withEach = ({ amount, name }: Pick<LineWords, "amount" | "name">, each: string) =>
  name === null ? { amount: `${amount ?? ""} (${each})`, name } : { amount, name: `${name} (${each})` };

function named(scaled: ScaledLine, shown: PresentedAmount | null, book: NameBook): Pick<LineWords, "amount" | "name"> {
  const { item } = scaled;
  const forms = namesOf(scaled, book);
  const { one, many } = forms;
  if (item.kind === "FOOD" && item.part !== null)
    return { amount: null, name: partNamed(scaled, item.part, shown, book) };
  if (shown === null) return { amount: null, name: many };
  const facts = factsOf(scaled, book);
  // A small share of a piece may be told in the food's smaller measure.
  if (shown.saidIn !== "piece") {
    return { amount: shown.text, name: isSeveralByWeight(shown, facts, book) ? many : one };
  }
  if (isNamedAfterFood(facts)) return { amount: shown.text, name: null };
  return { amount: shown.text, name: hasPieceWord(facts) ? one : nameAfter(shown, forms, book) };
}

/** Languages in which a weight of several pieces takes the plural: "700 g Tomaten", "300 g Kürbis". */
const pluralByWeight: ReadonlySet<string> = new Set(["de", "es", "fr"]);

const isSeveralByWeight = (shown: PresentedAmount, facts: MeasureFacts, { reader }: NameBook): boolean => {
  if (!pluralByWeight.has(languageOf(reader.locale)) || standardUnit(shown.saidIn)?.dimension !== "MASS") return false;
  const { gramsPerPiece } = compileFacts(facts);
  return gramsPerPiece !== null && shown.grams !== null && shown.grams > gramsPerPiece;
};

const isSeveral = ({ upTo, rounded }: PresentedAmount): boolean => upTo !== null || rounded > 1;

/** The name of what is counted, as the number before it asks for. */
const nameAfter = (shown: PresentedAmount, forms: NameForms, { reader }: NameBook): string => {
  const category = readerLocale(reader.locale).plural(shown.upTo ?? shown.rounded);
  // Nothing, too, is counted as many in Polish: 0 jabłek.
  const several = isSeveral(shown) || (category === "many" && forms.counted !== undefined);
  return several ? severalForm(forms, category) : forms.one;
};

const hasPieceWord = ({ measures }: MeasureFacts): boolean => measures.some(({ name }) => name === "piece");

function partNamed(scaled: ScaledLine, part: string, shown: PresentedAmount | null, book: NameBook): string {
  const language = languageOf(book.reader.locale);
  const { one } = namesOf(scaled, book);
  if (shown === null) return partName(one, part, language);
  if (shown.saidIn !== "piece") return partText({ food: one, part, amount: shown.text, pieces: null }, language);
  // Without the food's facts, its pieces are a bare number.
  const number = presentScaledLine(scaled, noFacts, book.reader)?.text ?? shown.text;
  const pieces = { number, several: isSeveral(shown), named: isNamedAfterFood(factsOf(scaled, book)) };
  return partText({ food: one, part, amount: shown.text, pieces }, language);
}

type NameForms = ReturnType<typeof foodWords>;

function namesOf({ item }: ScaledLine, book: NameBook): NameForms {
  if (item.kind === "COMPONENT") {
    const title = book.component(item.component);
    return { one: title, many: title };
  }
  const food = book.foodOf(item.food);
  return food === undefined ? { one: item.food, many: item.food } : foodWords(food, book.reader.locale);
}

const factsOf = ({ item }: ScaledLine, book: NameBook): MeasureFacts =>
  (item.kind === "FOOD" ? book.foodOf(item.food) : book.componentOf(item.component)) ?? noFacts;

/** The food a swap took the place of. */
function swappedFrom({ item, line }: ScaledLine, { food, words }: NameBook): readonly LineDetail[] {
  if (item.kind !== "FOOD" || line.item.kind !== "FOOD" || item.food === line.item.food) return [];
  const inPlaceOf = line.item.food;
  return [{ text: words.inPlaceOf({ food: food(inPlaceOf) }), inPlaceOf }];
}

/** What the writer notes on the swap that is taken: it is of use where one cooks. */
function swapNote({ item, line }: ScaledLine): string | null {
  if (item.kind !== "FOOD" || line.item.kind !== "FOOD" || item.food === line.item.food) return null;
  const { food } = item;
  return line.swaps.find((swap) => swap.food === food)?.note ?? null;
}
