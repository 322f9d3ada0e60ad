import { ok, type Problem } from "../../domain/problem.js";
import type { ImportChange, RunChunk } from "../../persistence/imports/import-data.js";
import type { CodeLists } from "../../domain/model/code-lists.js";
import type { RowWarning } from "../../domain/model/import-report.js";
import { checkCodes } from "../../imports/documents/checks/check-codes.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import type { Deps, DraftText } from "../deps.js";
import { placedInFile, type DraftRow, type DraftRows, type NewText } from "./draft-row.js";
import { listsOfToday } from "./load-references.js";
import { classifyDrafts, type Verdict } from "./classify-drafts.js";
import {
  countsOf,
  noCounts,
  RunLost,
  withinLimits,
  type Loaded,
  type RunningImport,
} from "../imports/running-import.js";
import { yieldToOthers } from "../time-slices.js";
import { storeDraft } from "./store-draft.js";

/** Rows that change nothing, written down together. */
const chunkSize = 200;

/**
 * Loads texts as drafts of the feed's publisher: what each would do is found out first and held against the feed's limits;
 * then every text is saved, and published where the feed says so, in a transaction of its own. A run that is taken up again
 * goes on behind the last one. A dry run, and one that a limit stops, only writes down what it found.
 */
export async function loadDrafts(deps: Deps, job: RunningImport, publisher: string, rows: DraftRows): Promise<Loaded> {
  const { run, worker, settings } = job;
  const verdicts = await classifyDrafts(
    deps,
    publisher,
    { publishes: settings.publish, answeredFor: job.mended },
    rows,
  );
  const count = (...kinds: readonly Verdict["kind"][]) => verdicts.filter(({ kind }) => kinds.includes(kind)).length;
  const changed = count("CHANGED", "PUBLISH");
  const unchanged = count("UNCHANGED");
  const counts = {
    ...{ read: verdicts.length, created: count("CREATED"), changed, unchanged },
    ...{ quarantined: count("QUARANTINED"), repeated: count("REPEATED") },
  };
  // Limits were kept before anything was loaded; what was loaded since would count as unchanged.
  const checked = run.lastLine > 0 ? ok(counts) : withinLimits(job, counts, changed + unchanged);
  const loads = checked.ok && run.kind === "LOAD";

  let chunk = emptyChunk();
  const flush = async (): Promise<void> => {
    if (chunk.read === 0) return;
    if (!(await deps.data.importRuns.advance(run.id, worker, chunk))) throw new RunLost(run.id);
    chunk = emptyChunk();
  };
  const lists = await listsOfToday(deps, []);
  let step = 0;
  for await (const row of rows()) {
    step += 1;
    await yieldToOthers(deps);
    const verdict = verdicts[step - 1];
    if (verdict === undefined) throw new Error("a file has more rows than before");
    if (step <= run.lastLine) continue;
    const { state } = row;
    const next = after(chunk, step, verdict.kind === "QUARANTINED" ? [] : warningsOf(row, lists));
    if (state.kind === "TEXT" && "publishes" in verdict) {
      if (loads) {
        const stored = await storeDraft(deps, job, publisher, state, verdict, next);
        chunk = stored.ok ? emptyChunk() : refusing(next, row, state, stored.problems);
      } else if (checked.ok)
        chunk = showing(next, state.draft, state.slug, verdict.kind, await draftNow(deps, publisher, row), state.text);
      else chunk = next;
    } else chunk = counting(next, row, verdict, checked.ok);
    if (chunk.read >= chunkSize) await flush();
  }
  await flush();
  if (!checked.ok) return checked;
  const ended = await deps.data.importRuns.byId(run.id);
  if (ended === null) throw new RunLost(run.id);
  return ok(countsOf(ended));
}

const emptyChunk = (): RunChunk => ({ ...noCounts, lastLine: 0, quarantine: [], changes: [] });

const after = (chunk: RunChunk, step: number, warnings: readonly RowWarning[]): RunChunk => ({
  ...chunk,
  read: chunk.read + 1,
  lastLine: step,
  warnings: [...(chunk.warnings ?? []), ...warnings],
});

/** A feed's codes that no list has: kept as they are, told of, and read at their strictest. */
const warningsOf = ({ line, part, state }: DraftRow, lists: CodeLists): readonly RowWarning[] =>
  state.kind !== "TEXT"
    ? []
    : checkCodes([state.read], lists).map((problem) => ({
        line,
        part,
        problem: placedInFile(placedProblem(problem), state.firstLine),
      }));

const quarantining = (
  chunk: RunChunk,
  row: DraftRow,
  problems: readonly Problem[],
  offer: string | null,
): RunChunk => ({
  ...chunk,
  quarantined: chunk.quarantined + 1,
  quarantine: [...chunk.quarantine, { line: row.line, part: row.part, raw: row.raw, problems, offer }],
});

const refusing = (
  chunk: RunChunk,
  row: DraftRow,
  { firstLine, offer }: NewText,
  problems: readonly Problem[],
): RunChunk =>
  quarantining(
    chunk,
    row,
    problems.map((problem) => placedInFile(problem, firstLine)),
    offer,
  );

function counting(chunk: RunChunk, row: DraftRow, verdict: Verdict, isLoaded: boolean): RunChunk {
  if (verdict.kind === "QUARANTINED") return quarantining(chunk, row, verdict.problems, verdict.offer);
  if (!isLoaded) return chunk;
  return verdict.kind === "REPEATED"
    ? { ...chunk, repeated: chunk.repeated + 1 }
    : { ...chunk, unchanged: chunk.unchanged + 1 };
}

function showing(
  chunk: RunChunk,
  draft: string,
  slug: string,
  kind: "CREATED" | "CHANGED" | "PUBLISH",
  before: DraftText | null,
  text: string,
): RunChunk {
  const change: ImportChange = {
    key: `${draft} ${slug}`,
    before: before === null ? null : { text: before.text, updatedBy: before.updatedBy },
    after: { text },
  };
  const created = kind === "CREATED" ? 1 : 0;
  return {
    ...chunk,
    created: chunk.created + created,
    changed: chunk.changed + 1 - created,
    changes: [...chunk.changes, change],
  };
}

async function draftNow({ data }: Deps, publisher: string, { state }: DraftRow): Promise<DraftText | null> {
  if (state.kind !== "TEXT") return null;
  const [found] = await data.drafts.texts([{ kind: state.draft, publisher, slug: state.slug }]);
  return found ?? null;
}
