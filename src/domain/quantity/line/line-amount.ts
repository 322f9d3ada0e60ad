import type { Measured } from "../../model/amount.js";
import type { OwnMeasure } from "../../model/food.js";
import { toDimension, type MeasureFacts } from "../convert.js";
import { formatRationalUnit } from "./format-rational-unit.js";
import { countWords } from "../parse/words/count-words.js";
import type { NamedFood } from "../food-name.js";
import type { AlternateAmount, LineReason, ParsedLine } from "../parse.js";
import { toNumber } from "../rational.js";
import { ownMeasureName, ownMeasureRef, standardUnit } from "../unit.js";
import type { LineFood } from "./line-food.js";
import { isSoldIn } from "./line-food.js";
import { ownMeasureOf, sizedMeasureOf, sizeOf, tellsFood } from "./measure-words.js";

/** An amount in the food's own terms, or why a person must say. */
export interface LineAmount {
  readonly amount: Measured | null;
  /** What one of the pieces weighs that `amount` counts. */
  readonly each?: Measured;
  /** What one is like, as written: "6 oz", "large". */
  readonly size: string | null;
  readonly reasons: readonly LineReason[];
}

const open = (code: LineReason["code"], about: string): LineAmount => ({
  ...{ amount: null, size: null },
  reasons: [{ code, about }],
});

/** Amounts of one thing that differ by more than this are of two things. */
const CONTRADICTS = 2;
/** Less than this share of one piece is nothing anybody weighs out of it. */
const LEAST_OF_A_PIECE = 0.1;
/** In grams or millilitres; and in largest packs. More is a slip: "1.500 kg" for one and a half. */
const MOST = 100_000;
const MOST_PACKS = 200;
/** A tin's label says what is in it with its liquid: so many times what is left of it drained. */
const LABEL = { least: 1.1, most: 2.2 };

const factsOf = (food: NamedFood): MeasureFacts => ({ densities: food.densities ?? [], measures: food.measures ?? [] });

const grams = (measured: Measured, food: NamedFood, form: string | null): number | null => {
  const converted = toDimension(measured, "MASS", factsOf(food), form);
  return converted.ok ? converted.amount.high : null;
};

const dimensionOf = ({ unit }: Measured): string | null => standardUnit(unit)?.dimension ?? null;

const apart = (a: number, b: number): boolean => Math.max(a / b, b / a) > CONTRADICTS;

/** The first amount that differs too much from the line's own, as far as the food's facts allow to compare. */
function contradicting(line: ParsedLine, amount: Measured, food: NamedFood): AlternateAmount | null {
  for (const each of line.alternates) {
    const forms = [each.form ?? line.form, null];
    const weightOf = (measured: Measured): number =>
      forms.reduce<number | null>((known, form) => known ?? grams(measured, food, form), null) ?? 0;
    const [own, other] = [weightOf(amount), weightOf(each)];
    if (own > 0 && other > 0 && apart(own, other)) return each;
    if (toNumber(each.high) <= 0) return each;
  }
  return null;
}

const sizeNote = (line: ParsedLine): string | null => line.notes.find((note) => sizeOf(note) !== null) ?? null;

const shownSize = ({ pack }: ParsedLine): string | null => (pack === null ? null : formatRationalUnit(pack.size));

/** A count of containers: the food's own tins, or the whole content where a size is written. */
function inContainers(line: ParsedLine, container: string, amount: Measured, food: NamedFood): LineAmount {
  const { pack } = line;
  const own = ownMeasureOf(container, food.measures ?? []);
  const isDrained = own !== null && /drained|abgetropft|égoutt/iu.test(own.one);
  if (pack === null) {
    if (own === null || sizeNote(line) !== null) return open("NOT_SOLD_SO", container);
    return { amount: { ...amount, unit: ownMeasureRef(own.name) }, size: null, reasons: [] };
  }
  if (!isDrained || pack.drained === true) {
    if (tellsFood(container) && !isSoldIn(food, container)) return open("NOT_SOLD_SO", container);
    return { amount: pack.net, size: shownSize(line), reasons: [] };
  }
  const [label, left] = [grams(pack.size, food, null), own.grams];
  const ratio = label === null || left === null ? null : label / left;
  if (ratio === null || ratio < LABEL.least || ratio > LABEL.most) return open("NOT_SOLD_SO", shownSize(line) ?? "");
  return { amount: { ...amount, unit: ownMeasureRef(own.name) }, size: shownSize(line), reasons: [] };
}

/** A bare count: of the measure that its size names, else of pieces. */
function inPieces(line: ParsedLine, amount: Measured, food: NamedFood): LineAmount {
  const measures = food.measures ?? [];
  const note = sizeNote(line);
  const size = shownSize(line) ?? note;
  const sized = note === null ? null : sizedMeasureOf(sizeOf(note) ?? "", measures);
  if (sized !== null && line.pack === null) {
    return { amount: { ...amount, unit: ownMeasureRef(sized.name) }, size, reasons: [] };
  }
  const hasPiece =
    food.shoppedBy === "COUNT" || measures.some(({ name, pieces }) => name === "piece" || pieces !== null);
  if (!hasPiece) return open("UNIT_NOT_OF_FOOD", line.food);
  const [usual, written] = [
    pieceOf(food)?.grams ?? null,
    line.pack === null ? null : grams(line.pack.size, food, null),
  ];
  if (usual !== null && written !== null && apart(usual, written)) return open("AMOUNTS_CONTRADICT", size ?? "");
  return { amount, ...eachOf(line), size, reasons: [] };
}

