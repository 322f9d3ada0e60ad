export type { LineOptions } from "./parse/line-context.js";
export { findOwnMeasure, parseAmount } from "./parse/parse-amount.js";
export { parseLine } from "./parse/parse-line.js";
export { lineReasons } from "./parse/parsed-line.js";
export type { AlternateAmount, LineReason, LineReasonCode, ParsedLine } from "./parse/parsed-line.js";
