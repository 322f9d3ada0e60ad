import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { remote, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { countNoun } from "../count-noun.js";
import { CommandFailed, exitCodes, type Outcome } from "../outcome.js";
import { planName } from "../plan-name.js";
import { findPictures, pullPicture } from "../pull-images.js";
import { readDrafts, type DraftText } from "../read-drafts.js";
import type { RemoteService } from "../remote-service.js";

interface PullOptions extends ServiceOptions {
  readonly to: string;
  readonly overwrite?: boolean;
}

export const addPull: AddCommand = (program, run) => {
  withService(program.command("pull"))
    .description(
      "write the drafts of a plan, its components, their translations and its publisher's own foods to files, exactly as they were saved, with their pictures",
    )
    .argument("<publisher/slug>", "the plan")
    .option("--to <folder>", "folder to write to", ".")
    .option("--overwrite", "overwrite files even if their content differs")
    .action((name: string, options: PullOptions) =>
      run("pull", options, () => {
        const service = remote(options);
        return pull(service, name, options).finally(() => service.close());
      }),
    );
};

async function pull(service: RemoteService, name: string, options: PullOptions): Promise<Outcome> {
  const plan = planName(name);
  const { drafts, missing, publisher } = await readDrafts(service, plan);
  if (drafts.length === 0) {
    throw new CommandFailed(
      exitCodes.problems,
      "UNKNOWN_DRAFT",
      `There is no draft of a plan "${name}". Check both slugs.`,
    );
  }
  const files = drafts.map((draft) => ({ ...draft, path: join(options.to, fileName(draft)) }));
  const own =
    publisher === null ? [] : [{ text: publisher, path: join(options.to, `${plan.publisher}.publisher.yaml`) }];
  const all = [...files, ...own];
  const states = await Promise.all(all.map(({ path, text }) => stateOf(path, text)));
  await mkdir(options.to, { recursive: true });
  const texts = all.map(({ text }) => text);
  const pictures = await findPictures(service, plan.publisher, texts, options.to);
  const blocked = [
    ...all.filter((_, at) => states[at] === "OTHER"),
    ...pictures.images.filter(({ state }) => state === "OTHER"),
  ];
  if (blocked.length > 0 && options.overwrite !== true) {
    throw new CommandFailed(
      exitCodes.conflict,
      "FILE_DIFFERS",
      blocked.map(({ path }) => `${path} says something else. Pull to another folder with --to, or use --overwrite.`),
    );
  }
  for (const [at, { path, text }] of all.entries()) if (states[at] !== "SAME") await writeFile(path, text);
  const fetched = pictures.images.filter(({ state }) => state !== "SAME");
  for (const { image } of fetched) await pullPicture(service, plan.publisher, options.to, image);
  return {
    exit: exitCodes.ok,
    result: {
      files: files.map(({ path, kind, slug, version }, at) => ({
        ...{ path, kind, slug, version },
        written: states[at] !== "SAME",
      })),
      publisher: own.map(({ path }) => ({ path, written: states.at(-1) !== "SAME" }))[0] ?? null,
      ...(pictures.images.length > 0 && {
        images: pictures.images.map(({ path, image, state }) => ({
          ...{ path, file: image.file, hash: image.hash },
          written: state !== "SAME",
        })),
      }),
    },
    said: [
      ...files.map(({ path, version }, at) => `${path}: ${states[at] === "SAME" ? "the same" : `version ${version}`}`),
      ...own.map(({ path }) => `${path}: ${states.at(-1) === "SAME" ? "the same" : "as it is now"}`),
      ...(pictures.images.length === 0
        ? []
        : [`${countNoun(fetched.length, "picture")} fetched, ${pictures.images.length - fetched.length} the same`]),
    ],
    notes: [
      ...missing.map((slug) => `The plan draws on the component "${slug}", of which there is no draft.`),
      ...pictures.missing.map((file) => `No picture was handed in as ${file} yet.`),
    ],
  };
}

const fileName = ({ kind, slug, format }: DraftText): string => `${slug}.${kind.toLowerCase()}.${format.toLowerCase()}`;

async function stateOf(path: string, text: string): Promise<"NONE" | "SAME" | "OTHER"> {
  try {
    return (await readFile(path, "utf8")) === text ? "SAME" : "OTHER";
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return "NONE";
    throw error;
  }
}
