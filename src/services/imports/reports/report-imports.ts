import type { Deps } from "../../deps.js";
import { gatherMorning } from "./morning-report.js";
import { morningMessage } from "./morning-message.js";

const hours = 24;

/**
 * Writes into the log what became of every import of the last day and what waits to be mended, and tells the operator's address, where
 * there is one. @throws MorningNotTold, so that the job is tried again
 */
export async function reportImports(
  deps: Deps,
): Promise<{ readonly imports: number; readonly toMend: number; readonly told: boolean }> {
  const { log, operator } = deps;
  const { report } = await gatherMorning(deps, undefined, hours);
  for (const { publisher, slug, revision, differences } of (report.plans ?? []).filter(({ lessSafe }) => lessSafe)) {
    log.warn({ publisher, slug, revision, differences: differences.length }, "a published plan became less safe");
  }
  for (const { token, publisher, feeds, until } of report.importOnlyTokens ?? []) {
    log.warn(
      { token, publisher, feeds: feeds.length, until },
      "an access token publishes with IMPORT alone, until then",
    );
  }
  for (const { scheduled, publisher, slug, kind, problems } of report.keptBack ?? []) {
    const codes = problems.map(({ code }) => code);
    log.warn({ publisher, slug, scheduled, kind, problems: codes }, "what was scheduled for a plan was kept back");
  }
  for (const { publisher, feed, run, kind, state, counts, problems, toMend } of report.imports) {
    const say = state === "DONE" && toMend === 0 ? log.info.bind(log) : log.warn.bind(log);
    const facts = { publisher, feed, run, kind, state, ...counts, toMend };
    say({ ...facts, problems: problems.map(({ code }) => code) }, "what became of an import");
  }
  if (operator !== undefined) {
    const sent = await operator.send(morningMessage(operator, report));
    const status = sent.answered ? sent.status : null;
    if (status === null || status < 200 || status > 299) {
      throw new MorningNotTold(sent.answered ? `the answer was ${sent.status}` : sent.error);
    }
  }
  return {
    imports: report.imports.length,
    toMend: report.imports.reduce((sum, { toMend }) => sum + toMend, 0),
    told: operator !== undefined,
  };
}

/** The operator's address did not take the report. */
export class MorningNotTold extends Error {
  override readonly name = "MorningNotTold";

  constructor(why: string) {
    super(`the operator's address did not take the report of the imports: ${why}`);
  }
}
