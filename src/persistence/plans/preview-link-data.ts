import type { Page, PageRequest } from "../sql/page.js";
import type { Author } from "../access/author.js";

/** Shows the draft of a plan to whoever has its address, without the secret in that. */
export interface PreviewLink {
  readonly id: string;
  /** Slug. */
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
  readonly createdAt: Date;
  readonly createdBy: Author;
  readonly expiresAt: Date;
  readonly revokedAt: Date | null;
}

interface NewPreviewLink extends Omit<PreviewLink, "id" | "revokedAt"> {
  /** SHA-256 of the secret, hex. */
  readonly secretHash: string;
}

export interface PreviewLinkData {
  /** Returns its id. */
  create(link: NewPreviewLink): Promise<string>;
  find(id: string): Promise<PreviewLink | null>;
  bySecret(publisher: string, secretHash: string): Promise<PreviewLink | null>;
  /** Those that still show something at an instant. */
  countOpen(publisher: string, at: Date): Promise<number>;
  /** Newest first, those that have ended too. */
  page(publisher: string, request: PageRequest): Promise<Page<PreviewLink>>;
  /** false: there is none, or it was taken back before. */
  revoke(id: string, at: Date): Promise<boolean>;
}
