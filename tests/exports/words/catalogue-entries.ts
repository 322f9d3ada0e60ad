import { IntlMessageFormat } from "intl-messageformat";
import type { AmountLanguage } from "../../../src/domain/quantity/reader-locale.js";
import { isMessage, type Arguments, type Catalogue } from "../../../src/exports/words/message.js";
import { english } from "../../../src/exports/words/messages/english.js";
import { french } from "../../../src/exports/words/messages/french.js";
import { german } from "../../../src/exports/words/messages/german.js";
import { polish } from "../../../src/exports/words/messages/polish.js";
import { spanish } from "../../../src/exports/words/messages/spanish.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";

export const translations = { de: german, fr: french, es: spanish, pl: polish } as const;
export const languages = ["en", "de", "fr", "es", "pl"] as const satisfies readonly AmountLanguage[];
export type Language = (typeof languages)[number];

/** One text of a catalogue, and the function or words that say it. */
export interface Entry {
  /** Keys down to it: `page.stepDown`. */
  readonly path: string;
  readonly text: string;
  /** null: words without arguments. */
  readonly example: Arguments | null;
  readonly said: unknown;
}

const own = (of: unknown, key: string): unknown => (of as Readonly<Record<string, unknown>>)[key];

function entries(catalogue: Catalogue, translation: unknown, words: unknown, above = ""): readonly Entry[] {
  return Object.entries(catalogue).flatMap(([key, entry]): readonly Entry[] => {
    const path = above + key;
    const [translated, said] = [translation === null ? null : own(translation, key), own(words, key)];
    if (typeof entry === "string")
      return [{ path, text: translation === null ? entry : String(translated), example: null, said }];
    if (isMessage(entry))
      return [{ path, text: translation === null ? entry.text : String(translated), example: entry.example, said }];
    return entries(entry, translated, said, `${path}.`);
  });
}

/** Every entry of the catalogues in one language, in the order of the English one. */
export const entriesIn = (language: Language): readonly Entry[] =>
  entries(english, language === "en" ? null : translations[language], wordsFor(language));

/** A form that a sentence has by number or by word: `plural count one`. */
interface Form {
  readonly by: "plural" | "select";
  readonly name: string;
  readonly form: string;
}

/** Names of arguments, and the forms of a sentence. */
export function partsOf(text: string): { readonly names: readonly string[]; readonly forms: readonly Form[] } {
  const names = new Set<string>();
  const forms: Form[] = [];
  const walk = (elements: ReturnType<IntlMessageFormat["getAst"]>): void => {
    for (const element of elements) {
      if (element.type === 0 || element.type === 7) continue;
      if ("value" in element && typeof element.value === "string") names.add(element.value);
      if (!("options" in element) || element.options === undefined || element.options === null) continue;
      for (const [form, option] of Object.entries(element.options as Record<string, { value: typeof elements }>)) {
        forms.push({ by: element.type === 6 ? "plural" : "select", name: String(element.value), form });
        walk(option.value);
      }
    }
  };
  walk(new IntlMessageFormat(text, "en", undefined, { ignoreTag: true }).getAst());
  return { names: [...names].toSorted(), forms };
}

/** A number of each plural category there is in any of the languages. */
const numbers = [1, 2, 5, 1.5, 1_000_000];

/** An entry as readers meet it, in each of its forms once. */
export function readings({ text, example, said }: Entry, language: Language): readonly string[] {
  if (example === null) return [String(said)];
  const say = said as (given: Arguments) => string;
  const { names, forms } = partsOf(text);
  const given = names.reduce<readonly Arguments[]>(
    (before, name) => {
      const values = valuesOf(
        forms.filter((each) => each.name === name),
        language,
      );
      return values.length === 0
        ? before
        : before.flatMap((each) => values.map((value) => ({ ...each, [name]: value })));
    },
    [example],
  );
  return [...new Set(given.map(say))];
}

/** What brings out each of the forms that an argument chooses between. */
function valuesOf(forms: readonly Form[], language: Language): readonly (string | number)[] {
  if (forms.length === 0) return [];
  if (forms.some(({ by }) => by === "select")) return [...new Set(forms.map(({ form }) => form))];
  const exact = forms.flatMap(({ form }) => (form.startsWith("=") ? [Number(form.slice(1))] : []));
  const rules = new Intl.PluralRules(language);
  const categories = new Map(numbers.toReversed().map((number) => [rules.select(number), number]));
  return [...new Set([...exact, ...categories.values()])].toSorted((one, other) => one - other);
}
