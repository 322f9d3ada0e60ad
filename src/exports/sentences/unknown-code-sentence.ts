import type { CodeListName } from "../../domain/code-list-name.js";
import type { Problem } from "../../domain/problem.js";

const kinds: Readonly<Record<CodeListName, string>> = {
  aisle: "aisle",
  allergen: "allergen",
  appliance: "appliance",
  caution: "caution",
  currency: "currency",
  diet: "diet",
  "keeping-class": "keeping class",
  language: "language tag",
  region: "region",
  "usda-number": "food with the number",
};

/** What a word should have been that its closed list does not have. */
export function unknownCodeSentence({ list, written, nearest }: Extract<Problem, { code: "UNKNOWN_CODE" }>): string {
  if (list === "usda-number")
    return `The open food table has no food with the number "${written}". Find the number by the food's name, or leave it out.`;
  const offered = nearest.map((code) => `"${code}"`).join(" or ");
  const said = `There is no ${kinds[list]} "${written}".`;
  if (offered !== "") return `${said} Did you mean ${offered}?`;
  return `${said} Use a code from the list "${list}" in the vocabulary of the service.`;
}
