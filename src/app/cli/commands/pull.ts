import { join } from "node:path";
import { remote, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { countNoun } from "../count-noun.js";
import { CommandFailed, exitCodes, wrongAnswer, type Outcome } from "../outcome.js";
import { planName } from "../plan-name.js";
import { fetchPicture, findPictures, type PictureToPull } from "../pull-images.js";
import { makeFolder, stateBelow, writeBelow } from "../pulled-files.js";
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
  const { to: folder } = options;
  const own = publisher === null ? [] : [{ text: publisher, file: `${plan.publisher}.publisher.yaml` }];
  const texts = [...drafts.map((draft) => ({ text: draft.text, file: fileName(draft) })), ...own];
  if (new Set(texts.map(({ file }) => file)).size < texts.length) throw wrongAnswer("the same draft twice");
  const pictures = await findPictures(
    service,
    plan.publisher,
    texts.map(({ text }) => text),
    folder,
  );
  checkNames(texts, pictures.images);
  const states = await Promise.all(texts.map(({ file, text }) => stateBelow(folder, file, saysThis(text))));
  const blocked = [
    ...texts.filter((_, at) => states[at] === "OTHER").map(({ file }) => file),
    ...pictures.images.filter(({ state }) => state === "OTHER").map(({ image }) => image.file),
  ];
  if (blocked.length > 0 && options.overwrite !== true) {
    const why = "says something else. Pull to another folder with --to, or use --overwrite.";
    throw new CommandFailed(
      exitCodes.conflict,
      "FILE_DIFFERS",
      blocked.map((file) => `${join(folder, file)} ${why}`),
    );
  }
  await makeFolder(folder);
  for (const [at, { file, text }] of texts.entries()) {
    const before = states[at] ?? "NONE";
    if (before !== "SAME") await writeBelow(folder, file, before, text);
  }
  const fetched = pictures.images.filter(({ state }) => state !== "SAME");
  for (const { image, state } of fetched)
    await writeBelow(folder, image.file, state, await fetchPicture(service, plan.publisher, image));
  const files = drafts.map((draft, at) => ({ ...draft, path: join(folder, fileName(draft)), state: states[at] }));
  const described = own.map(({ file }) => ({ path: join(folder, file), isSame: states.at(-1) === "SAME" }));
  return {
    exit: exitCodes.ok,
    result: {
      files: files.map(({ path, kind, slug, version, state }) => ({
        ...{ path, kind, slug, version },
        written: state !== "SAME",
      })),
      publisher: described.map(({ path, isSame }) => ({ path, written: !isSame }))[0] ?? null,
      ...(pictures.images.length > 0 && {
        images: pictures.images.map(({ image, state }) => ({
          ...{ path: join(folder, image.file), file: image.file, hash: image.hash },
          written: state !== "SAME",
        })),
      }),
    },
    said: [
      ...files.map(({ path, version, state }) => `${path}: ${state === "SAME" ? "the same" : `version ${version}`}`),
      ...described.map(({ path, isSame }) => `${path}: ${isSame ? "the same" : "as it is now"}`),
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

const saysThis = (text: string) => (bytes: Buffer) => bytes.equals(Buffer.from(text));

/** A picture may not take the place of a document, or of the folder of another picture; where the disk knows no capitals neither. @throws CommandFailed */
function checkNames(texts: readonly { readonly file: string }[], pictures: readonly PictureToPull[]): void {
  const folded = (file: string): string => file.normalize("NFC").toLowerCase();
  const files = pictures.map(({ image }) => image.file);
  const folders = files.flatMap((file) =>
    file
      .split("/")
      .slice(0, -1)
      .map((_, at, parts) => parts.slice(0, at + 1).join("/")),
  );
  const taken = new Set([...texts.map(({ file }) => folded(file)), ...folders.map(folded)]);
  const twice = [
    ...files.filter((file) => taken.has(folded(file))),
    ...folders.filter((file) => texts.some((text) => folded(text.file) === folded(file))),
  ];
  if (twice.length === 0) return;
  const why = "has the name of a document or a folder of this pull. Hand the picture in under another name.";
  throw new CommandFailed(
    exitCodes.conflict,
    "NAME_TAKEN",
    [...new Set(twice)].map((file) => `The picture ${file} ${why}`),
  );
}
