import type { Component } from "../../domain/model/component.js";
import type { Plan } from "../../domain/model/plan.js";
import type { TranslatedText, Translation } from "../../domain/model/translation.js";
import { checkText } from "../../domain/plan/check/check-text.js";
import { checkTranslatedNumbers } from "../../domain/plan/check/check-translations.js";
import { madeProblems } from "../../domain/first-problems.js";
import { memoize } from "../../domain/memoize.js";
import type { TextKind } from "../../domain/plan/translate/map-texts.js";
import {
  pathKey,
  textName,
  textsOfComponent,
  textsOfPlan,
  type OriginalText,
} from "../../domain/plan/translate/texts-of.js";
import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { nearestWords } from "../../domain/quantity/naming/nearest-words.js";
import type { TranslationDocument } from "./schemas/translation-schema.js";

/** Keys under which texts stand. */
const textKeys = [
  ...["title", "summary", "introduction", "notes", "tips", "alt"],
  ...["meals", "steps", "swaps", "routes", "words"],
] as const;

/** What may be translated beside the documents themselves. */
export interface Translatable {
  readonly plans: ReadonlyMap<string, Plan>;
  readonly components: ReadonlyMap<string, Component>;
  /** BCP 47 tag of the language that a component is written in; null: not known here, and its plan's check looks at its numbers. */
  readonly localeOf: (component: string) => string | null;
  /** As they were saved before, by the names of their drafts. */
  readonly before: ReadonlyMap<string, Translation>;
}

/**
 * A translation as the model has it, each text with the original that it was made from. A text that was saved before, and is the same now, keeps
 * the original that it had then, unless its writer says that all was checked since.
 */
export function readTranslation(document: TranslationDocument, known: Translatable): Result<Translation> {
  const { of, language, slug, checked } = document;
  const original = of.kind === "PLAN" ? known.plans.get(of.slug) : known.components.get(of.slug);
  if (original === undefined)
    return failed([
      of.kind === "PLAN"
        ? { code: "UNKNOWN_DRAFT", path: ["plan"], draft: "PLAN", slug: of.slug }
        : { code: "UNKNOWN_COMPONENT", path: ["component"], component: of.slug },
    ]);
  const locale = "locale" in original ? original.locale : known.localeOf(of.slug);
  if (language === locale && of.kind === "PLAN")
    return failed([
      { code: "BAD_SHAPE", path: ["language"], expected: "another language than the plan's own", got: language },
    ]);
  const originals = "locale" in original ? textsOfPlan(original) : textsOfComponent(original);
  const before = known.before.get(slug);
  const isChecked = checked !== undefined && before?.checked !== checked;
  const old = new Map((before?.texts ?? []).map((text) => [pathKey(text.path), text]));
  const named = new Set(document["numbers-differ"]);
  const texts = textKeys
    .flatMap((key) => textsIn(document[key], [key]))
    .map(({ path, text }): TranslatedText => {
      const last = old.get(pathKey(path));
      const kept = last?.text === text && !isChecked ? last.of : undefined;
      const made = kept ?? originals.get(pathKey(path))?.text;
      return {
        ...{ path, text },
        ...(made !== undefined && { of: made }),
        ...(named.has(textName(path)) && { numbersDiffer: true as const }),
      };
    });
  const translation: Translation = { of, language, texts, ...(checked !== undefined && { checked }) };
  const names = new Set(texts.map(({ path }) => textName(path)));
  const nothings = [
    ...texts.flatMap(({ path }) => (originals.has(pathKey(path)) ? [] : [() => unknownText(path, originals)])),
    ...document["numbers-differ"].flatMap((name, at) =>
      names.has(name) ? [] : [() => nothing(["numbers-differ", at], name, names)],
    ),
  ];
  const problems: readonly Problem[] = [
    ...madeProblems(nothings, (more) => more),
    ...texts.flatMap(({ path, text }) => checkLength(text, path, originals.get(pathKey(path))?.kind)),
    ...(locale === null ? [] : checkTranslatedNumbers(translation, originals, locale, [])),
  ];
  return problems.length > 0 ? failed(problems) : ok(translation);
}

/** Every text of a value, with the way to it. */
function textsIn(value: unknown, path: readonly string[]): readonly { path: readonly string[]; text: string }[] {
  if (typeof value === "string") return [{ path, text: value }];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => textsIn(each, [...path, key]));
}

/** As long as the engine takes it in the plan's own language, and not blank: otherwise nothing could be computed in this one. */
const checkLength = (text: string, path: readonly string[], kind: TextKind | undefined): readonly Problem[] =>
  kind === "WRITING" ? [] : checkText(text.trim() === "" ? "" : text, "a text", path);

/** The most names that a misspelt one is held against. */
const mostNear = 1_000;

const nothing = (path: readonly (string | number)[], of: string, known: ReadonlySet<string>): Problem => ({
  code: "TRANSLATES_NOTHING",
  path,
  of,
  nearest: nearestWords(of, [...known].slice(0, mostNear)),
});

/** What may follow each beginning of a path, by its `pathKey`. */
const nextAt = memoize((originals: ReadonlyMap<string, OriginalText>): ReadonlyMap<string, ReadonlySet<string>> => {
  const found = new Map<string, Set<string>>();
  for (const { path } of originals.values())
    for (const [index, key] of path.entries()) {
      const before = pathKey(path.slice(0, index));
      const next = found.get(before) ?? new Set();
      found.set(before, next.add(key));
    }
  return found;
});

/** That a text translates none, said where its path leaves those that are known, with what is near it there. */
function unknownText(path: readonly string[], originals: ReadonlyMap<string, OriginalText>): Problem {
  const known = nextAt(originals);
  const besideAt = (index: number) => known.get(pathKey(path.slice(0, index))) ?? new Set();
  const at = path.findIndex((key, index) => !besideAt(index).has(key));
  const wrong = at < 0 ? path.length - 1 : at;
  return nothing(path.slice(0, wrong + 1), path[wrong] ?? "", besideAt(wrong));
}
