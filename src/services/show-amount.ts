import type { MeasureSystem } from "../domain/model/amount.js";

/** How amounts are shown, for the layers that may not see `exports`. */
export {
  ratioValue,
  showAmount,
  showFor,
  showScaledLine,
  showWritten,
  writersShow,
  type Show,
  type ShownAmount,
  type ShownUnit,
} from "../exports/shown-amount.js";

export const measureSystems: readonly MeasureSystem[] = [
  "US_CUSTOMARY",
  "METRIC_CUP",
  "AUSTRALIAN",
  "UK_IMPERIAL",
  "METRIC",
];
export { takenText, toBuyText } from "../exports/packs-text.js";
export { isOptional } from "../exports/shopping-text.js";
