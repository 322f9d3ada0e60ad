import { legibleText } from "../words/legible-text.js";

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Any text as text of HTML or XML, and as the value of a quoted attribute. */
export const markupText = (text: string): string =>
  legibleText(text).replace(/[&<>"']/g, (mark) => entities[mark] ?? mark);
