import type { ImageSource } from "../image-address.js";

/** A publisher, and where to read about it. */
export interface FeedAuthor {
  readonly name: string;
  readonly address: string;
}

/** A published plan in its newest revision, as followers of a feed get it. */
export interface FeedEntry {
  /** UUID of the plan: the same whatever becomes of its title, slug or address. */
  readonly planId: string;
  readonly title: string;
  readonly summary: string | null;
  /** In CommonMark; left out or null: none. */
  readonly introduction?: string | null;
  readonly tags?: readonly string[];
  /** The moving address: the newest revision. */
  readonly address: string;
  /** BCP 47 tag of the language that it is shown in. */
  readonly locale: string;
  /** BCP 47 tag of the language of one of its texts that is in another; null: it is in that of the entry. Left out: all are. */
  readonly otherLanguage?: (text: string) => string | null;
  readonly author: FeedAuthor;
  readonly firstPublishedAt: Date;
  /** When the newest revision was published. */
  readonly publishedAt: Date;
  /** What the publisher says has changed in it; null for nothing, and for a first revision. */
  readonly changeNote: string | null;
  /** A picture that every reader shows: a JPEG, by its absolute address. Left out or null: none. */
  readonly image?: Pick<ImageSource, "url" | "type"> | null;
}

/** A plan that its publisher took back as a whole. */
export interface WithdrawnEntry {
  readonly planId: string;
  readonly withdrawnAt: Date;
  /** In its publisher's words; null: it gave none. */
  readonly because: string | null;
}

/** A page of what was published, newest first. All addresses are absolute. */
export interface Feed {
  /** An IRI that never changes. */
  readonly id: string;
  readonly title: string;
  /** The page it is the feed of. */
  readonly home: string;
  /** Its own address. */
  readonly self: string;
  /** The page of older entries; null: there is none. */
  readonly next: string | null;
  /** BCP 47 tag of its words. */
  readonly locale: string;
  /** null: entries of several publishers. */
  readonly author: FeedAuthor | null;
  readonly entries: readonly FeedEntry[];
  /** The last withdrawn first; empty on all pages but the newest. */
  readonly withdrawn: readonly WithdrawnEntry[];
}

/** RFC 9562: a name for the plan that is no address, so moving the service or renaming the plan makes no new entry. */
export const entryId = ({ planId }: Pick<FeedEntry | WithdrawnEntry, "planId">): string =>
  `urn:uuid:${planId.toLowerCase()}`;

/** RFC 3339, in UTC, to the second. */
export const feedTime = (time: Date): string => time.toISOString().replace(/\.\d+Z$/, "Z");

/** What an entry says, in one text each: the summary, then what has changed. */
export const entryTexts = ({ summary, changeNote }: FeedEntry, changed: string): readonly string[] => [
  ...(summary === null ? [] : [summary]),
  ...(changeNote === null ? [] : [`${changed}: ${changeNote}`]),
];
