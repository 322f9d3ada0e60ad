import type { AllergenStatement } from "../../domain/nutrition/allergens.js";
import type { DietStatement } from "../../domain/nutrition/diets.js";
import type { Contents, PlanAnswer, PlanContents } from "../../domain/plan/plan-answer.js";
import type { Caution, CautionsFound } from "../../domain/storage/cautions.js";
import type { StorageAnswer, StorageGuidance } from "../../domain/storage/guidance.js";
import { ruleText } from "../words/rule-words.js";
import { wordsFor } from "../words/words-for.js";
import type { Words } from "../words/words.js";

const orNull = (text: string | null, words: Words): string | null =>
  text === null ? null : ruleText("ruleTexts", text, words);

/** Allergens by their names in the reader's language. */
export const allergensIn = <Statement extends AllergenStatement>(statement: Statement, words: Words): Statement =>
  words.language === "en"
    ? statement
    : {
        ...statement,
        findings: statement.findings.map((finding) => ({
          ...finding,
          name: ruleText("allergenNames", finding.name, words),
          threshold: orNull(finding.threshold, words),
        })),
      };

/** Diets by what is stated of them in the reader's language. */
export const dietsIn = (statements: readonly DietStatement[], words: Words): readonly DietStatement[] =>
  words.language === "en"
    ? statements
    : statements.map((statement) => ({
        ...statement,
        name: ruleText("dietNames", statement.name, words),
        claims: statement.claims.map((claim) => ({
          ...claim,
          threshold: ruleText("ruleTexts", claim.threshold, words),
        })),
      }));

const contentsIn = ({ allergens, diets }: Contents, words: Words): Contents => ({
  allergens: allergensIn(allergens, words),
  diets: dietsIn(diets, words),
});

/** Cautions in the reader's language. */
export const cautionsIn = (cautions: readonly Caution[], words: Words): readonly Caution[] =>
  words.language === "en"
    ? cautions
    : cautions.map((caution) => ({ ...caution, text: ruleText("cautionTexts", caution.text, words) }));

const guidanceIn = (guidance: StorageGuidance, words: Words): StorageGuidance => ({
  ...guidance,
  condition: orNull(guidance.condition, words),
  basis: guidance.basis.map((basis) => ({
    ...basis,
    condition: orNull(basis.condition, words),
    temperature: orNull(basis.temperature, words),
    note: orNull(basis.note, words),
  })),
});

/** Conditions and notes of the rules in the reader's language. */
export const storageIn = <Kept extends Pick<StorageAnswer, "guidance">>(storage: Kept, words: Words): Kept =>
  words.language === "en"
    ? storage
    : { ...storage, guidance: storage.guidance.map((guidance) => guidanceIn(guidance, words)) };

const planContentsIn = ({ plan, meals }: PlanContents, words: Words): PlanContents => ({
  plan: contentsIn(plan, words),
  meals: new Map([...meals].map(([meal, contents]) => [meal, contentsIn(contents, words)])),
});

const foundIn = (found: CautionsFound, words: Words): CautionsFound => ({
  ...found,
  cautions: cautionsIn(found.cautions, words),
});

/** An answer with what the published rules say in the reader's language. */
export function rulesInLanguage(answer: PlanAnswer): PlanAnswer {
  const words = wordsFor(answer.reader.locale);
  if (words.language === "en") return answer;
  return {
    ...answer,
    storage: storageIn(answer.storage, words),
    contents: planContentsIn(answer.contents, words),
    cautions: foundIn(answer.cautions, words),
  };
}
