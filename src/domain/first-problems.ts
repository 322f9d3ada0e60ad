import type { Problem } from "./problem.js";

/** The most problems of one answer. */
export const mostProblems = 100;

/** As many as an answer has room for; where there are more, the last says how many. */
export function firstProblems(problems: readonly Problem[]): readonly Problem[] {
  const listed = problems.filter(({ code }) => code !== "MORE_PROBLEMS");
  const unlisted = problems.reduce((sum, each) => sum + (each.code === "MORE_PROBLEMS" ? each.count : 0), 0);
  if (unlisted === 0 && listed.length <= mostProblems) return problems;
  const kept = listed.slice(0, mostProblems - 1);
  return [...kept, { code: "MORE_PROBLEMS", path: [], count: listed.length - kept.length + unlisted }];
}

/**
 * The same where a problem is made only if it is listed: a text can have as many as it has words, and each looks for the
 * nearest words that are known.
 */
export function madeProblems<Made>(
  makers: readonly (() => Made)[],
  more: (problem: Problem) => Made,
  most = mostProblems,
): readonly Made[] {
  if (makers.length <= most) return makers.map((make) => make());
  const kept = makers.slice(0, Math.max(0, most - 1)).map((make) => make());
  return [...kept, more({ code: "MORE_PROBLEMS", path: [], count: makers.length - kept.length })];
}
