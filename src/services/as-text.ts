/** Answers as text for people, for the layers that may not see `exports`. */
export type { Addresses } from "../exports/addresses.js";
export { planMarkdown } from "../exports/markdown.js";
export { plainText } from "../exports/plain-text.js";
export { shoppingMarkdown } from "../exports/shopping-markdown.js";
