import { imageFormats, type Image } from "../../domain/model/image.js";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { allergenGroups } from "../sentences/allergen-groups.js";
import { adviceTexts } from "../sentences/advice-text.js";
import { keepingRow } from "../sentences/keeping-row.js";
import { minutesText } from "../words/minutes-text.js";
import { moneyText } from "../words/money-text.js";
import { imageSources } from "../image-address.js";
import { nameBook, type NameBook } from "../words/name-book.js";
import { sourceText } from "../words/source-text.js";
import { writingDirection } from "../words/writing-direction.js";
import type { PlanCard } from "./card-shape.js";
import { mealDay } from "./parts/meals-part.js";
import { aislesOf, shelfLine } from "./parts/shopping-part.js";

function imageOf(image: Image | undefined, publisher: string, page: string): PlanCard["image"] {
  if (image?.stored === undefined) return null;
  const { alt, credit, stored } = image;
  const { origin } = new URL(page);
  const sources = imageFormats.flatMap((format) => imageSources(origin, publisher, stored, format));
  return { alt, credit, placeholder: stored.placeholder, sources };
}

/** Each allergen in one group alone; of those that nobody states, the foods whose labels are to be read. */
function allergensOf({ contents }: PlanAnswer, book: NameBook): PlanCard["allergens"] {
  const words = book.words.page;
  const groups = allergenGroups(contents.plan.allergens);
  const namesOf = (found: readonly { readonly name: string }[]): readonly string[] => found.map(({ name }) => name);
  const labelled = groups.labels.map(({ food }) => book.food(food));
  const open = groups.open.length > 0 && labelled.length > 0 ? labelled : namesOf(groups.open);
  return [
    { presence: book.words.presence.CONTAINS, names: namesOf(groups.contains) },
    { presence: book.words.presence.MAY_CONTAIN, names: namesOf(groups.mayContain) },
    { presence: words.lookAtTheLabel, names: open },
    { presence: words.tracesNotKnown, names: namesOf(groups.noIngredient) },
    { presence: words.absent, names: namesOf(groups.absent) },
  ].filter(({ names }) => names.length > 0);
}

export function planCard(answer: PlanAnswer, page: string): PlanCard {
  const { publication, scaled, reader, session, list } = answer;
  const { plan } = scaled.bundle;
  const book = nameBook(scaled.bundle, reader);
  const { guidance, unknown } = answer.storage;
  const zone = answer.household.session?.zone ?? null;
  const late = guidance.filter(({ subject, tooLateFor }) => subject.kind !== "MEAL" && tooLateFor.length > 0);
  return {
    title: plan.title,
    language: plan.locale,
    direction: writingDirection(plan.locale),
    wordsIn: book.words.language,
    publisher: publication.publisher.name,
    revision: publication.revision,
    page,
    servings: scaled.servings,
    servesAsWritten: plan.serves,
    session: session === null ? null : minutesText(session.totalMinutes),
    handsOn: session === null ? null : minutesText(session.handsOnMinutes),
    perServing: list.cost.perServing === null ? null : moneyText(list.cost.perServing, reader),
    meals: scaled.meals
      .toSorted((a, b) => a.meal.day - b.meal.day)
      .map(({ meal }) => ({
        day: mealDay({ meal }, { answer, book }),
        title: meal.title,
        late: late
          .filter(({ tooLateFor }) => tooLateFor.includes(meal.slug))
          .flatMap(({ subject, advice, tooLateFor }) =>
            adviceTexts(advice, book, tooLateFor).map((each) => `${book.subject(subject)}: ${each}`),
          ),
      })),
    keeping: guidance
      .filter(({ subject }) => subject.kind !== "FOOD")
      .map((each) => {
        const { what, where, keeps } = keepingRow(each, book, zone);
        return { what, where, keeps };
      }),
    keepingUnknown: [...new Set(unknown.map(({ subject }) => book.subject(subject)))],
    aisles: aislesOf(list.lines, book.words).map(({ title, lines }) => ({
      title,
      lines: lines.map((line) => {
        const { food, take, notes, said } = shelfLine(line, book);
        return {
          id: line.food.slug,
          food,
          take: take ?? "",
          notes: [...notes, ...said.map(({ text }) => text)].join("; "),
        };
      }),
    })),
    allergens: allergensOf(answer, book),
    image: imageOf(plan.image, publication.publisher.slug, page),
    cautions: answer.cautions.cautions.map(({ text, source }) => ({ text, source: sourceText(source) })),
  };
}
