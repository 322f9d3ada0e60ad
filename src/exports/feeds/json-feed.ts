import { entryId, entryTexts, feedTime, type Feed, type FeedAuthor, type FeedEntry } from "./feed.js";
import { writtenBlocks } from "../document/written-blocks.js";
import { writtenHtml } from "../document/written-html.js";
import { oneLine } from "../words/legible-text.js";
import { wordsFor } from "../words/words-for.js";

const authorOf = ({ name, address }: FeedAuthor) => ({ name: oneLine(name), url: address });

/** A JSON Feed 1.1 (jsonfeed.org/version/1.1), as text. */
export function jsonFeed({ title, home, self, next, locale, author, entries }: Feed): string {
  const feed = {
    version: "https://jsonfeed.org/version/1.1",
    title: oneLine(title),
    home_page_url: home,
    feed_url: self,
    ...(next === null ? {} : { next_url: next }),
    language: locale,
    ...(author === null ? {} : { authors: [authorOf(author)] }),
    items: entries.map(itemOf),
  };
  return `${JSON.stringify(feed, null, 2)}\n`;
}

function itemOf(entry: FeedEntry) {
  const {
    title,
    summary,
    introduction = null,
    tags = [],
    address,
    locale,
    otherLanguage = () => null,
    author,
    firstPublishedAt,
    publishedAt,
    image,
  } = entry;
  const texts = entryTexts(entry, wordsFor(locale).changed).map(oneLine);
  return {
    id: entryId(entry),
    url: address,
    title: oneLine(title),
    // One of the two contents is demanded; a plan that says nothing of itself has its title.
    content_text: texts.length === 0 ? oneLine(title) : texts.join("\n\n"),
    ...(introduction === null ? {} : { content_html: writtenHtml(writtenBlocks(introduction)) }),
    ...(tags.length === 0 ? {} : { tags: tags.map(oneLine) }),
    ...(summary === null ? {} : { summary: oneLine(summary) }),
    ...(image ? { image: image.url } : {}),
    date_published: feedTime(firstPublishedAt),
    date_modified: feedTime(publishedAt),
    authors: [authorOf(author)],
    language: otherLanguage(title) ?? locale,
  };
}
