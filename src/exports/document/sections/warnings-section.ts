import type { Warning } from "../../../domain/problem.js";
import { listOf, plain, section, type Block } from "../document.js";
import type { WarningNames } from "../../sentences/named-warning.js";
import { warningLines } from "../../sentences/warning-lines.js";
import type { Words } from "../../words/words.js";

/** What a reader should know beside the answer, one line a kind. Prices that nobody knows are named with the cost. */
export function warningsSection(warnings: readonly Warning[], words: Words, names: WarningNames): readonly Block[] {
  const said = warningLines(
    warnings.filter(({ code }) => code !== "PRICE_UNKNOWN"),
    names,
    words,
  );
  return section(2, words.warnings, listOf("ITEMS", said.map(plain)));
}
