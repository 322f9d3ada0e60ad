import type { DocumentsRead } from "../../imports/documents/read-documents.js";
import { ViewerDocument } from "./generated/operations.js";
import { CommandFailed, exitCodes, usage } from "./outcome.js";
import type { Service } from "./service.js";

/** Whose documents these are: as told, as their plans say, or whose the token is. @throws CommandFailed */
export async function choosePublisher(
  { documents }: DocumentsRead,
  told: string | undefined,
  service: Service,
): Promise<string> {
  if (told !== undefined) return told;
  const named = [
    ...new Set(
      documents.flatMap(({ document }) =>
        document.kind === "plan" ? document.publisher : document.kind === "publisher" ? document.slug : [],
      ),
    ),
  ];
  const [only] = named;
  if (named.length > 1) {
    throw new CommandFailed(
      exitCodes.problems,
      "SEVERAL_PUBLISHERS",
      `These plans belong to ${named.join(" and ")}. Pass the files of one publisher at a time.`,
    );
  }
  if (only !== undefined) return only;
  const { viewer } = await service.ask(ViewerDocument, {});
  if (viewer?.publisher) return viewer.publisher.slug;
  throw usage("The publisher of these documents is unknown. Name it with --publisher.");
}
