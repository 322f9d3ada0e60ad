import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import { resolvedSteps } from "../../../domain/plan/session/resolved-steps.js";
import { componentText } from "../../words/component-text.js";
import { heading, listOf, paragraph, plain, section, text, type Block } from "../document.js";
import { lineText } from "../../words/line-text.js";
import type { NameBook } from "../../words/name-book.js";
import { stepLines } from "./meals-section.js";

/** What is made in the session: how much of each component, from what, how. */
export const makeAheadSection = ({ scaled }: Pick<PlanAnswer, "scaled">, book: NameBook): readonly Block[] =>
  section(
    2,
    book.words.makeAhead,
    scaled.components.flatMap((made) => {
      return [
        heading(3, made.component.title),
        paragraph([text(componentText(made, book))]),
        ...(made.batches === 0
          ? []
          : [
              ...listOf(
                "ITEMS",
                made.lines.map((line) => plain(lineText(line, book))),
              ),
              ...listOf(
                "STEPS",
                resolvedSteps(made).map((step) => stepLines(step, made, book)),
              ),
            ]),
      ];
    }),
  );
