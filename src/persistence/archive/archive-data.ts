import type { PlanBundle } from "../../domain/model/plan.js";
import type { DraftKind } from "../../domain/problem.js";
import type { KeptImage } from "../images/image-data.js";

export interface RevisionKey {
  readonly slug: string;
  readonly revision: number;
}

/** What is stored of a revision beside its frozen document, in terms that mean the same in another database. */
export interface ArchivedRevision extends RevisionKey {
  readonly publishedAt: Date;
  readonly withdrawnAt: Date | null;
  readonly withdrawnBecause: string | null;
  readonly changeNote: string | null;
  /** SHA-256, hex, of the canonical text of the document. */
  readonly checksum: string;
  readonly format: number;
  readonly meaning: number | null;
  readonly publisherRegion: string | null;
  readonly publisherCurrency: string | null;
  /** Code of the rule set it was checked against. */
  readonly ruleSet: string | null;
}

/** A publication or a withdrawal that waits, in terms that mean the same in another database. */
export interface ArchivedSchedule {
  readonly id: string;
  readonly slug: string;
  readonly kind: "PUBLISH" | "WITHDRAW";
  readonly dueAt: Date;
  readonly localTime: string;
  readonly zone: string;
  readonly version: number | null;
  readonly changeNote: string | null;
  readonly reason: string | null;
  /** Number of the revision in force when it was asked for; null: none was. */
  readonly inForce: number | null;
  readonly createdAt: Date;
}

export interface DiscardedName {
  readonly kind: DraftKind;
  readonly slug: string;
  readonly version: number;
}

/** A picture of a publisher, what documents call it, and the files that are kept of it; none where it was removed. */
interface ArchivedImage extends Omit<KeptImage, "createdBy"> {
  readonly names: readonly { readonly name: string; readonly updatedAt: Date }[];
  readonly files: readonly { readonly width: number; readonly format: KeptImage["format"]; readonly size: number }[];
}

interface ArchivedName {
  readonly publisher: string;
  readonly kind: DraftKind;
  readonly slug: string;
}

/** Everything of a publisher, to be taken to another installation. */
export interface ArchiveData {
  /** How many drafts, revisions and pictures there are: what an export costs. */
  size(publisher: string): Promise<number>;
  /** By slug and number. */
  revisions(publisher: string, after: RevisionKey | null, limit: number): Promise<readonly ArchivedRevision[]>;
  /** The frozen document as it is stored; null: there is no such revision. */
  document(publisher: string, key: RevisionKey): Promise<unknown>;
  /** By hash. */
  images(publisher: string, after: string | null, limit: number): Promise<readonly ArchivedImage[]>;
  discarded(publisher: string): Promise<readonly DiscardedName[]>;
  /** What waits, by plan. */
  scheduled(publisher: string): Promise<readonly ArchivedSchedule[]>;
  /** Whether nothing was ever saved, published or set up under this publisher. */
  isEmpty(publisher: string): Promise<boolean>;
  /** Gives a draft that was just saved the version and the date that it had. */
  dateDraft(draft: ArchivedName, version: number, updatedAt: Date): Promise<void>;
  noteDiscarded(publisher: string, names: readonly DiscardedName[]): Promise<void>;
  /** Inside a transaction: a revision with its number, dates and frozen document, and the change that tells of it. */
  addRevision(publisher: string, revision: ArchivedRevision, document: PlanBundle): Promise<void>;
  /** Inside a transaction: the change that tells of its withdrawal. */
  noteWithdrawal(publisher: string, revision: ArchivedRevision): Promise<void>;
  /** Inside a transaction, once all revisions are there: what each plan's address leads to. */
  settlePlans(publisher: string): Promise<void>;
}
