import type { FeedSettings } from "./feed-settings.js";

/** The names that a feed's files give our columns, in small letters. */
export const feedColumns = ({ columns }: FeedSettings): ReadonlyMap<string, string> =>
  new Map(Object.entries(columns).map(([name, ours]) => [name.trim().toLowerCase(), ours]));
