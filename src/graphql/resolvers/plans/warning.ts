import { messageParameters } from "../../../domain/message-parameters.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import type { Warning } from "../../../domain/problem.js";
import { parametersJson } from "../../../exports/json/problem.js";
import { namedWarning, warningNames } from "../../../exports/sentences/named-warning.js";
import { warningTitle } from "../../../exports/sentences/problem-title.js";
import { warningText } from "../../../exports/sentences/warning-text.js";
import type { Show } from "../../../exports/words/shown-amount.js";
import { wordsFor } from "../../../exports/words/words-for.js";
import type { WarningResolvers } from "../../generated/resolver-types.js";
import type { WarningParent } from "../../parent-types.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";

/** Warnings about some plans, for a reader of them. */
export function shownWarnings(
  warnings: readonly Warning[],
  bundles: readonly PlanBundle[],
  show: Show,
): readonly WarningParent[] {
  const names = warningNames(bundles, show);
  return warnings.map((warning) => ({ ...warning, locale: show.locale, names }));
}

export const warningResolvers: FieldsToResolve<WarningResolvers, WarningParent> = {
  message: (warning) => warningText(warning, wordsFor(warning.locale)),
  path: (warning) => warning.path.map(String),
  title: ({ code, locale }) => warningTitle(code, wordsFor(locale)),
  text: (warning) => warningText(namedWarning(warning, warning.names), wordsFor(warning.locale)),
  parameters: (warning) => parametersJson(messageParameters(warning)),
};
