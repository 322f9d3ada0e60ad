import { createReadStream, openAsBlob } from "node:fs";
import { basename } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { z } from "zod";
import { slugSchema } from "../../../imports/documents/schemas/scalar-schemas.js";
import { largestUpload } from "../../../services/imports/files/receive-file.js";
import { remote, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { countNoun } from "../count-noun.js";
import { ImportRunDocument, QuarantinedRowsDocument, type ImportRunQuery } from "../generated/operations.js";
import { importArchive } from "../import-archive.js";
import { CommandFailed, exitCodes, usage, type Outcome } from "../outcome.js";
import type { Progress } from "../progress.js";
import type { RemoteService } from "../remote-service.js";

interface ImportOptions extends ServiceOptions {
  readonly dryRun?: boolean;
  readonly force?: boolean;
}

type Run = NonNullable<ImportRunQuery["importRun"]>;

const startedSchema = z.object({ id: z.string() });
const askEveryMs = 500;

export const addImport: AddCommand = (program, run) => {
  withService(program.command("import"))
    .description("upload a file to a feed and wait until it is imported, or import the archive of an export")
    .argument("<feed>", "PUBLISHER/FEED, or FEED for a feed of the operator; or ARCHIVE.zip alone")
    .argument("[file]", "the file to upload, unchanged")
    .option("--dry-run", "report what the import would do, and load nothing")
    .option("--force", "load even if the import exceeds a limit of its feed")
    .action((feed: string, file: string | undefined, options: ImportOptions) =>
      run("import", options, (progress) => {
        if (file !== undefined) return importFile(feed, file, options, progress);
        if (feed.endsWith(".zip")) return importArchive(feed, options, progress);
        throw usage("Name the file after the feed. An archive of an export is named alone, and ends in .zip.");
      }),
    );
};

async function importFile(feed: string, path: string, options: ImportOptions, progress: Progress): Promise<Outcome> {
  const address = feedAddress(feed);
  const { file, lines } = await openFile(path);
  const service = remote(options);
  const yes = { ...(options.dryRun ? { dryRun: "yes" } : {}), ...(options.force ? { force: "yes" } : {}) };
  const question = new URLSearchParams({ name: basename(path), ...yes });
  progress.at(`Sending ${basename(path)}, bytes`, 0, file.size);
  const started = startedSchema.parse(await service.upload(`v1/${address}/files?${question}`, file));
  const ended = await followed(service, started.id, lines, progress).finally(() => progress.end());
  return outcome(service, ended);
}

function feedAddress(feed: string): string {
  const parts = feed.split("/");
  if (parts.length > 2 || !parts.every((part) => slugSchema.safeParse(part).success)) {
    throw usage("A feed is named PUBLISHER/FEED, or FEED where it is the operator's.");
  }
  const [first = "", second] = parts;
  return second === undefined ? `feeds/${first}` : `publishers/${first}/feeds/${second}`;
}

/** The file and its line ends: of a table about as many as it has rows. */
async function openFile(path: string): Promise<{ readonly file: Blob; readonly lines: number }> {
  try {
    const file = await openAsBlob(path);
    if (file.size > largestUpload)
      throw usage(`${path}: it has ${file.size} bytes, and ${largestUpload} are the most.`);
    let lines = 0;
    for await (const bytes of createReadStream(path)) for (const byte of bytes as Buffer) if (byte === 10) lines += 1;
    return { file, lines };
  } catch (error) {
    if (error instanceof CommandFailed || !(error instanceof Error && "code" in error)) throw error;
    throw new CommandFailed(exitCodes.usage, "CANNOT_READ", `${path} cannot be read: ${String(error.code)}.`);
  }
}

/** Asks until the import has ended. It goes on at the service also where nobody asks. */
async function followed(service: RemoteService, id: string, lines: number, progress: Progress): Promise<Run> {
  for (;;) {
    const { importRun } = await service.ask(ImportRunDocument, { run: id });
    if (importRun === null) throw new CommandFailed(exitCodes.problems, "UNKNOWN_IMPORT", `The import ${id} is gone.`);
    const { state, feed, counts } = importRun;
    if (state !== "QUEUED" && state !== "RUNNING") return importRun;
    const isTable = feed.kind !== "DOCUMENTS" && feed.kind !== "RECIPES";
    if (state === "QUEUED") progress.at(`Waiting for a worker to take up import ${id}`, 0, null);
    else progress.at("Reading, rows", counts.read, isTable ? Math.max(counts.read, lines) : null);
    await wait(askEveryMs);
  }
}

async function outcome(service: RemoteService, { id, kind, state, counts, problems }: Run): Promise<Outcome> {
  const rows = counts.quarantined === 0 ? [] : await asideOf(service, id);
  const { read, created, changed, unchanged, quarantined, repeated } = counts;
  const would = kind === "DRY_RUN" ? " (a dry run: nothing was loaded)" : "";
  const isDone = state === "DONE";
  return {
    exit: isDone ? exitCodes.ok : exitCodes.problems,
    problems: isDone ? [] : problems,
    result: { run: id, kind, state, counts: { read, created, changed, unchanged, quarantined, repeated } },
    said: [
      `Import ${id} is ${state.toLowerCase()}${would}: ${countNoun(read, "row")} read, ${created} new, ${changed} changed,` +
        ` ${unchanged} as before, ${repeated} repeated, ${quarantined} put aside.`,
    ],
    notes: rows,
  };
}

/** The first of what was put aside. It waits at the service to be mended. */
async function asideOf(service: RemoteService, run: string): Promise<readonly string[]> {
  const { quarantinedRows } = await service.ask(QuarantinedRowsDocument, { run });
  return (quarantinedRows?.edges ?? []).flatMap(({ node: { line, problems } }) =>
    problems.map(({ message }) => `put aside, line ${line}: ${message}`),
  );
}
