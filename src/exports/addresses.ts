interface Named {
  readonly publisher: string;
  readonly slug: string;
}

/** Where programs ask for a plan, and for a publisher; pages for people stand in `page/page-links.ts`. */
export const planAddress = ({ publisher, slug }: Named): string =>
  `/v1/plans/${encodeURIComponent(publisher)}/${encodeURIComponent(slug)}`;
export const publisherAddress = (publisher: string): string => `/v1/publishers/${encodeURIComponent(publisher)}`;

/**
 * Where one answer can be asked for again: absolute URLs, made by whoever serves them. All but `publisher` carry what the
 * reader asked for (servings, swaps, region…) where that changes the answer.
 */
export interface Addresses {
  /** The moving address: the newest revision of the plan. */
  readonly plan: string;
  /** This revision, for ever. */
  readonly revision: string;
  readonly publisher: string;
  /** The shopping list. */
  readonly list: string;
  /** The calendar of the session and the days after it. */
  readonly calendar: string;
}
