import { failed, ok, type Result } from "../../domain/problem.js";
import { badCell } from "../tables/bad-cell.js";
import { decimalCell } from "../tables/decimal-cell.js";
import { spreadsheetDate } from "../tables/spreadsheet-date.js";

/**
 * A number of the open table as a plain decimal (the original leaves the zero before the mark out: `.5`); null: the cell is empty,
 * so it was not measured.
 */
export function catalogueNumber(column: string, written: string, locale: string | null): Result<string | null> {
  if (written === "") return ok(null);
  const date = spreadsheetDate(written, locale, false);
  if (date !== null) return failed([{ code: "CELL_IS_A_DATE", path: [column], cell: written, offers: date.offers }]);
  const read = decimalCell(/^[.,]\d/.test(written) ? `0${written}` : written, locale);
  return read === null
    ? failed([badCell(column, "a plain decimal number without grouped digits or a sign", written)])
    : ok(read);
}

/** The five digits that name a food. A spreadsheet program drops the zeros in front. */
export const numberOfFood = (written: string): Result<string> =>
  /^\d{5}$/.test(written) ? ok(written) : failed([badCell("ndb_no", "five digits, with the zeros in front", written)]);
