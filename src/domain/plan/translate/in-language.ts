import { BoundedCache } from "../../bounded-cache.js";
import { memoize } from "../../memoize.js";
import type { PlanBundle } from "../../model/plan.js";
import { translatedText, type TranslatedThing, type Translation } from "../../model/translation.js";
import { readOrNull } from "../../read-or-null.js";
import { mapComponentTexts, mapPlanTexts, type TextChange } from "./map-texts.js";
import { languagesOfPlan, pathKey } from "./texts-of.js";

/** The most languages that a plan is translated into. */
export const mostTranslations = 12;

/** Of each plan, as it is read in other languages. */
const inLanguages = memoize(
  (_: PlanBundle) => new BoundedCache<PlanBundle>("plans-in-languages", { max: mostTranslations }),
);

/**
 * The plan with its texts in the language of a reader, as far as they were translated; the plan itself where it is in that language, or is
 * translated into no such. Nothing that is computed hangs on these texts, so every figure is the same in all languages.
 *
 * @param locale BCP 47 tag; null: as it was written
 */
export function inLanguage(bundle: PlanBundle, locale: string | null): PlanBundle {
  if (locale === null || bundle.translations === undefined || bundle.translations.length === 0) return bundle;
  const language = languageFor(languagesOfPlan(bundle), locale);
  if (language === null || language === bundle.plan.locale) return bundle;
  const known = inLanguages(bundle);
  const before = known.get(language);
  if (before !== undefined) return before;
  const shown = translated(bundle, bundle.translations, language);
  known.set(language, shown);
  return shown;
}

/** Title and summary of a plan in another language, as far as they were translated. */
export interface TranslatedTitle {
  readonly title: string | null;
  readonly summary: string | null;
}

/** Those of a plan, by the languages that it was translated into. */
export const titlesOfPlan = ({
  translations = [],
}: Pick<PlanBundle, "translations">): ReadonlyMap<string, TranslatedTitle> =>
  new Map(
    translations.flatMap((each): readonly [string, TranslatedTitle][] =>
      each.of.kind === "PLAN"
        ? [[each.language, { title: translatedText(each, "title"), summary: translatedText(each, "summary") }]]
        : [],
    ),
  );

/**
 * That of some languages which a reader of a locale reads: the very tag, or else the first of its language and script, whatever the country;
 * null: none of them.
 */
export function languageFor(languages: readonly string[], locale: string): string | null {
  const wanted = spoken(locale);
  return (
    languages.find((each) => each.toLowerCase() === locale.toLowerCase()) ??
    languages.find((each) => wanted !== null && spoken(each) === wanted) ??
    null
  );
}

/** Language and script, which one who reads `zh-TW` needs to be told apart from `zh-CN`. */
const spoken = (locale: string): string | null =>
  readOrNull(() => {
    const { language, script } = new Intl.Locale(locale).maximize();
    return `${language} ${script ?? ""}`;
  });

function translated(bundle: PlanBundle, translations: readonly Translation[], language: string): PlanBundle {
  const { plan, components } = bundle;
  const left = new Set<string>();
  const done = new Set<string>();
  const changeFor = (kind: TranslatedThing["kind"], slug: string): TextChange => {
    const own = translations.find(
      (each) => each.language === language && each.of.kind === kind && each.of.slug === slug,
    );
    const texts = new Map((own?.texts ?? []).map(({ path, text }) => [pathKey(path), text]));
    return (text, path) => {
      const found = texts.get(pathKey(path));
      if (found === undefined && /\p{L}/u.test(text)) left.add(text);
      if (found !== undefined) done.add(found);
      return found ?? text;
    };
  };
  const shown = {
    plan: { ...mapPlanTexts(plan, changeFor("PLAN", plan.slug)), locale: language },
    components: components.map((component) => mapComponentTexts(component, changeFor("COMPONENT", component.slug))),
  };
  // A word that is the same in both languages is in the reader's.
  const texts = new Set([...left].filter((text) => !done.has(text)));
  return { ...bundle, ...shown, untranslated: { language: plan.locale, texts } };
}
