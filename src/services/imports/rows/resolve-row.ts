import { failed, ok, type Result } from "../../../domain/problem.js";
import { tableHead } from "../../../imports/tables/table-head.js";
import type { Caller } from "../../access/actor.js";
import type { Data, Deps } from "../../deps.js";
import { isTable } from "../feeds/feed-settings.js";
import { findImport, type FoundImport } from "../find-imports.js";
import { requirePublishing } from "../../access/publish-right.js";
import { queued } from "../start-import.js";
import { authorName, write } from "../../write.js";

interface ResolveInput {
  /** Id of the import. */
  readonly run: string;
  readonly line: number;
  readonly part?: number | null | undefined;
  /** The row as it should be, of a table without its header; null or left out: it is passed over for good. */
  readonly text?: string | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

type ResolvedRow = {
  readonly run: string;
  readonly line: number;
  readonly part: number;
  /** The import of the mended row alone; null: it was passed over. */
  readonly replay: string | null;
};

/** The longest text that is taken for a row, in characters: that of a document. */
const longestRow = 2_000_000;

/**
 * Settles something that an import put aside: mended, it is imported again as a small file of its own; without a text it is passed
 * over. What is still wrong with it is put aside again, in that import.
 * @throws NotAllowed
 */
export async function resolveRow(deps: Deps, caller: Caller, input: ResolveInput): Promise<Result<ResolvedRow>> {
  const { run: id, line, idempotencyKey } = input;
  const part = input.part ?? 0;
  const text = input.text ?? null;
  const found = await findImport(deps, caller.actor, id);
  if (found === null) return failed([{ code: "UNKNOWN_RUN", path: ["input", "run"], run: id }]);
  const { run, feed } = found;
  return write<ResolvedRow>(
    deps,
    {
      ...{ caller, scope: "IMPORT", publisher: feed.publisher, action: "SETTLE_ROW" },
      ...{ idempotencyKey, input: { run: run.id, line, part, text } },
    },
    async ({ data, clock }) => {
      await requirePublishing(data, caller.actor, feed, clock());
      const row = await data.importRuns.quarantinedRow(run.id, line, part);
      if (row === null) return failed([{ code: "UNKNOWN_ROW", path: ["input", "line"], line, part }]);
      if (row.settledAt !== null) return failed([{ code: "ROW_SETTLED", path: ["input", "line"], line }]);
      if (text !== null && text.length > longestRow) {
        const size = text.length;
        return failed([{ code: "TOO_LARGE", path: ["input", "text"], what: "characters", size, limit: longestRow }]);
      }
      if (text?.trim() === "") {
        return failed([
          { code: "BAD_SHAPE", path: ["input", "text"], expected: "the mended row, or no text", got: "nothing" },
        ]);
      }
      const now = clock();
      await data.importRuns.settle(run.id, line, part, authorName(caller.actor), now);
      const settled = { run: run.id, line, part };
      const subject = { kind: "IMPORT", name: run.id, before: null, after: null } as const;
      if (text === null) return ok({ value: { ...settled, replay: null }, subject });
      const whole = await asFile(data, found, line, text);
      const file = await data.importFiles.putMended(feed.id, `line ${String(line)}, mended`, bytesOf(whole), now);
      // A row of its own is all of its file: no share of it says anything.
      const order = { kind: "LOAD", file: file.id, force: true, undoes: null } as const;
      const replay = await queued(data, caller.actor, feed, order, now);
      if (!replay.ok) return replay;
      return ok({
        value: { ...settled, replay: replay.value.value.run },
        subject: [subject, replay.value.subject].flat(),
      });
    },
  );
}

/**
 * A row of a table needs the header of its file; where the header was at fault, the text is a file already. The empty line at its end keeps
 * it apart from a file that says the same and for which nobody answered: files of the same bytes are one.
 */
async function asFile(data: Data, { run, feed }: FoundImport, line: number, text: string): Promise<string> {
  if (!isTable(feed.kind) || run.file === null) return text;
  const head = await tableHead(data.importFiles.read(run.file));
  return line <= head.lines ? text : `${head.text}${text}\n\n`;
}

async function* bytesOf(text: string): AsyncGenerator<Uint8Array> {
  yield Buffer.from(text);
  await Promise.resolve();
}
