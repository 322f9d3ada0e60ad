import type { Measured, MeasureSystem } from "../../domain/model/amount.js";
import type { Loose, OwnMeasure, Pack } from "../../domain/model/food.js";
import { nearestRegions, regionCode, regionInstead } from "../../domain/model/region-codes.js";
import { checkLoose } from "../../domain/plan/check/check-facts.js";
import { fixedCodeLists } from "../../domain/plan/check/code-lists-of.js";
import { failed, gatherProblems, ok, type Result } from "../../domain/problem.js";
import type { FoodMatch } from "../../domain/quantity/food-name.js";
import { parseAmount } from "../../domain/quantity/parse.js";
import { unknownCode } from "../documents/checks/check-codes.js";
import { documentLimits, nameSchema, slugSchema } from "../documents/schemas/scalar-schemas.js";
import { badCell } from "../tables/bad-cell.js";
import { decimalCell } from "../tables/decimal-cell.js";
import type { Cells, TableColumns } from "../tables/read-table.js";
import { spreadsheetDate } from "../tables/spreadsheet-date.js";

/** A pack of a food as a shop's price list names it. Natural key: food and pack. */
export interface PriceRow {
  /** Slug. */
  readonly food: string;
  readonly pack: Pack;
}

export interface PriceOptions {
  /** BCP 47 tag of the file; null: only numbers that can mean one thing are read. */
  readonly locale: string | null;
  readonly measures: MeasureSystem;
  /** Where a row does not say. */
  readonly currency: string | null;
  readonly region: string | null;
  /** ISO date the prices were seen, where a row does not say. */
  readonly seen: string;
  /** Whose list it is, as the source shown beside every price. */
  readonly source: string;
  /** Which food a cell means: by its slug, by any of its names, or by the shop's own number of the article. */
  readonly findFood: (written: string) => FoodMatch;
  /** Whether the name of a pack must be one that a document can have. */
  readonly slugsOnly?: boolean;
  /** Measures of a food's own ("tin"), by its slug, for contents counted in them. */
  readonly measuresOf: (food: string) => readonly OwnMeasure[];
}

export const priceColumns: Omit<TableColumns, "columnNames"> = {
  needed: ["food", "pack", "content", "price"],
  optional: ["name", "currency", "region", "seen", "step"],
};

/** Distinct contents remembered: a price list says "500 g" ten thousand times. */
const contentsMax = 5_000;

/** A reader for the rows of one file. What is priced `per kg`, or has a step, is sold loose and needs no pack. Every fault of a row is listed, each under the name of its column. */
export function priceRowReader(options: PriceOptions): (cells: Cells) => Result<PriceRow> {
  const contents = new Map<string, Result<Measured>>();
  const contentOf = (written: string, food: string, own: readonly OwnMeasure[]): Result<Measured> => {
    const key = own.length === 0 ? written : `${food}\n${written}`;
    const known = contents.get(key);
    if (known !== undefined) return known;
    const read = readContent(written, own, options);
    if (contents.size < contentsMax) contents.set(key, read);
    return read;
  };
  return (cells) => {
    const { problems, note } = gatherProblems();
    const food = note(readFood(cells.get("food"), options));
    const own = food === null ? [] : options.measuresOf(food);
    const isLoose = cells.get("step") !== "" || isRate(cells.get("content"));
    const pack = note(readPackName(cells.get("pack"), isLoose, options.slugsOnly === true));
    const content = food === null ? null : note(contentOf(cells.get("content"), food, own));
    const price = note(
      readPrice(cells.get("price"), cells.get("currency").toUpperCase() || options.currency, options.locale),
    );
    const region = note(readRegion(cells.get("region"), options.region));
    const seen = note(readSeen(cells.get("seen"), options.seen));
    const loose = isLoose ? note(readLoose(cells.get("step"), options)) : null;
    if (problems.length > 0 || food === null || pack === null || content === null || seen === null)
      return failed(problems);
    const source = { kind: "PUBLISHED", title: options.source, section: null } as const;
    const id = pack === "" ? looseId(region) : pack;
    const name = cells.get("name") || id;
    if (options.slugsOnly === true && !nameSchema.safeParse(name).success)
      return bad("name", `at most ${documentLimits.words} characters`, name);
    const sold: Pack = {
      ...{ id, name, content, price, region, seen, source },
      ...(loose === null ? {} : { loose }),
    };
    const faults = checkLoose(sold, [loose?.step ? "step" : "content"]);
    return faults.length > 0 ? failed(faults) : ok({ food, pack: sold });
  };
}

const lists = fixedCodeLists();

