import { z } from "zod";
import { nearestWords } from "../../../domain/quantity/naming/nearest-words.js";

/** Case, spaces, hyphens and underscores do not matter: `Per_batch` is `per batch`. */
export const plainWord = (word: string): string =>
  word
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, " ");

/**
 * A choice among words. The words are given for every code, so a code added to the model without a word
 * does not compile.
 */
export function wordSchema<const Code extends string>(words: Readonly<Record<Code, string>>) {
  const codes = new Map<string, Code>(Object.entries<string>(words).map(([code, word]) => [word, code as Code]));
  const known = [...codes.keys()];
  return z
    .string()
    .meta({ enum: known })
    .transform((written, context): Code => {
      const code = codes.get(plainWord(written));
      if (code !== undefined) return code;
      const nearest = nearestWords(plainWord(written), known);
      const expected = (nearest.length > 0 ? nearest : known).join(" | ");
      context.issues.push({ code: "custom", input: written, params: { expected, got: written } });
      return z.NEVER;
    });
}

/** `yes`, `no`, `true`, `false`; as JSON also the booleans themselves. */
export const yesNoSchema = z.union([
  z.boolean(),
  z
    .string()
    .meta({ enum: ["yes", "no"] })
    .transform((written, context): boolean => {
      const word = plainWord(written);
      if (word === "yes" || word === "true") return true;
      if (word === "no" || word === "false") return false;
      context.issues.push({ code: "custom", input: written, params: { expected: "yes | no", got: written } });
      return z.NEVER;
    }),
]);
