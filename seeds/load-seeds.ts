import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { parse } from "yaml";
import { z } from "zod";
import type { Component } from "../src/domain/model/component.js";
import type { Food } from "../src/domain/model/food.js";
import type { Plan, PlanBundle } from "../src/domain/model/plan.js";
import { bundleOf } from "../src/domain/plan/bundle-of.js";
import { readDocuments } from "../src/imports/documents/read-documents.js";
import type { DocumentProblem } from "../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../src/imports/documents/resolve-documents.js";
import type { DocumentsResolved } from "../src/imports/documents/resolve-documents.js";

export interface Seeds {
  readonly publisher: { readonly slug: string; readonly name: string };
  readonly foods: readonly Food[];
  readonly components: readonly Component[];
  readonly plans: readonly Plan[];
  /** One for each plan, in the same order. */
  readonly bundles: readonly PlanBundle[];
  readonly problems: readonly DocumentProblem[];
  /** Where everything stands, for problems that are found later. */
  readonly resolved: DocumentsResolved;
}

const publisherSchema = z.strictObject({ slug: z.string(), name: z.string() });

/**
 * Reads the demo data below `directory` (publisher.yaml, foods, components, plans) through the same checks as a
 * writer's own documents. Same files, same answer: nothing depends on a clock or on the order of the disk.
 */
export async function readSeeds(directory: string): Promise<Seeds> {
  const publisher = publisherSchema.parse(parse(await readFile(path.join(directory, "publisher.yaml"), "utf8")));
  const folders = await Promise.all(["foods", "components", "plans"].map((name) => textsIn(directory, name)));
  const read = folders.flat().map(({ name, text }) => readDocuments(text, name));
  const resolved = resolveDocuments(
    read.flatMap(({ documents }) => documents),
    { foods: [], components: [] },
  );
  const foods = resolved.foods.map(({ value }) => value);
  const components = resolved.components.map(({ value }) => value);
  const plans = resolved.plans.map(({ value }) => value);
  return {
    publisher,
    foods,
    components,
    plans,
    bundles: plans.map((plan) => bundleOf(plan, components, foods)),
    problems: [...read.flatMap(({ problems }) => problems), ...resolved.problems],
    resolved,
  };
}

async function textsIn(directory: string, folder: string) {
  const names = (await readdir(path.join(directory, folder))).filter((name) => name.endsWith(".yaml")).sort();
  return Promise.all(
    names.map(async (name) => ({
      name: `${folder}/${name}`,
      text: await readFile(path.join(directory, folder, name), "utf8"),
    })),
  );
}
