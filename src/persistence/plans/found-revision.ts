/** The columns that find a published revision; its content is `PublishedRevision.bundle`. */
export interface RevisionSummary {
  readonly id: string;
  readonly publisher: string;
  readonly slug: string;
  readonly title: string;
  readonly revision: number;
  readonly serves: number;
  readonly locale: string;
  readonly publishedAt: Date;
  readonly withdrawnAt: Date | null;
  /** Why, for readers. */
  readonly withdrawnBecause: string | null;
  /** What it changed, for readers. */
  readonly changeNote: string | null;
  /** SHA-256 of the frozen document, hex. */
  readonly checksum: string;
  /** Id of the rule set it was checked against; null: published before sets were kept. */
  readonly ruleSet: string | null;
  /** BCP 47 tags of the languages that its plan was translated into. */
  readonly translatedInto: readonly string[];
}

/** A revision, and one of the languages it was translated into. */
export interface TitleAsked {
  readonly id: string;
  readonly language: string;
}
