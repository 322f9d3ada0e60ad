import { slugSchema } from "../../../imports/documents/schemas/scalar-schemas.js";
import { asking, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { RemoveImageDocument } from "../generated/operations.js";
import { exitCodes, usage, type Outcome } from "../outcome.js";

export const addImage: AddCommand = (program, run) => {
  withService(program.command("remove-image"))
    .description("remove a picture that was published by mistake, for good; plans are shown without it within a day")
    .argument("<publisher>", "whose picture it is")
    .argument("<hash>", "the 64 letters and digits in its address")
    .action((publisher: string, hash: string, options: ServiceOptions) =>
      run("remove-image", options, () => remove(publisher, hash, options)),
    );
};

async function remove(publisher: string, hash: string, options: ServiceOptions): Promise<Outcome> {
  if (!slugSchema.safeParse(publisher).success) throw usage("The publisher is named by its slug.");
  if (!/^[0-9a-f]{64}$/.test(hash)) throw usage("A picture is named by the 64 letters and digits in its address.");
  const input = { publisher, hash };
  const { removeImage } = await asking(options, (service) => service.ask(RemoveImageDocument, { input }));
  const { removed, problems } = removeImage;
  if (removed === null) return { exit: exitCodes.problems, problems, result: null };
  return {
    exit: exitCodes.ok,
    result: { publisher, hash },
    said: [`Removed the picture ${hash}. Plans are shown without it; caches keep it for a day at most.`],
  };
}
