import type { KeepingClass, PublishedKeepingRule } from "../../domain/model/keeping.js";
import type { Path, Problem } from "../../domain/problem.js";
import { isKeepingClass } from "../../domain/storage/keeping-classes.js";
import type { CautionRule, HandlingRule, RegionalCaution } from "../../domain/storage/rule.js";
import type { CautionsDocument, FoodSafetyDocument } from "./food-safety-schema.js";
import { sourceReader } from "./rule-sources.js";
import { duplicateIds, unknownWord } from "./rule-texts.js";

/** Keeping and handling rules as the model has them, and what is wrong: unknown classes, ids or sources. */
export function readFoodSafety(
  document: FoodSafetyDocument,
  classes: readonly KeepingClass[],
): {
  readonly keeping: readonly PublishedKeepingRule[];
  readonly handling: readonly HandlingRule[];
  readonly problems: readonly Problem[];
} {
  const problems: Problem[] = [
    ...duplicateIds(
      "keeping",
      document.keeping.map(({ id }) => id),
    ),
    ...duplicateIds(
      "handling",
      document.handling.map(({ id }) => id),
    ),
  ];
  const issued = sourceReader(document.sources, problems);
  const codes = classes.map(({ code }) => code);
  const keeping = document.keeping.map((rule, index): PublishedKeepingRule => {
    const keepsAs = rule["keeps-as"];
    if (!isKeepingClass(keepsAs, classes)) problems.push(unknownWord(["keeping", index, "keeps-as"], keepsAs, codes));
    const scale = rule.hours === undefined ? 1 : 24;
    return {
      ...shared(rule),
      ...issued(rule.source, ["keeping", index, "source"]),
      keepsAs,
      place: rule.place,
      days: (rule.hours ?? rule.days ?? 0) / scale,
      daysFrom: rule.from === null ? null : rule.from / scale,
      counts: rule.hours === undefined ? "DAYS" : "HOURS",
      firstDay: Number(rule["first-day"]) === 1 ? 1 : 0,
      printed: rule.printed,
      purpose: rule.purpose,
    };
  });
  const handling = document.handling.map((rule, index): HandlingRule => {
    const value = rule["at-most"] ?? rule["at-least"];
    const bound = rule["at-most"] === undefined ? ("AT_LEAST" as const) : ("AT_MOST" as const);
    return {
      ...shared(rule),
      ...issued(rule.source, ["handling", index, "source"]),
      topic: rule.topic,
      about: rule.about,
      limit: value === undefined || rule.unit === undefined ? null : { bound, from: rule.from, value, unit: rule.unit },
      says: rule.says,
    };
  });
  return { keeping, handling, problems };
}

const shared = (rule: FoodSafetyDocument["keeping"][number] | FoodSafetyDocument["handling"][number]) => ({
  id: rule.id,
  audience: rule.audience,
  region: rule.region,
  condition: rule.condition,
  temperature: rule.temperature,
  inForceFrom: rule["from-date"],
  inForceTo: rule["to-date"],
  note: rule.note,
});

/** Cautions as the model has them. `known`: ids of the rules they may rest on, and the classes they may be about. */
export function readCautions(
  document: CautionsDocument,
  known: { readonly rules: readonly string[]; readonly classes: readonly KeepingClass[] },
): { readonly cautions: readonly CautionRule[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [
    ...duplicateIds(
      "cautions",
      document.cautions.map(({ code }) => code),
      "code",
    ),
  ];
  const issued = sourceReader(document.sources, problems);
  const codes = known.classes.map(({ code }) => code);
  const cautionCodes = document.cautions.map(({ code }) => code);
  const check = (words: readonly string[], among: readonly string[], path: Path): void => {
    for (const [at, word] of words.entries())
      if (!among.includes(word)) problems.push(unknownWord([...path, at], word, among));
  };
  const cautions = document.cautions.map((written, index): CautionRule => {
    const { code, text, rules, source, when, "by-region": byRegion, "gives-way-to": givesWayTo } = written;
    const path = ["cautions", index] as const;
    check(rules, known.rules, [...path, "rules"]);
    check(givesWayTo ?? [], cautionCodes, [...path, "gives-way-to"]);
    const regional = byRegion?.map((each, at): RegionalCaution => {
      const here = [...path, "by-region", at] as const;
      check(each.rules, known.rules, [...here, "rules"]);
      return { ...each, source: issued(each.source, [...here, "source"]).source };
    });
    for (const [at, keepsAs] of when["keeps-as"].entries())
      if (!isKeepingClass(keepsAs, known.classes))
        problems.push(unknownWord([...path, "when", "keeps-as", at], keepsAs, codes));
    const { always, perishable, foods } = when;
    return {
      code,
      text,
      rules,
      source: issued(source, [...path, "source"]).source,
      ...(regional === undefined ? {} : { byRegion: regional }),
      ...(givesWayTo === undefined ? {} : { givesWayTo }),
      when: {
        always,
        perishable,
        keepsAs: when["keeps-as"],
        foods,
        foodWords: when["food-words"],
        stepWords: when["step-words"],
      },
    };
  });
  return { cautions, problems };
}