const bad = (column: string, expected: string, got: string): Result<never> => failed([badCell(column, expected, got)]);

function readFood(written: string, { findFood }: PriceOptions): Result<string> {
  const found = findFood(written);
  if (found.kind === "FOUND") return ok(found.slug);
  if (found.kind === "NONE") return failed([{ code: "UNKNOWN_FOOD", path: ["food"], food: written }]);
  const [last, ...others] = found.slugs.toReversed();
  return bad("food", `which of them is meant: ${others.toReversed().join(", ")} or ${last}`, written);
}

/** One price by weight for each place: a row of another replaces none. */
const looseId = (region: string | null): string => (region === null ? "loose" : `loose-${region.toLowerCase()}`);

function readPackName(written: string, isLoose: boolean, slugsOnly: boolean): Result<string> {
  if (written === "" && isLoose) return ok("");
  if (slugsOnly && !slugSchema.safeParse(written).success)
    return bad(
      "pack",
      "a short name of the pack in lower-case letters and digits, words joined by hyphens: bag-1kg",
      written,
    );
  const expected = "a short name of the pack, without spaces; empty where the content is a rate, such as per kg";
  return /^[^\s]{1,80}$/.test(written) ? ok(written) : bad("pack", expected, written);
}

/** `per kg`, `/100 g`, `je 500 g`, `le kg`: how much a price is for, and no pack. */
const rate = /^(?:\/|(?:per|a|an|je|pro|par|le|la|les|por|el|al|cada|za)\s)\s*(?=\S)/iu;

const isRate = (written: string): boolean => rate.test(written);

/** `per kg` is for one. */
const ratedAmount = (written: string): string => {
  const amount = written.replace(rate, "");
  return /^\p{L}/u.test(amount) ? `1 ${amount}` : amount;
};

function readLoose(step: string, { locale, measures }: PriceOptions): Result<Loose> {
  if (step === "") return ok({ step: null });
  const read = parseAmount(step, { locale, measures, own: [], path: ["step"] });
  return read.ok ? ok({ step: read.value }) : read;
}

function readContent(
  written: string,
  own: readonly OwnMeasure[],
  { locale, measures }: PriceOptions,
): Result<Measured> {
  const date = spreadsheetDate(written, locale);
  if (date !== null) return failed([{ code: "CELL_IS_A_DATE", path: ["content"], cell: written, offers: date.offers }]);
  const read = parseAmount(isRate(written) ? ratedAmount(written) : written, {
    locale,
    measures,
    own,
    path: ["content"],
  });
  if (!read.ok) return read;
  return read.value.low === "0" ? bad("content", "more than nothing", written) : read;
}

/** A price with the locale's decimal mark and nothing grouped, kept to the last digit; empty: the pack is sold, and nobody knows for how much. */
function readPrice(written: string, currency: string | null, locale: string | null): Result<Pack["price"]> {
  if (written === "") return ok(null);
  const date = spreadsheetDate(written, locale, false);
  if (date !== null) return failed([{ code: "CELL_IS_A_DATE", path: ["price"], cell: written, offers: date.offers }]);
  const amount = decimalCell(written, locale);
  if (amount === null || !/^\d{1,9}(?:\.\d{1,4})?$/.test(amount))
    return bad("price", "a plain decimal number with at most four places, without a sign", written);
  if (Number(amount) === 0)
    return bad("price", "more than nothing; leave the cell empty where nobody knows the price", written);
  if (currency === null || currency === "") {
    return bad("currency", "an ISO 4217 code of three letters, in the row or declared by the feed", "");
  }
  const unknown = unknownCode({ list: "currency", written: currency, path: ["currency"] }, lists);
  if (unknown !== null) return failed([unknown]);
  return ok({ amount, currency });
}

function readRegion(written: string, otherwise: string | null): Result<string | null> {
  if (written === "") return ok(otherwise);
  // A shop that has always written UK means GB, and its nightly list goes on.
  const [meant, ...others] = nearestRegions(written);
  const code = regionCode(written) ?? (others.length === 0 ? meant : undefined);
  return code === undefined ? bad("region", regionInstead(written), written) : ok(code);
}

function readSeen(written: string, otherwise: string): Result<string> {
  if (written === "") return ok(otherwise);
  const [year, month, day] = written.split("-").map(Number);
  const isDate =
    /^\d{4}-\d{2}-\d{2}$/.test(written) &&
    new Date(Date.UTC(year ?? 0, (month ?? 0) - 1, day)).toISOString().startsWith(written);
  return isDate ? ok(written) : bad("seen", "an ISO date, such as 2026-03-01", written);
}
