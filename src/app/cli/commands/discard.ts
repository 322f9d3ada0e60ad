import { asking, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { DiscardDraftDocument } from "../generated/operations.js";
import { CommandFailed, exitCodes, usage, type Outcome } from "../outcome.js";
import { planName } from "../plan-name.js";
import { readVersions } from "../read-versions.js";

const kinds = {
  food: "FOOD",
  packs: "PACKS",
  component: "COMPONENT",
  plan: "PLAN",
  translation: "TRANSLATION",
} as const;
type Kind = keyof typeof kinds;

export const addDiscard: AddCommand = (program, run) => {
  withService(program.command("discard"))
    .description("delete a draft, such as one of the publisher's own foods; published plans stay as they are")
    .argument("<kind>", "food, packs, component, plan or translation")
    .argument("<publisher/slug>", "the draft")
    .action((kind: string, name: string, options: ServiceOptions) =>
      run("discard", options, () => discard(kind, name, options)),
    );
};

async function discard(word: string, name: string, options: ServiceOptions): Promise<Outcome> {
  if (!Object.hasOwn(kinds, word))
    throw usage(`The kind must be food, packs, component, plan or translation, not "${word}".`);
  const kind = kinds[word as Kind];
  const { publisher, slug } = planName(name);
  const { discarded, problems } = await asking(options, async (service) => {
    const found = (await readVersions(service, publisher)).find((each) => each.kind === kind && each.slug === slug);
    if (found === undefined) {
      const message = `There is no draft of a ${word} "${name}". Check both slugs.`;
      throw new CommandFailed(exitCodes.problems, "UNKNOWN_DRAFT", message);
    }
    const input = { publisher, kind, slug, expectedVersion: found.version };
    return (await service.ask(DiscardDraftDocument, { input })).discardDraft;
  });
  if (discarded === null) return { exit: exitCodes.problems, problems, result: null };
  const namedBy = discarded.namedBy.map((each) => ({ kind: each.kind, slug: each.slug }));
  return {
    exit: exitCodes.ok,
    result: { publisher, kind, slug, version: discarded.version, namedBy },
    said: [`Discarded the ${word} ${name}, version ${discarded.version}. What was published keeps it.`],
    notes: namedBy.map((each) => `The draft of the ${each.kind.toLowerCase()} "${each.slug}" still names it.`),
  };
}
