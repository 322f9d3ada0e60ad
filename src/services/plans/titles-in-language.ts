import { languageFor, type TranslatedTitle } from "../../domain/plan/translate/in-language.js";
import { ok, type Result } from "../../domain/problem.js";
import { readLocale } from "../answers/read-household.js";
import type { Deps, Page, RevisionSummary } from "../deps.js";

/** What a plan is called in the language of a reader, as far as it was translated. */
export interface ShownTitle {
  readonly title: string;
  /** BCP 47 tag of the language of the title. */
  readonly language: string;
  /** null: it was not translated. */
  readonly summary: string | null;
}

type Titled = Pick<RevisionSummary, "title" | "locale" | "translatedInto">;

/** The language that a plan was translated into and a reader of a locale reads; null: it is shown as it was written. */
export function translationFor({ locale: own, translatedInto }: Titled, locale: string | null): string | null {
  const language = locale === null ? null : languageFor([own, ...translatedInto], locale);
  return language === own ? null : language;
}

export const shownTitle = (plan: Titled, language: string | null, found: TranslatedTitle | null): ShownTitle => ({
  title: found?.title ?? plan.title,
  language: language === null || !found?.title ? plan.locale : language,
  summary: found?.summary ?? null,
});

/** What plans are called in the language of a reader, with one read and no document. `locale` null: as they were written. */
export async function titlesInLanguage(
  { data }: Pick<Deps, "data">,
  plans: readonly RevisionSummary[],
  locale: string | null,
): Promise<readonly ShownTitle[]> {
  const languages = plans.map((plan) => translationFor(plan, locale));
  const asked = plans.flatMap(({ id }, at) => {
    const language = languages[at] ?? null;
    return language === null ? [] : [{ id, language, at }];
  });
  const titles =
    asked.length === 0 ? [] : await data.revisions.titles(asked.map(({ id, language }) => ({ id, language })));
  const found = new Map(asked.map(({ at }, index) => [at, titles[index] ?? null]));
  return plans.map((plan, at) => shownTitle(plan, languages[at] ?? null, found.get(at) ?? null));
}

/**
 * A page with what the plan of each entry is called in the language of a reader.
 *
 * @param locale as it was asked for; null: as they were written
 */
export async function titledPage<Item>(
  deps: Pick<Deps, "data">,
  listed: Result<Page<Item>>,
  planOf: (item: Item) => RevisionSummary,
  locale: string | null,
): Promise<Result<Page<Item & { readonly shown: ShownTitle }>>> {
  const read = readLocale(locale, ["locale"]);
  if (!listed.ok) return listed;
  if (!read.ok) return read;
  const { items, ...page } = listed.value;
  const titles = await titlesInLanguage(
    deps,
    items.map(({ item }) => planOf(item)),
    read.value,
  );
  const shown = items.flatMap(({ cursor, item }, at) => {
    const title = titles[at];
    return title === undefined ? [] : [{ cursor, item: { ...item, shown: title } }];
  });
  return ok({ ...page, items: shown });
}
