import type { z } from "zod";
import type { FoodDensity, OwnMeasure } from "../../domain/model/food.js";
import type { KeepingRule } from "../../domain/model/keeping.js";
import { failed, ok } from "../../domain/problem.js";
import type { Path, Result } from "../../domain/problem.js";
import { toBase } from "../../domain/quantity/convert.js";
import { combine, every, mapResult } from "./combine-results.js";
import type { ReadingContext } from "./reading-context.js";
import type { densitiesSchema, keepingListSchema, ownMeasuresSchema } from "./schemas/shared-schemas.js";

/** The facts that foods and components share: keeping, own measures, densities. `path` leads to the list. */
export const readKeeping = (
  rules: z.output<typeof keepingListSchema>,
  reading: ReadingContext,
  path: Path,
): Result<readonly KeepingRule[]> =>
  every(
    rules.map(({ place, days, container, condition, purpose, region, source }, index) =>
      mapResult(reading.source(source, [...path, index, "source"]), (read) => ({
        place,
        days,
        container: container,
        condition: condition,
        ...(purpose === undefined ? {} : { purpose }),
        ...(region === undefined ? {} : { region }),
        source: read,
      })),
    ),
  );

export const readOwnMeasures = (
  measures: z.output<typeof ownMeasuresSchema>,
  reading: ReadingContext,
  path: Path,
): Result<readonly OwnMeasure[]> =>
  every(
    measures.map((measure, index) =>
      mapResult(reading.source(measure.source, [...path, index, "source"]), (source) => {
        const one = measure.one ?? measure.name;
        return {
          name: measure.name,
          one,
          many: measure.many ?? one,
          grams: measure.grams,
          millilitres: measure.millilitres,
          pieces: measure.pieces,
          source,
        };
      }),
    ),
  );

export const readDensities = (
  densities: z.output<typeof densitiesSchema>,
  reading: ReadingContext,
  path: Path,
): Result<readonly FoodDensity[]> =>
  every(
    densities.map((density, index) => {
      const here = [...path, index];
      const parts = combine({
        gramsPerMl: gramsPerMl(density, reading, here),
        source: reading.source(density.source, [...here, "source"]),
      });
      return mapResult(parts, (read) => ({ form: density.form, ...read }));
    }),
  );

function gramsPerMl(
  density: z.output<typeof densitiesSchema>[number],
  reading: ReadingContext,
  path: Path,
): Result<number> {
  const direct = density["grams-per-ml"];
  if (direct !== undefined) return ok(direct);
  const [grams, per] = [density.grams ?? 0, density.per ?? ""];
  const here = [...path, "per"];
  const measured = reading.amount(per, [], here);
  if (!measured.ok) return measured;
  const base = toBase(measured.value, { densities: [], measures: [] }, null);
  if (!base.ok || base.amount.dimension !== "VOLUME" || base.amount.low === 0)
    return failed([{ code: "BAD_SHAPE", path: here, expected: "a volume such as 1 us-cup", got: per }]);
  return ok(grams / base.amount.low);
}