/** "4 (6-ounce) potatoes" are four, and one weighs six ounces. */
const eachOf = ({ pack }: ParsedLine): Pick<LineAmount, "each"> =>
  pack === null || dimensionOf(pack.size) !== "MASS" ? {} : { each: pack.size };

function counted(line: ParsedLine, word: string, amount: Measured, food: NamedFood): LineAmount {
  const own = ownMeasureOf(word, food.measures ?? []);
  if (own === null) return open("UNIT_NOT_OF_FOOD", word);
  if (line.pack !== null) return { amount: line.pack.net, size: shownSize(line), reasons: [] };
  return { amount: { ...amount, unit: ownMeasureRef(own.name) }, size: shownSize(line) ?? sizeNote(line), reasons: [] };
}

/** So many are no longer counted out in a household; they may be grams. */
const LARGE_ONES = 20;

/** "2 gr. Karotten": large ones where the food comes in pieces, else grams. */
function grammesOrLarge(line: ParsedLine, food: NamedFood): LineAmount {
  const [asGrams, asPieces] = line.choices;
  if (asGrams === undefined || asPieces === undefined) return open("SIZE_OR_GRAMS", line.food);
  const comesInPieces = (food.measures ?? []).some(({ name }) => name === "piece") || food.shoppedBy === "COUNT";
  if (!comesInPieces) return { amount: asGrams, size: null, reasons: [] };
  if (toNumber(asGrams.high) >= LARGE_ONES) return open("SIZE_OR_GRAMS", line.food);
  return inPieces({ ...line, notes: ["groß", ...line.notes] }, asPieces, food);
}

const pieceOf = (food: NamedFood): OwnMeasure | null =>
  (food.measures ?? []).find(({ name }) => name === "piece") ?? null;

/** An amount that nobody cooks with: a sliver of one piece, or hundreds of packs. */
function implausible(amount: Measured, food: NamedFood, part: string | null): boolean {
  const dimension = dimensionOf(amount);
  if (dimension !== "MASS" && dimension !== "VOLUME") return false;
  const base = toNumber(amount.high) * (standardUnit(amount.unit)?.factor ?? 1);
  const piece = pieceOf(food)?.grams ?? 0;
  if (part === null && dimension === "MASS" && piece >= 30 && base < piece * LEAST_OF_A_PIECE) return true;
  const packs = (food.packs ?? []).flatMap(({ content }) =>
    dimensionOf(content) === dimension ? [toNumber(content.high) * (standardUnit(content.unit)?.factor ?? 1)] : [],
  );
  return base > Math.max(MOST, ...packs.map((pack) => pack * MOST_PACKS));
}

/** What a line's amount is of this food. A stated weight goes before a table; what contradicts itself is left open. */
export function lineAmount(line: ParsedLine, named: LineFood, food: NamedFood): LineAmount {
  const weighed = line.alternates.find((each) => dimensionOf(each) === "MASS") ?? null;
  const unclear = line.reasons.map(({ code }) => code);
  if (line.amount === null) {
    if (unclear.includes("SIZE_OR_GRAMS")) return grammesOrLarge(line, food);
    // The size of the cup does not matter where its weight is written.
    if (unclear.includes("AMBIGUOUS_UNIT") && weighed !== null)
      return { amount: plain(weighed), size: null, reasons: [] };
    return { amount: null, size: null, reasons: [] };
  }
  const amount = named.isWhole ? { ...line.amount, unit: "piece" } : line.amount;
  if (toNumber(amount.high) <= 0) return open("NOTHING", line.food);
  const word = named.counted ?? ownMeasureName(amount.unit);
  const found =
    word !== null && isContainer(line)
      ? inContainers(line, word, amount, food)
      : word !== null
        ? counted(line, word, amount, food)
        : amount.unit === "piece"
          ? named.part === null || line.pack !== null
            ? inPieces(line, amount, food)
            : { amount, size: sizeNote(line), reasons: [] }
          : { amount, size: sizeNote(line), reasons: [] };
  if (found.amount === null) return found;
  const other = contradicting(line, found.amount, food);
  if (other !== null) return open("AMOUNTS_CONTRADICT", formatRationalUnit(other));
  const stated =
    weighed !== null && dimensionOf(found.amount) !== "MASS" && named.part === null ? plain(weighed) : null;
  const taken = stated ?? found.amount;
  if (implausible(taken, food, named.part)) return open("IMPLAUSIBLE_AMOUNT", formatRationalUnit(taken));
  return { ...found, amount: taken };
}

const plain = ({ low, high, unit }: AlternateAmount): Measured => ({ low, high, unit });

/** Containers are the counting words a size may stand beside. */
const isContainer = (line: ParsedLine): boolean =>
  line.amount !== null && containers.has(ownMeasureName(line.amount.unit) ?? "");

const containers: ReadonlySet<string> = new Set(
  Object.values(countWords).flatMap((words) =>
    [...words.values()].filter(({ container }) => container).map(({ one }) => one),
  ),
);
