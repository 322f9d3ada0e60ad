import { z } from "zod";
import type { Problem, Result } from "../domain/problem.js";
import type { Deps, RevisionRef } from "../services/deps.js";
import { householdProblems, type Asked, type ScaledForReader } from "../services/answers/scale-for-reader.js";
import { found, refused, type Found, type Question } from "./endpoint.js";
import { householdCost } from "../services/answers/household-cost.js";
import { pointsBeyond, pointsOfPlan } from "./endpoint-cost.js";
import { householdParameters, inAddress, readHouseholdQuery } from "./household-query.js";
import { inPath, inQuery, wholeNumber, type Parameter, type Query } from "./parameter.js";
import { missingPlan } from "../services/plans/missing-plan.js";
import { problemText } from "../exports/sentences/problem-text.js";
import { badParameters, notFound, withdrawn, type Refusal } from "./refusal.js";
import { languagesOf } from "../exports/words/languages-of.js";

export const planInPath: readonly Parameter[] = [
  inPath("publisher", "Slug of the publisher."),
  inPath("slug", "Slug of the plan."),
];

export const revisionParameter = inQuery(
  "revision",
  "The revision to compute. Default: the newest that is not withdrawn. A withdrawn one is still found by its number.",
  z.number().int().min(1),
);

const servingsParameter = inQuery(
  "servings",
  "The number of people who eat. Default: as many as `eaters` says, or else as the plan is written for.",
  z.number().int().min(1).max(1_000_000),
);

/** What every address of a computed plan takes. */
export const planParameters: readonly Parameter[] = [
  ...planInPath,
  servingsParameter,
  revisionParameter,
  ...householdParameters,
];

/** What so many plans, computed for the household of an address, cost beyond any answer. */
export const pointsOfPlans = (plans: number, query: Query): number =>
  pointsBeyond(plans, pointsOfPlan + householdCost(readHouseholdQuery(query).household));

/**
 * Asks a service about the plan of the address; what is wrong with any parameter is listed in one answer.
 *
 * @param wrong what is wrong with parameters beside these
 */
export async function aboutPlan<T>(
  question: Question,
  ask: (deps: Deps, ref: RevisionRef, asked: Asked) => Promise<Result<T> | null>,
  wrong: readonly Problem[] = [],
): Promise<Found<T>> {
  const { deps, query } = question;
  const problems: Problem[] = [...wrong];
  const servings = wholeNumber(query, "servings", problems);
  const ref = { ...planName(question), revision: wholeNumber(query, "revision", problems) };
  const read = readHouseholdQuery(query);
  problems.push(...read.problems);
  if (problems.length > 0) return refused(await allWrong(deps, ref, { servings, household: read.household }, problems));
  const answer = await answered(deps, ref, await ask(deps, ref, { servings, household: read.household }));
  return answer.ok ? { ...answer, headers: { ...answer.headers, ...languageHeader(answer.value) } } : answer;
}

/** RFC 9110, 8.5, of an answer that is written for somebody: its words, then the writer's texts. */
function languageHeader(value: unknown): Readonly<Record<string, string>> {
  const { reader, scaled } = Object(value) as Partial<Pick<ScaledForReader, "reader" | "scaled">>;
  if (reader === undefined || scaled === undefined) return {};
  return { "content-language": languagesOf(reader, scaled.bundle).join(", ") };
}

/** The problems met so far with those that only show beside the plan. */
export async function allWrong(
  deps: Deps,
  ref: RevisionRef,
  asked: Asked,
  problems: readonly Problem[],
): Promise<Refusal> {
  const more = await householdProblems(deps, ref, asked);
  return badParameters([...problems, ...more.map(inAddress)]);
}

export function planName({ path }: Pick<Question, "path">): { readonly publisher: string; readonly slug: string } {
  return { publisher: path["publisher"] ?? "", slug: path["slug"] ?? "" };
}

export async function answered<T>(deps: Deps, ref: RevisionRef, result: Result<T> | null): Promise<Found<T>> {
  if (result === null) return refused(await noSuchPlan(deps, ref));
  return result.ok ? found(result.value) : refused(badParameters(result.problems.map(inAddress)));
}

/** Of a plan that was not found: that it was withdrawn, or that there is none. */
export async function noSuchPlan(deps: Deps, ref: RevisionRef): Promise<Refusal> {
  const problem = await missingPlan(deps, ref);
  if (problem.code === "WITHDRAWN") return withdrawn(problemText(problem), [problem], problem.locale);
  return notFound("There is no such plan.", [problem]);
}
