// @ts-nocheck
import type { Problem } from "../domain/problem.js";
import type { ProblemKind } from "./problem-kinds.js";

/** Why there is no answer. */
export interface Refusal {
  readonly kind: ProblemKind;
  /** What is wrong with this request, in a sentence or two. */
  readonly detail: string;
  readonly problems: readonly Problem[];
  readonly headers: Readonly<Record<string, string>>;
  /** More members of the problem document. */
  readonly more: Readonly<Record<string, readonly string[]>>;
}

export const refusal = (
  kind: ProblemKind,
  detail: string,
  more: Partial<Pick<Refusal, "problems" | "headers" | "more">> = {},
): Refusal => ({ kind, detail, problems: [], headers: {}, more: {}, ...more });

const many = (count: number, what: string): string => (count === 1 ? `One ${what} is` : `${count} ${what}s are`);

export const badParameters = (problems: readonly Problem[]): Refusal =>
  refusal("bad-parameters", `${many(problems.length, "parameter")} wrong. Nothing was computed.`, { problems });

export const notProcessable = (problems: readonly Problem[]): Refusal =>
  refusal("not-processable", `${many(problems.length, "part")} of the body wrong. Nothing was computed.`, { problems });

export const notFound = (detail: string, problems: readonly Problem[] = []): Refusal =>
  refusal("not-found", detail, { problems });
