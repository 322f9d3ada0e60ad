/** Sentences for problems, warnings and advice, for the layers that may not see `exports`. */
export { adviceText } from "../exports/advice-text.js";
export { problemText, warningText } from "../exports/problem-text.js";
