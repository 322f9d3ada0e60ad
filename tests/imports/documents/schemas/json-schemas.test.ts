import path from "node:path";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../../../seeds/load-seeds.js";
import { allowedKeys } from "../../../../src/imports/documents/allowed-keys.js";
import {
  componentDocumentOf,
  foodDocumentOf,
  planDocumentOf,
  publisherDocumentOf,
} from "../../../../src/imports/documents/plain-document.js";
import { documentKinds, jsonSchemas } from "../../../../src/imports/documents/document-kinds.js";
import type { DocumentKind } from "../../../../src/imports/documents/document-kinds.js";

const seeds = await readSeeds(path.resolve(import.meta.dirname, "../../../../seeds"));

const written: Readonly<Record<DocumentKind, readonly unknown[]>> = {
  food: seeds.foods.map(foodDocumentOf),
  packs: seeds.foods.flatMap((food) => {
    const { slug, packs = [] } = foodDocumentOf(food);
    return (packs as readonly unknown[]).length === 0 ? [] : [{ kind: "packs", slug, packs }];
  }),
  component: seeds.components.map(componentDocumentOf),
  plan: seeds.plans.map((plan) => planDocumentOf({ ...plan, region: "XA" })),
  translation: [],
  publisher: [
    publisherDocumentOf("allotment-society", {
      ...{
        region: "US-WA",
        currency: "XTS",
        languages: ["en-US", "de"],
        description: "News of the allotments.",
        website: "https://allotments.example",
      },
    }),
  ],
};

type Visit = (path: readonly (string | number)[], keys: readonly string[]) => void;

function visitMaps(value: unknown, visit: Visit, at: readonly (string | number)[] = []): void {
  if (Array.isArray(value)) value.forEach((each, index) => visitMaps(each, visit, [...at, index]));
  else if (typeof value === "object" && value !== null) {
    visit(at, Object.keys(value));
    for (const [key, each] of Object.entries(value)) visitMaps(each, visit, [...at, key]);
  }
}

describe("the schemas for editors", () => {
  it("are one for each kind of document, plain JSON", () => {
    expect(Object.keys(jsonSchemas())).toEqual(documentKinds);
    expect(JSON.parse(JSON.stringify(jsonSchemas()))).toEqual(jsonSchemas());
  });

  it("refuse keys they do not know, at the top and inside", () => {
    const plan = JSON.stringify(jsonSchemas().plan);
    expect(jsonSchemas().plan).toMatchObject({ additionalProperties: false, title: "Prepwright plan" });
    expect(plan).not.toContain('"additionalProperties":true');
  });

  it("offer the words of a choice", () => {
    expect(JSON.stringify(jsonSchemas().food)).toContain('"does not contain"');
    expect(JSON.stringify(jsonSchemas().component)).toContain('"evening-before"');
  });

  it.each(documentKinds)("know every key that the demo's documents of kind %s use", (kind) => {
    const open = new Set(["names", "appliances"]);
    for (const document of written[kind]) {
      visitMaps(document, (at, keys) => {
        if (!open.has(String(at.at(-1)))) expect(allowedKeys(kind, at)).toEqual(expect.arrayContaining([...keys]));
      });
    }
  });
});
