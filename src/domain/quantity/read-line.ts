import type { Measured } from "../model/amount.js";
import type { FoodMatch, FoodNames, NamedFood } from "./food-name.js";
import { matchFood } from "./food-name.js";
import { lineAmount, type LineAmount } from "./line/line-amount.js";
import { impliesOne } from "./line/implied-one.js";
import { lineFood, type LineFood } from "./line/line-food.js";
import { sizeOf } from "./line/measure-words.js";
import { partAfterComma } from "./line/spoken-part.js";
import { cleanLine } from "./parse/clean-line.js";
import { lineReasons, parseLine, type LineOptions, type LineReason, type ParsedLine } from "./parse.js";
import { languageOf } from "./reader-locale.js";

/** A line that is understood whole: what it takes of which food. */
export interface TakenLine {
  /** Slug. */
  readonly food: string;
  readonly part: string | null;
  /** null: to taste, a pinch, as needed. */
  readonly amount: Measured | null;
  /** What one of the pieces weighs that `amount` counts; null: nobody says. */
  readonly each: Measured | null;
  /** READY: weighed or measured after peeling and cutting. */
  readonly measured: "AS_BOUGHT" | "READY";
  readonly form: string | null;
  readonly preparation: string | null;
  /** What one is like, as written: "large", "6 oz". */
  readonly size: string | null;
  /** "plus more for serving" */
  readonly extra: boolean;
  readonly optional: boolean;
}

export interface ReadLine {
  readonly line: ParsedLine;
  readonly match: FoodMatch;
  /** null: a person must say what it means; `reasons` and `match` say why. */
  readonly taken: TakenLine | null;
  readonly reasons: readonly LineReason[];
}

interface LineReaderOptions extends LineOptions {
  readonly region: string | null;
  readonly foods: FoodNames;
}

/** Lines read with less than this share of certainty are left to a person. */
const surestEnough = 0.8;

/** Forms that leave a food other than it was bought: what is measured so is ready. */
const cutForms =
  /^(?:chopped|diced|sliced|grated|minced|shredded|cubed|peeled|pitted|slivered|halved|quartered|julienned|trimmed|mashed)$/;

const drainedWords = /(?<!\p{L})(?:drained|abgetropft|abgegossen|égouttée?s?|escurrid[oa]s?|odsączon\p{L}*)(?!\p{L})/iu;
const cookedWords = /(?<!\p{L})(?:cooked|boiled|gekocht\p{L}*|cuite?s?|cocid[oa]s?|ugotowan\p{L}*)(?!\p{L})/iu;

const undrainedWords =
  /(?<!\p{L})(?:undrained|not drained|with (?:the |their |its )?(?:liquid|juices?)|nicht abgetropft|mit (?:der )?(?:flüssigkeit|saft)|non égouttée?s?|avec (?:le |leur )?(?:liquide|jus))(?!\p{L})/iu;
const amountOf = ({ measures, names }: NamedFood): string =>
  [...(measures ?? []).map(({ one }) => one), ...names.map(({ one }) => one)].join(", ");

const weightWords =
  /(?<!\p{L})(?:weight|weighed|measured|\p{L}*gewogen|pesée?s?|\p{L}*gewicht|poids|peso|wag[ai]|prepared|once peeled|when peeled)(?!\p{L})/iu;
/** "fresh or frozen": one of two foods. */
const orWords =
  /(?:^|\p{L}\s+)(?:or|oder|ou|o|u|lub|albo)\s+(?!(?:more|less|so|as|to|mehr|weniger|plus|moins|más|menos|więcej|mniej)(?!\p{L}))\p{L}/iu;

const isDry = (food: NamedFood): boolean => food.aisle === "dry-goods" || (food.yields ?? []).length > 0;

/** What the words beside the amount say against taking it. */
function doubts(
  line: ParsedLine,
  named: LineFood,
  food: NamedFood,
  { foods, region }: LineReaderOptions,
  language: string,
): readonly LineReason[] {
  const said = line.preparation ?? "";
  const words = [said, ...line.notes].join(", ");
  const isCount = line.amount !== null && (line.amount.unit === "piece" || line.amount.unit.startsWith("own:"));
  const reasons: LineReason[] = [];
  if (isDry(food) && !isCount && drainedWords.test(words)) reasons.push({ code: "DRY_OR_DRAINED", about: said });
  if (undrainedWords.test(words) && /drained/.test(amountOf(food)))
    reasons.push({ code: "DRY_OR_DRAINED", about: said });
  if (isDry(food) && !isCount && cookedWords.test(words)) reasons.push({ code: "DRY_OR_COOKED", about: said });
  const isPart = line.part === null && (food.parts ?? []).length > 0 && partAfterComma.test(words);
  if (isPart) reasons.push({ code: "SEVERAL_PARTS", about: words });
  const names = (written: string): boolean => matchFood(foods, written, language, region).kind !== "NONE";
  const another = said
    .split(/\s*[,;]\s*|\s+(?:and|und|et|y|i|e|oraz|&)\s+/iu)
    .find((each) => each !== "" && (names(each) || names(`${each} ${line.food}`)));
  const choice = line.notes.find((note) => orWords.test(note));
  if (another !== undefined) reasons.push({ code: "SEVERAL_FOODS", about: another });
  if (choice !== undefined) reasons.push({ code: "SEVERAL_FOODS", about: choice });
  if (weightWords.test(words)) reasons.push({ code: "READY_OR_NOT", about: words });
  return reasons;
}

