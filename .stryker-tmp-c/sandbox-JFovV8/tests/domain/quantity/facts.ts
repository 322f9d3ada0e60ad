// @ts-nocheck
import type { FoodDensity, OwnMeasure } from "../../../src/domain/model/food.js";
import type { Source } from "../../../src/domain/model/source.js";
import type { MeasureFacts } from "../../../src/domain/quantity/convert.js";

export const table: Source = { kind: "PUBLISHED", title: "a table", section: null };
export const writer: Source = { kind: "WRITER", title: "the writer", section: null };

export const density = (gramsPerMl: number, form: string | null = null, source: Source = table): FoodDensity => ({
  form,
  gramsPerMl,
  source,
});

export const measure = (name: string, facts: Partial<OwnMeasure>): OwnMeasure => ({
  name,
  one: name,
  many: `${name}s`,
  grams: null,
  millilitres: null,
  pieces: null,
  source: table,
  ...facts,
});

export const facts = (densities: readonly FoodDensity[], measures: readonly OwnMeasure[] = []): MeasureFacts => ({
  densities,
  measures,
});

export const noFacts: MeasureFacts = facts([]);
