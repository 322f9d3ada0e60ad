import type { Words } from "./words.js";

/** English without a comma before the "and". */
const lists = {
  en: new Intl.ListFormat("en-GB"),
  de: new Intl.ListFormat("de"),
  fr: new Intl.ListFormat("fr"),
  es: new Intl.ListFormat("es"),
  pl: new Intl.ListFormat("pl"),
} as const satisfies Record<Words["language"], Intl.ListFormat>;

const either = new Intl.ListFormat("en-GB", { type: "disjunction" });

/** "barley, kale or dill", in English. */
export const orList = (things: readonly string[]): string => either.format(things);

/** "barley, kale and dill". */
export const andList = (things: readonly string[], { language }: Pick<Words, "language">): string =>
  lists[language].format(things);

/** The same in its parts. */
export const andListParts = (things: readonly string[], { language }: Pick<Words, "language">) =>
  lists[language].formatToParts(things);
