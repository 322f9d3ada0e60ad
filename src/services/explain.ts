/** Sentences for problems, warnings and advice, for the layers that may not see `exports`. */
export { adviceTexts } from "../exports/advice-text.js";
export { problemText, warningText } from "../exports/problem-text.js";
export { cautionsSentence } from "../exports/cautions-sentence.js";
export { aboutWhat, findingText } from "../exports/finding-text.js";
export { criticalText } from "../exports/session-text.js";
