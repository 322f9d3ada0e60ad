import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { parse } from "yaml";
import { z } from "zod";
import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { Plan, PlanBundle } from "../../domain/model/plan.js";
import type { Translation } from "../../domain/model/translation.js";
import { bundleOf } from "../../domain/plan/compile/plan-bundle.js";
import { withTranslations } from "../../domain/plan/translate/texts-of.js";
import { checkBundle } from "../../domain/plan/check/check-bundle.js";
import { locateProblem } from "../../imports/documents/yaml/locate-problem.js";
import { readDocuments } from "../../imports/documents/read-documents.js";
import type { DocumentProblem } from "../../imports/documents/read-documents.js";
import { resolveDocuments } from "../../imports/documents/resolve-documents.js";

export interface Seeds {
  readonly publisher: { readonly slug: string; readonly name: string };
  readonly foods: readonly Food[];
  readonly components: readonly Component[];
  readonly plans: readonly Plan[];
  readonly translations: readonly Translation[];
  /** One for each plan, in the same order. */
  readonly bundles: readonly PlanBundle[];
  readonly problems: readonly DocumentProblem[];
}

const publisherSchema = z.strictObject({ slug: z.string(), name: z.string() });

/**
 * Reads the demo data below `directory` (publisher.yaml, foods, components, plans, translations) through the same checks as a
 * writer's own documents. Same files, same answer: nothing depends on a clock or on the order of the disk.
 */
export async function readSeeds(directory: string): Promise<Seeds> {
  const publisher = publisherSchema.parse(parse(await readFile(path.join(directory, "publisher.yaml"), "utf8")));
  const folders = await Promise.all(
    ["foods", "components", "plans", "translations"].map((name) => textsIn(directory, name)),
  );
  const read = folders.flat().map(({ name, text }) => readDocuments(text, name));
  const resolved = resolveDocuments(
    read.flatMap(({ documents }) => documents),
    { foods: [], components: [] },
  );
  const foods = resolved.foods.map(({ value }) => value);
  const components = resolved.components.map(({ value }) => value);
  const translations = resolved.translations.map(({ value }) => value);
  const checked = resolved.plans.map(({ value, read: plan }) => {
    const bundle = withTranslations(bundleOf(value, components, foods), translations);
    return { bundle, problems: checkBundle(bundle).map((problem) => locateProblem(problem, resolved, plan)) };
  });
  return {
    publisher,
    foods,
    components,
    plans: resolved.plans.map(({ value }) => value),
    translations,
    bundles: checked.map(({ bundle }) => bundle),
    problems: [...read, resolved, ...checked].flatMap(({ problems }) => problems),
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
