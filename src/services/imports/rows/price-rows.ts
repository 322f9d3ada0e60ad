import type { OwnMeasure } from "../../../domain/model/food.js";
import { priceColumns, priceRowReader, type PriceRow } from "../../../imports/prices/read-price-row.js";
import { readTable, type TableRow } from "../../../imports/tables/read-table.js";
import type { Deps } from "../../deps.js";
import { findFoodsOf } from "../../foods/find-foods-of.js";
import { namesFor } from "../../foods/names-for.js";
import { feedColumns } from "../feeds/feed-columns.js";
import type { RunningImport } from "../running-import.js";
import { pricedFoodFinder } from "./find-priced-food.js";

/**
 * Reads the rows of a price list, from the beginning each time it is asked.
 *
 * @param publisher whose own foods are named beside those that all share; null: nobody's
 */
export async function priceRows(
  deps: Deps,
  { bytes, settings, arrived }: RunningImport,
  publisher: string | null,
): Promise<() => AsyncGenerator<readonly TableRow<PriceRow>[]>> {
  const { names, lists } = await namesFor(deps, publisher === null ? null : { publisher, as: "SAVED" });
  const shared = await deps.data.foods.measures();
  const own =
    publisher === null ? new Map<string, readonly OwnMeasure[]>() : await ownMeasures(deps, publisher, lists[0]);
  const { locale, currency, region, source, delimiter } = settings;
  const read = priceRowReader({
    ...{ locale, measures: settings.measures, currency, region, source, seen: arrived },
    findFood: pricedFoodFinder(names, settings),
    slugsOnly: publisher !== null,
    measuresOf: (food) => own.get(food) ?? shared.get(food) ?? [],
  });
  return () =>
    readTable(bytes(), { columns: { ...priceColumns, columnNames: feedColumns(settings) }, delimiter }, read);
}

async function ownMeasures(
  { data }: Deps,
  publisher: string,
  named: readonly { readonly slug: string }[] = [],
): Promise<ReadonlyMap<string, readonly OwnMeasure[]>> {
  const foods = await findFoodsOf(
    data,
    publisher,
    named.map(({ slug }) => slug),
  );
  return new Map(foods.flatMap((food) => (food === null ? [] : [[food.slug, food.measures] as const])));
}
