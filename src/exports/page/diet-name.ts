import type { NameBook } from "../words/name-book.js";

/** What readers call a diet of the rules: `gluten-free`, `no tree nuts`. A code without a word of its own is read as words. */
export function dietName(code: string, { words }: Pick<NameBook, "words">): string {
  const known: Readonly<Record<string, string>> = words.page.diets;
  return known[code] ?? code.replaceAll("-", " ");
}
