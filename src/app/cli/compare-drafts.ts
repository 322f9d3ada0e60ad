import type { ReadDocument } from "../../imports/documents/read-documents.js";
import { hashOfText } from "../../persistence/drafts/draft-document.js";
import type { ExpectedDraftInput, ViewerQuery } from "./generated/operations.js";
import type { ShownProblem } from "./outcome.js";
import type { DraftVersion } from "./read-versions.js";

/** Documents beside the drafts that are on the service. */
interface Compared {
  /** Of the changed ones whose drafts are there already. */
  readonly expected: readonly ExpectedDraftInput[];
  /** Documents that a save would change anything of; a food that all publishers share always, since it is no draft. */
  readonly changed: readonly ReadDocument[];
  /** Changed ones that somebody else saved last. */
  readonly conflicts: readonly ShownProblem[];
}

/**
 * Who has no state of their own cannot know what others did since; but the service knows who saved a draft last. What
 * another token saved is not overwritten unasked.
 */
export function compareDrafts(
  documents: readonly ReadDocument[],
  drafts: readonly DraftVersion[],
  viewer: ViewerQuery["viewer"],
): Compared {
  const me = viewer === null ? null : viewer.publisher === null ? "operator" : viewer.id;
  const known = new Map(drafts.map((draft) => [`${draft.kind} ${draft.slug}`, draft]));
  const paired = documents.map((read) => {
    const { kind, slug } = read.document;
    return { read, draft: known.get(`${kind.toUpperCase()} ${slug}`) ?? null };
  });
  const changed = paired.filter(({ read, draft }) => draft?.document.hash !== hashOfText(read.text));
  return {
    expected: changed.flatMap(({ draft }) =>
      draft === null ? [] : [{ kind: draft.kind, slug: draft.slug, version: draft.version }],
    ),
    changed: changed.map(({ read }) => read),
    conflicts: changed.flatMap(({ read, draft }) =>
      draft === null || draft.updatedBy === me ? [] : [conflict(read, draft)],
    ),
  };
}

function conflict(
  { file, place }: ReadDocument,
  { kind, slug, version, updatedAt, updatedBy }: DraftVersion,
): ShownProblem {
  const { line, column } = place(["slug"], "VALUE");
  const by = updatedBy === null ? "somebody" : updatedBy === "operator" ? "the operator" : `"${updatedBy}"`;
  return {
    code: "SAVED_BY_ANOTHER",
    message:
      `The draft of the ${kind.toLowerCase()} "${slug}" was saved last by ${by} at ${updatedAt} (version ${version}).` +
      ` Look at it with pull, take over what you want, and publish with --overwrite.`,
    path: ["slug"],
    file,
    line,
    column,
  };
}
