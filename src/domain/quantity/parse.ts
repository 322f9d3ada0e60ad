export { AMOUNT_MAX, AMOUNT_TEXT_MAX, LINE_MAX, LINES_MAX, TEXT_MAX } from "./parse/limits.js";
export type { LineOptions } from "./parse/line-context.js";
export { scaleMeasured } from "./parse/measured-sum.js";
export { parseAmount } from "./parse/parse-amount.js";
export { parseLine } from "./parse/parse-line.js";
export { parseLines } from "./parse/parse-lines.js";
export { lineReasons } from "./parse/parsed-line.js";
export type { AlternateAmount, LineReason, LineReasonCode, ParsedLine } from "./parse/parsed-line.js";
