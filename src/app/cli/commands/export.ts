import { createWriteStream } from "node:fs";
import { access, rename, rm, stat } from "node:fs/promises";
import { pipeline } from "node:stream/promises";
import { slugSchema } from "../../../imports/documents/schemas/scalar-schemas.js";
import { BadArchive, withArchive } from "../../../services/archive/open-archive.js";
import { remote, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { countNoun } from "../count-noun.js";
import { CommandFailed, exitCodes, usage, type Outcome } from "../outcome.js";
import { cannotWrite } from "../pulled-files.js";
import type { Progress } from "../progress.js";

interface ExportOptions extends ServiceOptions {
  readonly to?: string;
  readonly overwrite?: boolean;
}

export const addExport: AddCommand = (program, run) => {
  withService(program.command("export"))
    .description("write everything of a publisher to a zip file: drafts, every revision, its own foods and packs")
    .argument("<publisher>", "short name of the publisher")
    .option("--to <file>", "file to write (default: PUBLISHER.zip in this folder)")
    .option("--overwrite", "replace the file if it exists")
    .action((publisher: string, options: ExportOptions) =>
      run("export", options, (progress) => exportTo(publisher, options, progress)),
    );
};

async function exportTo(publisher: string, options: ExportOptions, progress: Progress): Promise<Outcome> {
  if (!slugSchema.safeParse(publisher).success) throw usage(`"${publisher}" is not the short name of a publisher.`);
  const path = options.to ?? `${publisher}.zip`;
  if (options.overwrite !== true && (await exists(path))) {
    throw new CommandFailed(
      exitCodes.conflict,
      "FILE_EXISTS",
      `${path} exists. Choose another with --to, or use --overwrite.`,
    );
  }
  // Only a whole archive gets the name.
  const part = `${path}.part`;
  try {
    const pieces = remote(options).download(`v1/publishers/${publisher}/export`);
    await pipeline(counted(await pieces, progress), createWriteStream(part));
    progress.end();
    const { size: bytes } = await stat(part);
    const { files, leftOut } = await withArchive(part, bytes, ({ names, leftOut: parts }) =>
      Promise.resolve({ files: names.size, leftOut: parts }),
    );
    await rename(part, path);
    return {
      exit: exitCodes.ok,
      result: { path, bytes, files, leftOut },
      said: [`${path}: ${countNoun(files, "file")}, ${bytes.toLocaleString("en-GB")} bytes`],
      notes: [
        ...(leftOut.includes("webhooks") ? ["Webhooks are left out: the token has no scope ADMIN."] : []),
        ...(leftOut.includes("feeds") ? ["Feeds are left out: the token has no scope IMPORT."] : []),
      ],
    };
  } catch (error) {
    progress.end();
    await rm(part, { force: true });
    if (error instanceof BadArchive) {
      throw new CommandFailed(
        exitCodes.unreachable,
        "CUT_OFF",
        "The export did not arrive whole. Nothing was written; try again.",
      );
    }
    throw cannotWrite(path, error);
  }
}

async function* counted(pieces: AsyncIterable<Uint8Array>, progress: Progress): AsyncGenerator<Uint8Array> {
  let size = 0;
  for await (const piece of pieces) {
    size += piece.length;
    progress.at("Receiving, bytes", size, null);
    yield piece;
  }
}

const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );
