import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import {
  componentDocumentOf,
  foodDocumentOf,
  planDocumentOf,
  publisherDocumentOf,
} from "../../../src/imports/documents/plain-document.js";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../../src/imports/documents/resolve-documents.js";
import { component, food, plan, publisherFacts } from "./arbitrary-model.js";

const readBack = (
  document: unknown,
  write: (value: unknown) => string,
  known: Parameters<typeof resolveDocuments>[1],
) => {
  const read = readDocuments(write(document), "round.yaml");
  expect(read.problems).toEqual([]);
  const resolved = resolveDocuments(read.documents, known);
  expect(resolved.problems).toEqual([]);
  return resolved;
};

const yaml = (value: unknown): string => stringify(value);
const json = (value: unknown): string => JSON.stringify(value);
const nothing = { foods: [], components: [] };

describe.each([
  ["YAML", yaml],
  ["JSON", json],
])("a value written as %s", (_, write) => {
  it("reads back as the same food", () => {
    fc.assert(
      fc.property(food, (value) => {
        expect(readBack(foodDocumentOf(value), write, nothing).foods.map((each) => each.value)).toEqual([value]);
      }),
    );
  });

  it("reads back as the same component", () => {
    const known = fc.array(food, { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(
        known.chain((foods) => fc.tuple(fc.constant(distinctFoods(foods)), component(distinctFoods(foods)))),
        ([foods, value]) => {
          const resolved = readBack(componentDocumentOf(value), write, { foods, components: [] });
          expect(resolved.components.map((each) => each.value)).toEqual([value]);
        },
      ),
    );
  });

  it("reads back as the same word of a publisher of itself", () => {
    fc.assert(
      fc.property(publisherFacts, (facts) => {
        const [read] = readBack(publisherDocumentOf("north-field", facts), write, nothing).publishers;
        expect(read?.value).toMatchObject({ slug: "north-field", ...facts });
      }),
    );
  });

  it("reads back as the same plan", () => {
    const world = fc
      .array(food, { minLength: 1, maxLength: 2 })
      .map(distinctFoods)
      .chain((foods) => fc.tuple(fc.constant(foods), component(foods)))
      .chain(([foods, made]) => fc.tuple(fc.constant(foods), fc.constant(made), plan(foods, [made])));
    fc.assert(
      fc.property(world, ([foods, made, value]) => {
        const resolved = readBack(planDocumentOf(value), write, { foods, components: [made] });
        expect(resolved.plans.map((each) => each.value)).toEqual([value]);
      }),
    );
  });
});

const distinctFoods = <T extends { readonly slug: string }>(foods: readonly T[]): T[] => [
  ...new Map(foods.map((each) => [each.slug, each])).values(),
];
