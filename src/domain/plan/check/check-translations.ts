import type { PlanBundle } from "../../model/plan.js";
import { translationSlug, type Translation } from "../../model/translation.js";
import type { Path, Problem, TranslationProblem } from "../../problem.js";
import { differingLinks, differingNumbers } from "../translate/differing-numbers.js";
import { mostTranslations } from "../translate/in-language.js";
import { languagesOfPlan, originalsOf, pathKey, textName, type OriginalText } from "../translate/texts-of.js";
import type { Finding } from "./finding.js";

/** The most texts that one finding names. */
const mostNamed = 10;

/** More languages than a plan may be translated into. */
export function checkLanguages(bundle: PlanBundle): readonly Problem[] {
  const size = languagesOfPlan(bundle).length - 1;
  return size > mostTranslations
    ? [{ code: "TOO_LARGE", path: ["translations"], what: "translations of the plan", size, limit: mostTranslations }]
    : [];
}

/** What its translations leave out, what they say of texts that changed or are gone, and what they say otherwise. */
export function checkTranslations(bundle: PlanBundle): readonly Finding[] {
  const translations = bundle.translations ?? [];
  if (translations.length === 0) return [];
  const [, ...languages] = languagesOfPlan(bundle);
  return languages.flatMap((language) => {
    const own = translations.filter((each) => each.language === language);
    return [...incomplete(bundle, language, own), ...own.flatMap((each) => checkOne(bundle, each))];
  });
}

/** Numbers of a translation that its originals do not have, and the other way round. */
export function checkTranslatedNumbers(
  { texts, language }: Translation,
  originals: ReadonlyMap<string, OriginalText>,
  from: string,
  path: Path,
): readonly TranslationProblem[] {
  return texts.flatMap((text): readonly TranslationProblem[] => {
    const original = originals.get(pathKey(text.path));
    if (original === undefined || text.numbersDiffer) return [];
    const found = differingNumbers(
      { text: original.text, language: from },
      { text: text.text, language },
      original.kind,
    );
    return found === null
      ? []
      : [{ code: "TRANSLATION_NUMBERS", path: [...path, ...text.path], language, at: textName(text.path), ...found }];
  });
}

function checkOne(bundle: PlanBundle, translation: Translation): readonly Finding[] {
  const { of, language, texts } = translation;
  const originals = originalsOf(bundle, of) ?? new Map<string, OriginalText>();
  const path = ["translations", translationSlug(translation)];
  const gone = texts.filter((text) => !originals.has(pathKey(text.path)));
  const changed = texts.filter((text) => {
    const now = originals.get(pathKey(text.path));
    return text.of !== undefined && now !== undefined && now.text !== text.of;
  });
  const found: Finding[] = checkTranslatedNumbers(translation, originals, bundle.plan.locale, path).map((problem) => ({
    ...problem,
    severity: "STOPS",
  }));
  const note = (code: "TRANSLATION_OUTDATED" | "TRANSLATION_ORPHANED", of: typeof texts): void => {
    const [first] = of;
    if (first === undefined) return;
    const named = of.slice(0, mostNamed).map((text) => textName(text.path));
    found.push({ code, severity: "LOOK", path: [...path, ...first.path], language, count: of.length, texts: named });
  };
  note("TRANSLATION_OUTDATED", changed);
  note("TRANSLATION_ORPHANED", gone);
  for (const text of texts) {
    const original = originals.get(pathKey(text.path));
    if (original?.kind !== "WRITING") continue;
    const links = differingLinks(original.text, text.text);
    if (links.length > 0)
      found.push({ code: "TRANSLATION_LINKS", severity: "LOOK", path: [...path, ...text.path], language, links });
  }
  return found;
}

function incomplete(bundle: PlanBundle, language: string, own: readonly Translation[]): readonly Finding[] {
  const { plan, components } = bundle;
  const things = [
    { kind: "PLAN" as const, slug: plan.slug },
    ...components.map(({ slug }) => ({ kind: "COMPONENT" as const, slug })),
  ];
  let total = 0;
  const missing: string[] = [];
  for (const of of things) {
    const texts = own.find((each) => each.of.kind === of.kind && each.of.slug === of.slug)?.texts ?? [];
    const done = new Set(texts.map(({ path }) => pathKey(path)));
    const before = of.kind === "PLAN" ? [] : ["components", of.slug];
    for (const [key, { path }] of originalsOf(bundle, of) ?? []) {
      total += 1;
      if (!done.has(key)) missing.push(textName([...before, ...path]));
    }
  }
  if (missing.length === 0) return [];
  const path = ["translations", translationSlug({ of: { kind: "PLAN", slug: plan.slug }, language })];
  const counts = { translated: total - missing.length, total };
  return [
    { code: "TRANSLATION_INCOMPLETE", severity: "LOOK", path, language, ...counts, texts: missing.slice(0, mostNamed) },
  ];
}
