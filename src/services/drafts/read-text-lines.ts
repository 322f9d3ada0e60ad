import type { MeasureSystem } from "../../domain/model/amount.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { measuresOfLocale } from "../../domain/quantity/locale-measures.js";
import { explainTexts, type LineExplained } from "../../imports/documents/lines/explain-lines.js";
import { longestTextLine } from "../../imports/documents/schemas/line-schema.js";
import { localeSchema } from "../../imports/documents/schemas/scalar-schemas.js";
import { mayUse, type Actor } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { seenBy } from "../foods/names-for.js";
import { gatherComponents } from "../plans/gather-components.js";
import { runInSlices } from "../time-slices.js";
import { foodsForLines } from "./line-foods.js";
import { lineComponents } from "./line-components.js";

export type { LineExplained };

/** The most lines that are read at once. */
export const mostTextLines = 200;

interface TextLinesToRead {
  readonly texts: readonly string[];
  /** BCP 47 tag of the writing. */
  readonly locale: string;
  /** null or left out: those of the locale's country. */
  readonly measures?: MeasureSystem | null | undefined;
  /** Slug: its own foods go first, as published. With the scope READ_DRAFTS: its own foods and component drafts, as saved. */
  readonly publisher?: string | null | undefined;
}

/** How lines are read, each structured or with what is open about it. */
export async function readTextLines(
  deps: Deps,
  actor: Actor,
  { texts, locale, publisher = null, ...given }: TextLinesToRead,
): Promise<Result<readonly LineExplained[]>> {
  const drafting = publisher !== null && mayUse(actor, "READ_DRAFTS", publisher) ? publisher : null;
  const wrong = [...sizeProblems(texts), ...localeProblems(locale)];
  if (wrong.length > 0) return failed(wrong);
  const { named } = await foodsForLines(deps, texts, seenBy(actor, publisher));
  const slugs = drafting === null ? [] : await lineComponents(deps, drafting, texts);
  const drafts = drafting === null ? [] : await gatherComponents(deps.data, drafting, slugs);
  const measures = given.measures ?? measuresOfLocale(locale);
  const region = /-([A-Z]{2})$/.exec(locale)?.[1] ?? null;
  const things = { foods: named, components: drafts.map(({ value }) => value) };
  return ok(await runInSlices(deps, (work) => explainTexts(texts, { locale, measures, region }, things, work)));
}

function sizeProblems(texts: readonly string[]): readonly Problem[] {
  const tooLarge = (path: Path, what: string, size: number, limit: number): readonly Problem[] =>
    size > limit ? [{ code: "TOO_LARGE", path, what, size, limit }] : [];
  const many = tooLarge(["texts"], "lines", texts.length, mostTextLines);
  if (many.length > 0) return many;
  return texts.flatMap((text, at) => tooLarge(["texts", at], "characters", text.length, longestTextLine));
}

function localeProblems(locale: string): readonly Problem[] {
  if (localeSchema.safeParse(locale).success) return [];
  const got = locale.slice(0, 40);
  return [{ code: "BAD_SHAPE", path: ["locale"], expected: "a language tag such as en, en-GB or de", got }];
}
