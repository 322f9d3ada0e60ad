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
  /** BCP 47 tag of the language to answer in where the address names none; null: English. */
  readonly locale: string | null;
}

export const refusal = (
  kind: ProblemKind,
  detail: string,
  more: Partial<Pick<Refusal, "problems" | "headers" | "more" | "locale">> = {},
): Refusal => ({ kind, detail, problems: [], headers: {}, more: {}, locale: null, ...more });

const wrong = (count: number, one: string, several: string): string =>
  count === 1 ? `One ${one} is wrong. Nothing was computed.` : `${count} ${several} are wrong. Nothing was computed.`;

export const badParameters = (problems: readonly Problem[]): Refusal =>
  refusal("bad-parameters", wrong(problems.length, "parameter", "parameters"), { problems });

export const notProcessable = (problems: readonly Problem[], locale: string | null = null): Refusal =>
  refusal("not-processable", wrong(problems.length, "part of the body", "parts of the body"), { problems, locale });

/** By its publisher, as a whole. */
export const withdrawn = (detail: string, problems: readonly Problem[], locale: string | null = null): Refusal =>
  refusal("withdrawn", detail, { problems, locale });

/** It was here, and was taken away for good. */
export const removed = (detail: string): Refusal => refusal("removed", detail);

export const notFound = (detail: string, problems: readonly Problem[] = []): Refusal =>
  refusal("not-found", detail, { problems });
