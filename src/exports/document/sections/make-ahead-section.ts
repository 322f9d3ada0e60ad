import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import type { InSlices } from "../../../domain/counted-work.js";
import { resolvedSteps } from "../../../domain/plan/session/resolved-steps.js";
import { componentText } from "../../words/component-text.js";
import { heading, listOf, paragraph, section, text, type Block } from "../document.js";
import type { NameBook } from "../../words/name-book.js";
import { creditsBlocks, equipmentBlocks, introductionBlocks, notesBlocks } from "./words-section.js";
import { lineInlines, stepLines } from "./meals-section.js";

/** What is made in the session: how much of each component, from what, how. */
export function* makeAheadSectionInSlices(
  { scaled }: Pick<PlanAnswer, "scaled">,
  book: NameBook,
): InSlices<readonly Block[]> {
  const blocks: Block[] = [];
  for (const made of scaled.components) {
    yield;
    blocks.push(
      heading(3, made.component.title, book.languageOf(made.component.title)),
      paragraph([text(componentText(made, book))]),
    );
    blocks.push(...introductionBlocks(made.component, book));
    if (made.batches === 0) continue;
    const lines = made.lines.map((line) => [lineInlines(line, book)]);
    const steps = resolvedSteps(made).map((step) => stepLines(step, made, book));
    blocks.push(...equipmentBlocks(made.component, book.words), ...listOf("ITEMS", lines), ...listOf("STEPS", steps));
    blocks.push(...notesBlocks(made.component, book), ...creditsBlocks(made.component, book.words));
  }
  return section(2, book.words.makeAhead, blocks);
}
