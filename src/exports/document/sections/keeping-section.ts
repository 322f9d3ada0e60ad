import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { listOf, plain, section, strong, tableOf, text, type Block } from "../document.js";
import { keepingRow } from "../../sentences/keeping-row.js";
import { lateLines } from "../../sentences/keeping-text.js";
import type { NameBook } from "../../words/name-book.js";

/** How components and meals keep, on whose word, and what to do about those planned for too late a day. */
export function keepingSection({ storage, household }: PlanAnswer, book: NameBook): readonly Block[] {
  const { words } = book;
  const zone = household.session?.zone ?? null;
  const rows = storage.guidance
    .filter(({ subject }) => subject.kind !== "FOOD")
    .map((guidance) => {
      const { what, where, keeps, how, whoSays } = keepingRow(guidance, book, zone);
      return [
        [[strong(what), text(where)]],
        how === "" ? plain(keeps) : [[text(keeps)], [text(how)]],
        whoSays.map((each) => [text(each)]),
      ];
    });
  return section(2, words.keeping, [
    ...tableOf([words.what, words.keeps, words.whoSays], rows),
    ...listOf("ITEMS", lateLines(storage, book).map(plain)),
  ]);
}
