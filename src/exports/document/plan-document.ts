import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import type { InSlices } from "../../domain/counted-work.js";
import type { Addresses } from "../addresses.js";
import { costText } from "../words/cost-text.js";
import { heading, paragraph, section, strong, text, type Block } from "./document.js";
import { besideRegion, regionLine } from "../sentences/region-line.js";
import { nameBook } from "../words/name-book.js";
import { attributionSection } from "./sections/attribution-section.js";
import { cautionsSection } from "./sections/cautions-section.js";
import { contentsSection } from "./sections/contents-section.js";
import { keepingSection } from "./sections/keeping-section.js";
import { listBlocksInSlices } from "./sections/list-section.js";
import { makeAheadSectionInSlices } from "./sections/make-ahead-section.js";
import { mealsSectionInSlices } from "./sections/meals-section.js";
import { nutritionSection } from "./sections/nutrition-section.js";
import { sessionSection } from "./sections/session-section.js";
import { closingBlocks, equipmentBlocks, introductionBlocks } from "./sections/words-section.js";
import { warningsSection } from "./sections/warnings-section.js";

/**
 * Everything about one plan for one household, as blocks to draw.
 *
 * @param changeNote what the publisher says has changed in this revision; null for nothing
 */
export function* planDocumentInSlices(
  answer: PlanAnswer,
  addresses: Addresses,
  changeNote: string | null,
): InSlices<readonly Block[]> {
  const { scaled, reader, list, storage } = answer;
  const { plan } = scaled.bundle;
  const book = nameBook(scaled.bundle, reader);
  const { words } = book;
  const region = regionLine(answer, words);
  const blocks = [
    heading(1, plan.title, book.languageOf(plan.title)),
    ...(plan.summary === null ? [] : [paragraph([text(plan.summary, book.languageOf(plan.summary))])]),
    ...introductionBlocks(plan, book),
    paragraph([text(`${words.forServings({ count: scaled.servings })}.`)]),
    ...(region === null ? [] : [paragraph([strong(region)])]),
    ...(changeNote === null ? [] : section(2, words.changed, [paragraph([text(changeNote, book.originalLanguage)])])),
    ...(yield* mealsSectionInSlices(answer, book)),
    ...equipmentBlocks(plan, words),
    ...(yield* makeAheadSectionInSlices(answer, book)),
  ];
  blocks.push(...section(2, words.shoppingList, yield* listBlocksInSlices(list, reader, false, 3)));
  for (const more of [
    () => section(2, words.cost, [paragraph([text(costText(list.cost, scaled.servings, book.reader, book.food))])]),
    () => sessionSection(answer, book),
    () => keepingSection(answer, book),
    () => contentsSection(answer, book),
    () => nutritionSection(answer, book),
    () => cautionsSection(answer, book),
    () => warningsSection([...scaled.warnings, ...list.warnings, ...besideRegion(storage.warnings)], words, book),
    () => closingBlocks(plan, book),
    () => attributionSection(answer, addresses, book),
  ]) {
    yield;
    blocks.push(...more());
  }
  return blocks;
}
