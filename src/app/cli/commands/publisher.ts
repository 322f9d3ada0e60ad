import { asking, withLocal, type AddCommand, type ServiceOptions } from "../command.js";
import { CreatePublisherDocument } from "../generated/operations.js";
import { exitCodes, type Outcome } from "../outcome.js";

interface PublisherOptions extends ServiceOptions {
  readonly name: string;
}

export const addPublisher: AddCommand = (program, run) => {
  const publisher = program.command("publisher").description("manage publishers (operator only)");
  withLocal(publisher.command("create"))
    .description("create a publisher")
    .argument("<slug>", "short name for addresses; it can never be changed")
    .requiredOption("--name <name>", "name shown to readers")
    .action((slug: string, options: PublisherOptions) => run("publisher create", options, () => create(slug, options)));
};

async function create(slug: string, options: PublisherOptions): Promise<Outcome> {
  const input = { slug, name: options.name };
  const { createPublisher } = await asking(options, (service) => service.ask(CreatePublisherDocument, { input }));
  const { publisher, problems } = createPublisher;
  if (publisher === null) return { exit: exitCodes.problems, problems, result: null };
  return {
    exit: exitCodes.ok,
    result: { publisher: { ...publisher } },
    said: [`Made the publisher ${publisher.slug}.`],
  };
}
