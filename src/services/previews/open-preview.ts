import { secretHash } from "../access/token-text.js";
import type { Deps, OwnedSlug, PreviewLink } from "../deps.js";
import { previewDraft, type DraftPreview } from "./preview-draft.js";
import { revokedAtOf } from "../access/find-token.js";

/** What the address of a preview leads to. */
export type OpenedPreview =
  | { readonly state: "OPEN"; readonly link: PreviewLink; readonly preview: DraftPreview; readonly deps: Deps }
  /** Nobody made such a link: it may be misspelt. */
  | { readonly state: "UNKNOWN" }
  | { readonly state: "EXPIRED" | "REVOKED"; readonly at: Date }
  | { readonly state: "NO_DRAFT" };

/** Looks a link up by the secret in its address, and at the newest version of its draft. The database is asked each time, and the primary. */
export async function openPreview(given: Deps, { publisher, slug }: OwnedSlug, secret: string): Promise<OpenedPreview> {
  const deps = given.ownData === undefined ? given : { ...given, data: given.ownData };
  const link = await deps.data.previewLinks.bySecret(publisher, secretHash(secret));
  if (link?.slug !== slug) return { state: "UNKNOWN" };
  // A link shows nothing that its maker may not see any more.
  const revokedAt = link.revokedAt ?? (await revokedAtOf(deps, link.createdBy));
  if (revokedAt !== null) return { state: "REVOKED", at: revokedAt };
  if (link.expiresAt <= deps.clock()) return { state: "EXPIRED", at: link.expiresAt };
  const preview = await previewDraft(deps, { publisher, slug });
  return preview === null ? { state: "NO_DRAFT" } : { state: "OPEN", link, preview, deps };
}
