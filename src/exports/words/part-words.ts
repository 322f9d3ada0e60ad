import { languageOf, type AmountLanguage } from "../../domain/quantity/reader-locale.js";

/** What a part is called. One and many where it is counted by itself; else one word, and it is taken of its food. */
interface PartName {
  readonly one: string;
  readonly many: string | null;
}

const counted = (one: string, many: string): PartName => ({ one, many });
const taken = (one: string): PartName => ({ one, many: null });

/** The trade's words for the parts that recipes name most. English writers' parts are English words already. */
const names: Readonly<Record<AmountLanguage, Readonly<Record<string, PartName>>>> = {
  en: { white: counted("white", "whites"), yolk: counted("yolk", "yolks") },
  de: {
    juice: taken("Saft"),
    zest: taken("Schale"),
    white: counted("Eiweiß", "Eiweiß"),
    yolk: counted("Eigelb", "Eigelb"),
  },
  fr: {
    juice: taken("jus"),
    zest: taken("zeste"),
    white: counted("blanc", "blancs"),
    yolk: counted("jaune", "jaunes"),
  },
  es: {
    juice: taken("zumo"),
    zest: taken("ralladura"),
    white: counted("clara", "claras"),
    yolk: counted("yema", "yemas"),
  },
  pl: {
    juice: taken("sok"),
    zest: taken("skórka"),
    white: counted("białko", "białka"),
    yolk: counted("żółtko", "żółtka"),
  },
};

/** A food and the amount of a part of it. */
interface PartSaid {
  /** The name of the food. */
  readonly food: string;
  readonly part: string;
  /** "46 g"; of whole pieces, with the food's own word where it has one: "3 eggs". */
  readonly amount: string;
  /** null: it is measured, not counted in pieces of its food. */
  readonly pieces: { readonly number: string; readonly several: boolean; readonly named: boolean } | null;
}

/** "juice of 2 lemons", "3 egg whites", "1 tbsp lemon juice"; "2 Zitronen (Saft)" where a language would bend the words. */
export function partText({ food, part, amount, pieces }: PartSaid, language: string): string {
  const name = nameOf(part, language);
  if (language !== "en") {
    const whole = pieces === null || !pieces.named ? `${amount} ${food}` : amount;
    return `${whole} (${pieces?.several === true ? (name.many ?? name.one) : name.one})`;
  }
  if (pieces === null) return `${amount} ${food} ${name.one}`;
  if (name.many !== null) return `${pieces.number} ${food} ${pieces.several ? name.many : name.one}`;
  return `${name.one} of ${pieces.named ? amount : `${amount} ${food}`}`;
}

/** "lemon juice": the part without an amount. */
export const partName = (food: string, part: string, language: string): string =>
  language === "en" ? `${food} ${nameOf(part, language).one}` : `${food} (${nameOf(part, language).one})`;

/** The part alone: "juice". */
export const partWord = (part: string, language: string): string => nameOf(part, language).one;

/** The same for a BCP 47 tag. */
export const partIn = (locale: string, part: string): string => partWord(part, languageOf(locale));

const nameOf = (part: string, language: string): PartName =>
  names[language as AmountLanguage]?.[part] ?? { one: part, many: null };
