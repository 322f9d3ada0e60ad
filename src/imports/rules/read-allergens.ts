import { allergenCodes, isAllergenCode } from "../../domain/nutrition/allergen-codes.js";
import type { AllergenList, AllergenRules, DietClaim, DietRule } from "../../domain/nutrition/allergen-rules.js";
import type { Path, Problem } from "../../domain/problem.js";
import type { AllergensDocument } from "./allergens-schema.js";
import { sourceReader } from "./rule-sources.js";
import { duplicateIds, unknownWord } from "./rule-texts.js";

/** Allergen lists, diets and claims as the model has them, and what is wrong: unknown codes, ids or sources. */
export function readAllergens(document: AllergensDocument): {
  readonly rules: AllergenRules;
  readonly problems: readonly Problem[];
} {
  const { id, version, date } = document;
  const problems: Problem[] = [
    ...duplicateIds(
      "lists",
      document.lists.map((list) => list.id),
    ),
    ...duplicateIds(
      "diets",
      document.diets.map(({ code }) => code),
      "code",
    ),
    ...duplicateIds(
      "claims",
      document.claims.map((claim) => claim.id),
    ),
  ];
  const issued = sourceReader(document.sources, problems);
  const checkCode = (code: string, path: Path): void => {
    if (!isAllergenCode(code)) problems.push(unknownWord(path, code, allergenCodes));
  };
  const lists = document.lists.map((list, l): AllergenList => ({
    id: list.id,
    region: list.region,
    law: list.law,
    inForceFrom: list["from-date"],
    inForceTo: list["to-date"],
    entries: list.entries.map(({ source, ...entry }, e) => {
      const path = ["lists", l, "entries", e] as const;
      for (const [index, code] of entry.includes.entries()) checkCode(code, [...path, "includes", index]);
      return { ...entry, source: issued(source, [...path, "source"]).source };
    }),
  }));
  const dietCodes = document.diets.map(({ code }) => code);
  const diets = document.diets.map(({ source, ...diet }, d): DietRule => {
    for (const [index, { code }] of diet.breaks.entries()) checkCode(code, ["diets", d, "breaks", index, "code"]);
    const { code, name, breaks, implies } = diet;
    for (const [index, wider] of (implies ?? []).entries())
      if (!dietCodes.includes(wider)) problems.push(unknownWord(["diets", d, "implies", index], wider, dietCodes));
    return {
      ...{ code, name, breaks, settledBy: diet["settled-by"] },
      ...(implies && { implies }),
      source: issued(source, ["diets", d, "source"]).source,
    };
  });
  const codes = diets.map(({ code }) => code);
  const claims = document.claims.map(({ source, ...claim }, c): DietClaim => {
    if (!codes.includes(claim.diet)) problems.push(unknownWord(["claims", c, "diet"], claim.diet, codes));
    return { ...claim, source: issued(source, ["claims", c, "source"]).source };
  });
  return { rules: { id, version, date, lists, diets, claims }, problems };
}
