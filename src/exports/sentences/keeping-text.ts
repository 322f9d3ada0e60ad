import type { StorageAnswer, StorageGuidance, Subject } from "../../domain/storage/guidance.js";
import { degreeText } from "../words/degree-text.js";
import type { Words } from "../words/words.js";
import { adviceTexts, type AdviceWords } from "./advice-text.js";
import { rangeText } from "./keeping-row.js";

/**
 * What keeps how long, a line each: every component with all its places and the authority that decides, then whatever is
 * planned for too late a day, with what to do about it.
 */
export function keepingLines(storage: StorageAnswer, book: AdviceWords): readonly string[] {
  const { guidance } = storage;
  const components = [
    ...new Set(guidance.flatMap(({ subject }) => (subject.kind === "COMPONENT" ? subject.slug : []))),
  ];
  return [
    ...components.map((slug) => {
      const here = guidance.filter(({ subject }) => subject.kind === "COMPONENT" && subject.slug === slug);
      return `${book.component(slug)}: ${here.map((each) => placeText(each, book.words)).join("; ")}`;
    }),
    ...lateLines(storage, book),
  ];
}

/** Whatever is planned for a later day than it keeps, with what to do about it, a line each. */
export function lateLines({ guidance }: StorageAnswer, book: AdviceWords): readonly string[] {
  const late = guidance.filter(({ tooLateFor }) => tooLateFor.length > 0);
  const { words } = book;
  return late.map((each) => {
    const meals = each.tooLateFor.map((meal) => words.quoted({ name: book.meal(meal) })).join(", ");
    const advice = adviceTexts(each.advice, book, each.tooLateFor).join(" ");
    return words.advice
      .tooLate({ meals, thing: nameOf(each.subject, book), keeps: rangeText(each, words), advice })
      .trimEnd();
  });
}

function placeText(guidance: StorageGuidance, words: Words): string {
  const deciding = guidance.basis.find(({ decides }) => decides);
  const until = guidance.keepUntil === null ? "" : ` ${words.plain.until({ when: guidance.keepUntil })}`;
  const parts = [guidance.container, guidance.condition].filter((part) => part !== null).map((part) => `, ${part}`);
  const source = deciding === undefined ? "" : ` [${deciding.source.title}]`;
  return degreeText(`${rangeText(guidance, words)} ${words.places[guidance.place]}${until}${parts.join("")}${source}`);
}

const nameOf = ({ kind, slug }: Subject, book: AdviceWords): string =>
  kind === "MEAL"
    ? book.words.quoted({ name: book.meal(slug) })
    : kind === "COMPONENT"
      ? book.component(slug)
      : book.food(slug);
