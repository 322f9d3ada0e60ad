import { csvScanner } from "../../src/imports/tables/csv-scanner.js";
import { priceColumns, priceRowReader, type PriceRow } from "../../src/imports/prices/read-price-row.js";
import { tableReader, type TableRow } from "../../src/imports/tables/read-table.js";

/** Reads a price list at once, in pieces as a file comes. */
export function readPrices(text: string): readonly TableRow<PriceRow>[] {
  const reader = priceRowReader({
    ...{ locale: "en", measures: "METRIC", currency: "XTS", region: null, seen: "2026-03-01", source: "Shop" },
    findFood: (food) => (food === "egg" ? { kind: "FOUND", slug: food } : { kind: "NONE" }),
    measuresOf: () => [],
  });
  const rows = tableReader({ ...priceColumns, columnNames: new Map() }, 0, reader);
  const scanner = csvScanner(",");
  const piece = 16_000;
  const found: TableRow<PriceRow>[] = [];
  for (let at = 0; at < text.length; at += piece) found.push(...rows(scanner.push(text.slice(at, at + piece))));
  return [...found, ...rows(scanner.end())];
}
