import { numberMarks } from "../../quantity/parse/number-marks.js";

/** What a number counts, and how many of the smallest of its kind one of them is: minutes, degrees, grams, millilitres, millimetres. */
export type NumberUnit =
  | { readonly of: "TEMPERATURE"; readonly scale: "C" | "F" }
  | { readonly of: "MINUTES" | "MASS" | "VOLUME" | "LENGTH"; readonly times: number };

/** Words for units of time in the languages of the fixed words; those of other languages count nothing that is known. */
const times: readonly (readonly [number, RegExp])[] = [
  [1 / 60, /^[\s-]?(?:seconds?|secs?|Sekunden?|Sek|secondes?|segundos?|sekund[ay]?|s)(?!\p{L})/iu],
  [1, /^[\s-]?(?:minutes?|mins?|Minuten?|minütig\p{L}*|minutos?|minut[ay]?)(?!\p{L})/iu],
  [60, /^[\s-]?(?:hours?|hrs?|Stunden?|stündig\p{L}*|Std|heures?|horas?|godzin[ay]?|godz|h)(?!\p{L})/iu],
  [1440, /^[\s-]?(?:days?|Tage?n?|tägig\p{L}*|jours?|días?|dzień|dni)(?!\p{L})/iu],
];

/** Symbols of the International System of Units, the same in every language. */
const symbols: readonly (readonly [NumberUnit, RegExp])[] = [
  [{ of: "MASS", times: 0.001 }, /^\s?mg(?!\p{L})/u],
  [{ of: "MASS", times: 1000 }, /^\s?kg(?!\p{L})/u],
  [{ of: "MASS", times: 1 }, /^\s?g(?!\p{L})/u],
  [{ of: "VOLUME", times: 1 }, /^\s?ml(?!\p{L})/iu],
  [{ of: "VOLUME", times: 10 }, /^\s?cl(?!\p{L})/iu],
  [{ of: "VOLUME", times: 100 }, /^\s?dl(?!\p{L})/iu],
  [{ of: "VOLUME", times: 1000 }, /^\s?l(?!\p{L})/iu],
  [{ of: "LENGTH", times: 1 }, /^\s?mm(?!\p{L})/u],
  [{ of: "LENGTH", times: 10 }, /^[\s-]?cm(?!\p{L})/u],
];

const degrees =
  /^\s?(?:(?:°|degrees?|Grad|degrés?|grados?|stopni[ae]?)\s?(F|C|Fahrenheit|Celsius|Celsjusza)?|(C|F))(?!\p{L})/iu;

/** The unit that follows a number, if it is one that is known. */
export function unitAfter(behind: string): { readonly unit: NumberUnit; readonly written: string } | null {
  const heat = degrees.exec(behind);
  if (heat !== null) {
    const scale = (heat[1] ?? heat[2] ?? "C").toUpperCase().startsWith("F") ? "F" : "C";
    return { unit: { of: "TEMPERATURE", scale }, written: heat[0] };
  }
  for (const [unit, form] of symbols) {
    const found = form.exec(behind);
    if (found !== null) return { unit, written: found[0] };
  }
  for (const [each, form] of times) {
    const found = form.exec(behind);
    if (found !== null) return { unit: { of: "MINUTES", times: each }, written: found[0] };
  }
  return null;
}

/** Whether a language parts thousands with a space. */
export const spaceGroups = (language: string): boolean => /^\s$/u.test(numberMarks(language)?.group ?? "");

const rows: Readonly<Record<string, string>> = {
  en: "both:2 thirteen:13 fourteen:14 fifteen:15 sixteen:16 eighteen:18 twenty:20 thirty:30 forty:40 fifty:50 sixty:60 ninety:90 hundred:100",
  de: "beide:2 beiden:2 dreizehn:13 vierzehn:14 fünfzehn:15 sechzehn:16 achtzehn:18 zwanzig:20 dreißig:30 vierzig:40 fünfzig:50 sechzig:60 neunzig:90 hundert:100",
  fr: "treize:13 quatorze:14 quinze:15 seize:16 vingt:20 trente:30 quarante:40 cinquante:50 soixante:60 cent:100",
  es: "trece:13 catorce:14 quince:15 veinte:20 treinta:30 cuarenta:40 cincuenta:50 sesenta:60 noventa:90 cien:100",
  pl: "piętnaście:15 dwadzieścia:20 trzydzieści:30 czterdzieści:40 pięćdziesiąt:50 sześćdziesiąt:60 sto:100",
};

/** Words for numbers beyond twelve, by language and word. */
export const extraNumberWords: ReadonlyMap<string, number> = new Map(
  Object.entries(rows).flatMap(([language, row]) =>
    row.split(" ").map((entry): readonly [string, number] => {
      const [word = "", value = ""] = entry.split(":");
      return [`${language} ${word}`, Number(value)];
    }),
  ),
);
