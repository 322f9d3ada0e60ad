/** As searched: any case, without accents ("Crème" is found as "creme"). */
export const foldText = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .normalize("NFC")
    .trim();

/** The folded words of a text, each once. */
export const foldWords = (text: string): string[] => [...new Set(foldText(text).match(/[\p{L}\p{M}\p{N}]+/gu) ?? [])];
