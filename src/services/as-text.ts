/** Answers as text for people, for the layers that may not see `exports`. */
export type { Addresses } from "../exports/addresses.js";
export { atomFeed } from "../exports/atom.js";
export type { Feed, FeedEntry } from "../exports/feed.js";
export { icalendar } from "../exports/icalendar.js";
export { jsonFeed } from "../exports/json-feed.js";
export { mailHtml } from "../exports/mail-html.js";
export { planMarkdown } from "../exports/markdown.js";
export { plainText } from "../exports/plain-text.js";
export { schemaOrgText } from "../exports/schema-org.js";
export { shoppingCsv } from "../exports/shopping-csv.js";
export { shoppingMarkdown } from "../exports/shopping-markdown.js";
