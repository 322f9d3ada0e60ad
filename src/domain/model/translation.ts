/** What a translation is of: a plan with its meals, or a component. */
export interface TranslatedThing {
  readonly kind: "PLAN" | "COMPONENT";
  readonly slug: string;
}

/** One text in another language. */
export interface TranslatedText {
  /** Where its original stands in the plan or component: `["meals", "soup", "steps", "boil"]`; of a few words `["words", "finely diced"]`. */
  readonly path: readonly string[];
  readonly text: string;
  /** The original that it was translated from; left out in what is frozen, which has the original beside it. */
  readonly of?: string;
  /** Its numbers are meant to be others. */
  readonly numbersDiffer?: true;
}

/** The texts of a plan or a component in one more language. */
export interface Translation {
  readonly of: TranslatedThing;
  /** BCP 47 tag. */
  readonly language: string;
  readonly texts: readonly TranslatedText[];
  /** When its writer last held all of it against the original, in the writer's own words; left out: never said. */
  readonly checked?: string;
}

/** The name of its draft: of one thing there is one translation into a language. */
export const translationSlug = ({ of, language }: Pick<Translation, "of" | "language">): string =>
  `${language.toLowerCase()}-${of.kind.toLowerCase()}-${of.slug}`;

/** What stands for the text of a key such as `title`; null: it leaves that as it is. */
export const translatedText = ({ texts }: Pick<Translation, "texts">, key: string): string | null =>
  texts.find(({ path }) => path.length === 1 && path[0] === key)?.text ?? null;

/** Script and region are lazy: `plan` has as many letters as a script. */
const slugForm = /^[a-z]{2,3}(?:-[a-z]{4})??(?:-(?:[a-z]{2}|\d{3}))??-(plan|component)-(.+)$/;

/** What the draft of that name translates; null: it is no name of a translation. */
export function thingOfTranslation(slug: string): TranslatedThing | null {
  const [, kind, of] = slugForm.exec(slug) ?? [];
  return of === undefined ? null : { kind: kind === "plan" ? "PLAN" : "COMPONENT", slug: of };
}
