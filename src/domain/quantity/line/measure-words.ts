import type { OwnMeasure } from "../../model/food.js";
import { countWords } from "../parse/words/count-words.js";

/** What several languages call one measure, by the word for one of it; the first is the usual name of such a measure. */
const groups: readonly (readonly string[])[] = [
  "tin can dose boîte conserve lata bote puszka",
  "jar glas bocal tarro słoik",
  "bottle flasche bouteille botella butelka",
  "bag tüte beutel bolsa torebka",
  "box karton carton",
  "carton brique brik karton",
  "pack package packet packung päckchen paquet paquete opakowanie paczka",
  "sachet päckchen beutel sobre torebka",
  "tub pot becher",
  "tube",
  "pouch beutel",
  "punnet",
  "clove zehe gousse diente ząbek",
  "bunch bund botte bouquet manojo pęczek",
  "head kopf tête cabeza główka bulb knolle",
  "sprig zweig stiel brin branche stem ramita rama gałązka",
  "stick stalk rib stange branche tige bâton tallo rama palo łodyga laska stem",
  "leaf blatt feuille hoja liść",
  "slice scheibe tranche rebanada loncha plaster kromka rasher",
  "block",
  "loaf",
  "fillet",
  "ear",
  "bulb knolle",
  "cube würfel",
  "ball",
  "wedge",
  "strip",
  "glass glas verre vaso",
  "mug kubek",
  "handful handvoll poignée puñado garść",
].map((row) => row.split(" "));

/** Containers that say how a food is kept, and so which food it is: a tin of beans is another food than beans. */
const telling: ReadonlySet<string> = new Set(["tin", "jar", "tube", "pouch", "sachet"]);

const groupsOf = (word: string): readonly (readonly string[])[] => groups.filter((group) => group.includes(word));

/** Whether two words, of any of the languages, may mean one measure. */
export const sameMeasure = (one: string, other: string): boolean =>
  one === other || groupsOf(one).some((group) => group.includes(other));

/** Whether a container tells of another food; one with several meanings does if any of them does. */
export const tellsFood = (word: string): boolean => groupsOf(word).some(([name = ""]) => telling.has(name));

/** Measures of the open table ("can (12 oz)", "slice, thin") are of a size of their own, and no plain can or slice. */
const called = ({ name, one }: OwnMeasure): readonly string[] => [name, one.toLowerCase()];

/** Two words of one food for as much of it: a stalk and a stick of celery. */
const isAsMuch = (one: OwnMeasure, other: OwnMeasure): boolean =>
  one.grams === other.grams && one.millilitres === other.millilitres && one.pieces === other.pieces;

/** The food's own measure that this counting word means; null where it has none, or several it may be that differ. */
export function ownMeasureOf(word: string, measures: readonly OwnMeasure[]): OwnMeasure | null {
  const exact = measures.filter((measure) => called(measure).includes(word));
  const found =
    exact.length > 0 ? exact : measures.filter((measure) => called(measure).some((each) => sameMeasure(word, each)));
  const [first] = found;
  return first !== undefined && found.every((each) => isAsMuch(first, each)) ? first : null;
}

/** Whether a word for the size of one, of any language, is the name of such a measure. */
const sizes: Readonly<Record<string, readonly string[]>> = {
  large: ["large", "big", "groß", "große", "großen", "großer", "großes", "grosse", "grossen", "gr", "gros", "grosses", "grand", "grande", "grands", "grandes", "duży", "duża", "duże", "dużych"],
  medium: ["medium", "medium-sized", "mittelgroß", "mittelgroße", "mittelgroßen", "mittel", "mittlere", "mittleren", "mittl", "mittelgr", "m.-gr", "moyen", "moyenne", "moyens", "moyennes", "mediano", "mediana", "medianos", "medianas", "średni", "średnia", "średnie", "średnich"],
  small: ["small", "klein", "kleine", "kleinen", "kleiner", "kleines", "kl", "petit", "petite", "petits", "petites", "pequeño", "pequeña", "pequeños", "pequeñas", "mały", "mała", "małe", "małych"],
  "extra-large": ["extra-large"],
}; // prettier-ignore

/** `large`, `medium`, `small` or `extra-large`; null for a word that says something else ("ripe"). */
export const sizeOf = (note: string): string | null => {
  const word = note.toLowerCase().replace(/\.$/, "");
  return Object.keys(sizes).find((size) => sizes[size]?.includes(word)) ?? null;
};

/** The measure of one of that size: `large`, or `large-3-dia` as the open table has it. */
export function sizedMeasureOf(size: string, measures: readonly OwnMeasure[]): OwnMeasure | null {
  const found = measures.filter(
    ({ name }) => name === size || (name.startsWith(`${size}-`) && /^\d/.test(name.slice(size.length + 1))),
  );
  return found.length === 1 ? (found[0] ?? null) : null;
}

/** A counting word of this language to the word for one; null for any other word. */
export const countedOne = (word: string, language: string): string | null =>
  (countWords[language] ?? countWords["en"])?.get(word)?.one ?? null;
