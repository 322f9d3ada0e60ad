import type { MeasureSystem, UnitRef } from "../../../domain/model/amount.js";
import { findFood, matchFood, type FoodMatch, type FoodNames } from "../../../domain/quantity/food-name.js";
import { mostOffered, nearestFoods } from "../../../domain/quantity/naming/nearest-foods.js";
import { twoParts } from "../../../domain/quantity/line/two-parts.js";
import { findOwnMeasure, parseAmount } from "../../../domain/quantity/parse.js";
import { languageOf } from "../../../domain/quantity/reader-locale.js";
import { readLine, type ReadLine, type TakenLine } from "../../../domain/quantity/read-line.js";
import { findUnit } from "../../../domain/quantity/unit.js";
import { amountText } from "../amount-text.js";
import { isComponentName, slugNamed } from "./line-names.js";
import { lineSchema, type LineDocument, type OpenLine } from "../schemas/line-schema.js";
import { lineDocument } from "./line-document.js";

/** What a text line is read with. */
export interface TextLineReader {
  readonly locale: string;
  readonly measures: MeasureSystem;
  readonly region: string | null;
  /** Foods and components (line-names.ts). */
  readonly names: FoodNames;
  /** How often the nearest names may still be looked for: each look goes through all of them. */
  looks: number;
}

/** How a text line was understood: the lines it stands for (two for "juice and zest of 2 lemons"), or what is open about it. */
type TextLineRead =
  | { readonly lines: readonly LineDocument[] }
  | { readonly lines: null; readonly open: OpenLine; readonly read: ReadLine };

/** Reads a line as one writes it. What is not certain is open, never guessed. */
export function readTextLine(text: string, reader: TextLineReader): TextLineRead {
  const options = { ...reader, foods: reader.names };
  const parts = bothParts(text, reader);
  if (parts !== null) return { lines: parts };
  const read = readLine(text, options);
  const own = read.match.kind === "NONE" ? ownMeasured(text, reader) : null;
  if (own !== null) return { lines: [documentLine(text, own)] };
  return read.taken === null
    ? { lines: null, open: openLine(read, reader), read }
    : { lines: [documentLine(text, read.taken)] };
}

function documentLine(text: string, taken: TakenLine): LineDocument {
  const { food: _food, ...line } = lineDocument(text, taken);
  const named = { [isComponentName(taken.food) ? "component" : "food"]: slugNamed(taken.food) };
  const size = taken.size === null ? {} : { size: taken.size };
  return { ...lineSchema.parse({ ...line, ...named }), text, ...size };
}

/** Both parts of a food that has them, each from the same pieces. */
function bothParts(text: string, reader: TextLineReader): readonly LineDocument[] | null {
  const both = twoParts(text, languageOf(reader.locale));
  if (both === null) return null;
  const { taken } = readLine(both.rest, { ...reader, foods: reader.names });
  if (taken?.amount?.unit !== "piece" || taken.part !== null) return null;
  const known = reader.names.foods.get(taken.food)?.parts ?? [];
  if (!both.parts.every((part) => known.some(({ name }) => name === part))) return null;
  return both.parts.map((part) => documentLine(text, { ...taken, part, measured: "AS_BOUGHT" }));
}

const counted = /^([\d.,/⁄ ½⅓⅔¼¾-]+?) ?(\p{L}[^,]*)(?:, (.+))?$/u;
const filler = /^(?:of (?:the )?|von |de (?:la )?|du |d[’'])/iu;

/** Most words of a measure's name. */
const measureWords = 3;

/** "2 batches of boiled barley", "2 ladles of soup": measures that only this food or component has. */
function ownMeasured(text: string, reader: TextLineReader): TakenLine | null {
  const [, number, said, preparation = null] = counted.exec(text.trim().replace(/\s+/g, " ")) ?? [];
  if (number === undefined || said === undefined) return null;
  const words = said.split(" ");
  for (let count = Math.min(measureWords, words.length - 1); count > 0; count -= 1) {
    const name = words.slice(count).join(" ");
    const match = [name, name.replace(filler, "")]
      .map((each) => matchFood(reader.names, each, languageOf(reader.locale), reader.region))
      .find(({ kind }) => kind === "FOUND");
    if (match?.kind !== "FOUND") continue;
    const unit = ownUnit(words.slice(0, count).join(" "), match.slug, reader);
    const amount = unit === null ? null : parseAmount(number, { ...reader, own: [], path: [] });
    if (unit === null || amount?.ok !== true) continue;
    const plain = { part: null, each: null, form: null, size: null, extra: false, optional: false } as const;
    return { ...plain, food: match.slug, amount: { ...amount.value, unit }, measured: "AS_BOUGHT", preparation };
  }
  return null;
}

/** A measure of its own by any of its words; components alone come in batches. */
function ownUnit(word: string, slug: string, reader: TextLineReader): UnitRef | null {
  const own = findOwnMeasure(word, reader.names.foods.get(slug)?.measures ?? []);
  if (own !== null || !isComponentName(slug)) return own;
  const found = findUnit(word, reader);
  return found?.kind === "FOUND" && found.id === "batch" ? "batch" : null;
}

function openLine({ line, match, reasons }: ReadLine, reader: TextLineReader): OpenLine {
  const named = namedBy(match, line.food, reader);
  return {
    reasons: reasons.map(({ code, about }) => ({ code, about })),
    named: named === null ? null : [...new Set(named)].map(slugNamed),
    amounts: line.choices.map(amountText),
  };
}

function namedBy(match: FoodMatch, words: string, reader: TextLineReader): readonly string[] | null {
  if (match.kind === "FOUND") return null;
  if (match.kind === "AMBIGUOUS") return match.slugs;
  if (words === "") return [];
  const foreign = findFood(reader.names, words, null, reader.region);
  if (foreign.kind !== "NONE") return foreign.kind === "FOUND" ? [foreign.slug] : foreign.slugs;
  if (reader.looks <= 0) return [];
  reader.looks -= 1;
  return nearestFoods(reader.names, words, languageOf(reader.locale), mostOffered);
}
