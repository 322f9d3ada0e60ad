import { IntlMessageFormat } from "intl-messageformat";
import { memoizeLatest } from "../../domain/memoize.js";
import { readerLocale, type ReaderLocale } from "../../domain/quantity/reader-locale.js";
import { isMessage, type Arguments, type Catalogue, type Spoken, type Translation } from "./message.js";

type Element = ReturnType<IntlMessageFormat["getAst"]>[number];

/** Parsing is dear, and the same for every locale of a language. */
const parsed = memoizeLatest("messages", 4000, String, (text: string) =>
  new IntlMessageFormat(text, "en", undefined, { ignoreTag: true }).getAst(),
);

/** What the elements of a message's syntax tree are. */
const [literal, plainArgument, select, plural, counted] = [0, 1, 5, 6, 7] as const;

/** A sentence, or a part of one; `count` is the number that the plural around it goes by. */
type Said = (given: Arguments, count: number) => string;

/** Closures over the tree: a page says hundreds of sentences, and the library's own formatting takes ten times as long. */
function compile(elements: readonly Element[], reader: ReaderLocale, text: string): Said {
  const parts = elements.map((element) => compileOne(element, reader, text));
  return (given, count) => {
    let said = "";
    for (const part of parts) said += part(given, count);
    return said;
  };
}

function compileOne(element: Element, reader: ReaderLocale, text: string): Said {
  switch (element.type) {
    case literal:
      return () => element.value;
    case plainArgument:
      return (given) => String(argument(given, element.value, text));
    case counted:
      // As the rest of the answer writes numbers.
      return (_, count) => reader.decimal(count, 2);
    case select: {
      const forms = formsOf(element.options, reader, text);
      return (given, count) => formOf(forms, String(argument(given, element.value, text)), text)(given, count);
    }
    case plural: {
      const forms = formsOf(element.options, reader, text);
      return (given) => {
        const number = Number(argument(given, element.value, text));
        const form = forms.get(`=${number}`) ?? formOf(forms, reader.plural(number), text);
        return form(given, number);
      };
    }
    default:
      throw new Error(
        `"${text}" has a date, a time or a number with a style: give it as text, as the rest of the answer writes it`,
      );
  }
}

const formsOf = (
  options: Readonly<Record<string, { readonly value: readonly Element[] }>>,
  reader: ReaderLocale,
  text: string,
): ReadonlyMap<string, Said> =>
  new Map(Object.entries(options).map(([name, { value }]) => [name, compile(value, reader, text)]));

function formOf(forms: ReadonlyMap<string, Said>, name: string, text: string): Said {
  const form = forms.get(name) ?? forms.get("other");
  if (form === undefined) throw new Error(`"${text}" has no form "other"`);
  return form;
}

function argument(given: Arguments, name: string, text: string): string | number {
  const value = given[name];
  if (value === undefined) throw new Error(`"${text}" is said without "${name}"`);
  return value;
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
    const text = own === null ? entry.text : String(own);
    let say: Said | null = null;
    return [key, (given: Arguments) => (say ??= compile(parsed(text), readerLocale(locale), text))(given, 0)];
  });
  return Object.fromEntries(spoken) as Spoken<Of>;
}
