export { AMOUNT_MAX, AMOUNT_TEXT_MAX, LINE_MAX, LINES_MAX } from "./parse/limits.js";
export { parseAmount, type AmountContext } from "./parse/parse-amount.js";
