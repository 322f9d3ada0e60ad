// @ts-nocheck
import type { Warning } from "../../domain/problem.js";
import { listOf, plain, section, type Block } from "../document.js";
import { namedWarning } from "../named-warning.js";
import { warningText } from "../problem-text.js";
import type { Words } from "../words.js";

/**
 * What a reader should know beside the answer, each once. Prices that nobody knows are named with the cost.
 *
 * @param name of a food or component
 */
export function warningsSection(
  warnings: readonly Warning[],
  words: Words,
  name: (slug: string) => string,
): readonly Block[] {
  const said = warnings
    .filter(({ code }) => code !== "PRICE_UNKNOWN")
    .map((warning) => warningText(namedWarning(warning, name)));
  return section(2, words.warnings, listOf("ITEMS", [...new Set(said)].map(plain)));
}
