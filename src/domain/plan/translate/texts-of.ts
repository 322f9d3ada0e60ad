import type { Component } from "../../model/component.js";
import type { Plan, PlanBundle } from "../../model/plan.js";
import {
  translationSlug,
  type TranslatedText,
  type TranslatedThing,
  type Translation,
} from "../../model/translation.js";
import { memoize } from "../../memoize.js";
import { mapComponentTexts, mapPlanTexts, type TextChange, type TextKind } from "./map-texts.js";

/** A text that readers see. */
export interface OriginalText {
  readonly path: readonly string[];
  readonly text: string;
  readonly kind: TextKind;
}

/** A path as one word, for maps. */
export const pathKey = (path: readonly string[]): string => path.join("\u0000");

/** The same for writers: `meals/soup/steps/boil`. */
export const textName = (path: readonly string[]): string => path.join("/");

/** Everything a plan, with its meals, says in words, by `pathKey`. */
export const textsOfPlan = memoize((plan: Plan) => collected((note) => void mapPlanTexts(plan, note)));

/** The same of a component. */
export const textsOfComponent = memoize((component: Component) =>
  collected((note) => void mapComponentTexts(component, note)),
);

function collected(go: (note: TextChange) => void): ReadonlyMap<string, OriginalText> {
  const found = new Map<string, OriginalText>();
  go((text, path, kind) => {
    if (/\p{L}/u.test(text)) found.set(pathKey(path), { path, text, kind });
    return text;
  });
  return found;
}

/** What a translation is of, among the things of a plan; null: nothing that is there. */
export function originalsOf(
  { plan, components }: PlanBundle,
  of: TranslatedThing,
): ReadonlyMap<string, OriginalText> | null {
  if (of.kind === "PLAN") return of.slug === plan.slug ? textsOfPlan(plan) : null;
  const component = components.find(({ slug }) => slug === of.slug);
  return component === undefined ? null : textsOfComponent(component);
}

/**
 * BCP 47 tags of the languages that a plan can be read in, each once: its own, then those it was translated into. What it is written in may have
 * become a language that it had a translation into before.
 */
export const languagesOfPlan = ({ plan, translations = [], untranslated }: PlanBundle): readonly string[] => [
  ...new Set([
    untranslated?.language ?? plan.locale,
    ...translations.flatMap(({ of, language }) => (of.kind === "PLAN" ? [language] : [])),
  ]),
];

/** The translations as they are frozen: those of texts that are there, without what only their writer needs. */
export function frozenTranslations(bundle: PlanBundle): readonly Translation[] {
  const languages = new Set(languagesOfPlan(bundle).slice(1));
  return (bundle.translations ?? [])
    .filter(({ language }) => languages.has(language))
    .flatMap(({ of, language, texts }): readonly Translation[] => {
      const originals = originalsOf(bundle, of);
      if (originals === null) return [];
      const known = texts.filter(({ path }) => originals.has(pathKey(path))).map(frozenText);
      return [{ of, language, texts: known }];
    })
    .toSorted((a, b) => (translationSlug(a) < translationSlug(b) ? -1 : 1));
}

const frozenText = ({ of: _, ...text }: TranslatedText): TranslatedText => text;

/** A plan with those of some translations that are of it and its components; the same where there are none. */
export function withTranslations(bundle: PlanBundle, translations: readonly Translation[]): PlanBundle {
  const own = translations.filter(({ of }) => originalsOf(bundle, of) !== null);
  return own.length === 0 ? bundle : { ...bundle, translations: own };
}
