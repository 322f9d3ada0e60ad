/** Sentences for problems and warnings, for the layers that may not see `exports`. */
export { problemText, warningText } from "../exports/problem-text.js";
