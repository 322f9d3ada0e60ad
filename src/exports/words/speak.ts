import { IntlMessageFormat, type Formatters } from "intl-messageformat";
import { memoizeLatest } from "../../domain/memoize.js";
import { readerLocale } from "../../domain/quantity/reader-locale.js";
import { isMessage, type Arguments, type Catalogue, type Spoken, type Translation } from "./message.js";

/** Parsing is dear, and the same for every locale of a language. */
const parsed = memoizeLatest("messages", 4000, String, (text: string) =>
  new IntlMessageFormat(text, "en", undefined, { ignoreTag: true }).getAst(),
);

/** Numbers as the rest of the answer writes them, forms by the language of the words. */
const formattersFor = (locale: string): Formatters => {
  const { decimal, plural } = readerLocale(locale);
  return {
    getNumberFormat: () => ({ format: (value: number) => decimal(value, 2) }) as unknown as Intl.NumberFormat,
    getPluralRules: () => ({ select: plural }) as Intl.PluralRules,
    getDateTimeFormat: () => {
      throw new Error("a message takes a date as text, made by clock-text.ts");
    },
  };
};

/** In the syntax tree of a message: text, and an argument that stands as it is. */
const [literal, plainArgument] = [0, 1] as const;

function sentence(text: string, locale: string): (given: Arguments) => string {
  const ast = parsed(text);
  // Most sentences choose nothing, and are put together faster than by the library.
  if (ast.every(({ type }) => type === literal || type === plainArgument)) {
    const pieces = ast.map((each) => ({ isText: each.type === literal, value: "value" in each ? each.value : "" }));
    return (given) => pieces.map(({ isText, value }) => (isText ? value : argument(given, value, text))).join("");
  }
  const { language } = readerLocale(locale);
  const format = new IntlMessageFormat(ast, language, undefined, { formatters: formattersFor(locale) });
  return (given) => String(format.format(given));
}

function argument(given: Arguments, name: string, text: string): string {
  const value = given[name];
  if (value === undefined) throw new Error(`"${text}" is said without "${name}"`);
  return String(value);
}

/**
 * A catalogue to speak with. A sentence is compiled when it is first said.
 *
 * @param translation the words in the language of the locale; null: English
 * @param locale BCP 47, whose numbers are written
 */
export function speak<Of extends Catalogue>(
  english: Of,
  translation: Translation<Of> | null,
  locale: string,
): Spoken<Of> {
  const spoken = Object.entries(english).map(([key, entry]): [string, unknown] => {
    const own = (translation as Readonly<Record<string, unknown>> | null)?.[key] ?? null;
    if (typeof entry === "string") return [key, own ?? entry];
    if (!isMessage(entry)) return [key, speak(entry, own as Translation<Catalogue> | null, locale)];
    let say: ((given: Arguments) => string) | null = null;
    return [key, (given: Arguments) => (say ??= sentence(own === null ? entry.text : String(own), locale))(given)];
  });
  return Object.fromEntries(spoken) as Spoken<Of>;
}