const statesNoAmount = ({ noAmount }: ParsedLine): boolean => noAmount === "UNSTATED";

/** "A splash" and "some" are amounts of what is poured and sprinkled, never of what comes in pieces. */
const isPinchOfPieces = ({ noAmount, food: words }: ParsedLine, food: NamedFood, named: LineFood): boolean =>
  words !== "" &&
  named.part === null &&
  (noAmount === "PINCH" || noAmount === "DASH" || noAmount === "SOME") &&
  (food.shoppedBy === "COUNT" || (food.measures ?? []).some(({ name }) => name === "piece"));

/** Reasons that the food's facts have settled. */
const settledBy = (line: ParsedLine, amount: LineAmount): ReadonlySet<string> =>
  line.amount === null && amount.amount !== null ? new Set(["SIZE_OR_GRAMS", "AMBIGUOUS_UNIT"]) : new Set();

/**
 * The same line with the one that it leaves out: "szklanka mąki", "a" being no word of Polish. null where nothing says that it is one, or
 * where the words are the name of another food ("stem ginger").
 */
function withOne(first: ReadLine, raw: string, options: LineReaderOptions, language: string): ReadLine | null {
  const { line, match } = first;
  if (line.noAmount !== "UNSTATED" || line.part !== null || line.reasons.some(({ code }) => code !== "NO_AMOUNT"))
    return null;
  const text = cleanLine(raw);
  if (!impliesOne(text, language)) return null;
  const counted = parseLine(`1 ${text}`, options);
  if (counted.amount === null && counted.choices.length === 0) return null;
  const assumed: LineReason = { code: "COUNT_ASSUMED", about: text };
  const again = readParsed(
    {
      ...counted,
      raw,
      confidence: counted.confidence * lineReasons.COUNT_ASSUMED,
      reasons: [...counted.reasons, assumed],
    },
    options,
    language,
  );
  if (match.kind === "NONE") return again;
  return again.taken !== null && match.kind === "FOUND" && again.taken.food === match.slug ? again : null;
}

/**
 * Reads a line and finds its food: taken whole, or left to a person with every reason. Never silently wrong: a container matches only a food
 * that is sold so, amounts that contradict each other are not chosen between, a size takes the food's own measure, and a written weight goes
 * before a table.
 */
export function readLine(raw: string, options: LineReaderOptions): ReadLine {
  const language = languageOf(options.locale);
  const first = readParsed(parseLine(raw, options), options, language);
  return withOne(first, raw, options, language) ?? first;
}

function readParsed(parsed: ParsedLine, options: LineReaderOptions, language: string): ReadLine {
  const reader = { names: options.foods, language, region: options.region };
  const named = lineFood(parsed, reader);
  const line = named.isDescribed
    ? { ...parsed, form: null, notes: parsed.notes.filter((note) => sizeOf(note) === null) }
    : parsed;
  const food = named.match.kind === "FOUND" ? options.foods.foods.get(named.match.slug) : undefined;
  const left = (reasons: readonly LineReason[]): ReadLine => ({ line, match: named.match, taken: null, reasons });
  if (named.notSoldSo) return left([...line.reasons, { code: "NOT_SOLD_SO", about: line.amount?.unit.slice(4) ?? "" }]);
  if (food === undefined) return left(line.reasons);
  const amount = lineAmount(line, named, food);
  const settled = settledBy(line, amount);
  const reasons = [
    ...line.reasons.filter(({ code }) => !settled.has(code)),
    ...amount.reasons,
    ...doubts(line, named, food, options, language),
    ...(isPinchOfPieces(line, food, named) ? [{ code: "UNIT_NOT_OF_FOOD" as const, about: line.noAmount ?? "" }] : []),
  ];
  const sure = reasons.reduce((share, { code }) => share * lineReasons[code], 1);
  const isOpen = sure < surestEnough || statesNoAmount(line) || (line.noAmount === "UNCLEAR" && amount.amount === null);
  if (isOpen) return left(reasons);
  const isMeasured = amount.amount !== null && amount.amount.unit !== "piece" && !amount.amount.unit.startsWith("own:");
  const isCut = line.form?.split(", ").some((form) => cutForms.test(form)) === true;
  const taken: TakenLine = {
    food: food.slug,
    part: named.part,
    amount: amount.amount,
    each: amount.each ?? null,
    measured: isMeasured && isCut && named.part === null ? "READY" : "AS_BOUGHT",
    form: line.form,
    preparation: line.preparation,
    size: amount.size,
    extra: line.modifiers.includes("PLUS_MORE") && amount.amount !== null,
    optional: line.modifiers.includes("OPTIONAL"),
  };
  return { line, match: named.match, taken, reasons };
}
