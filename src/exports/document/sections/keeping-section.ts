import type { StorageGuidance } from "../../../domain/storage/guidance.js";
import { degreeText } from "../../words/degree-text.js";
import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { listOf, plain, section, strong, tableOf, text, type Block, type Line } from "../document.js";
import { conditionLanguage, keepingRow } from "../../sentences/keeping-row.js";
import { lateLines } from "../../sentences/keeping-text.js";
import type { NameBook } from "../../words/name-book.js";

/** In what, and on which condition: `how` of a row, each part in its language. */
const howLine = ({ container, condition, basis }: StorageGuidance, book: NameBook): Line => {
  const decides = basis.find((each) => each.decides && each.condition === condition);
  const language = decides === undefined ? null : conditionLanguage(decides, book);
  return [
    ...(container === null
      ? []
      : [text(degreeText(container) + (condition === null ? "" : ","), book.languageOf(container))]),
    ...(condition === null ? [] : [text(degreeText(condition), language)]),
  ];
};

/** How components and meals keep, on whose word, and what to do about those planned for too late a day. */
export function keepingSection({ storage, household }: PlanAnswer, book: NameBook): readonly Block[] {
  const { words } = book;
  const zone = household.session?.zone ?? null;
  const rows = storage.guidance
    .filter(({ subject }) => subject.kind !== "FOOD")
    .map((guidance) => {
      const { what, where, keeps, whoSays } = keepingRow(guidance, book, zone);
      const how = howLine(guidance, book);
      return [
        [[strong(what, book.languageOf(what)), text(where)]],
        [[text(keeps)], ...(how.length === 0 ? [] : [how])],
        whoSays.map((each) => [text(each)]),
      ];
    });
  return section(2, words.keeping, [
    ...tableOf([words.what, words.keeps, words.whoSays], rows),
    ...listOf("ITEMS", lateLines(storage, book).map(plain)),
  ]);
}
