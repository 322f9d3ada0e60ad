import {
  entryId,
  entryTexts,
  feedTime,
  type Feed,
  type FeedAuthor,
  type FeedEntry,
  type WithdrawnEntry,
} from "./feed.js";
import { oneLine } from "../words/legible-text.js";
import { writtenBlocks } from "../document/written-blocks.js";
import { writtenHtml } from "../document/written-html.js";
import { markupText } from "../document/markup-text.js";
import { wordsFor } from "../words/words-for.js";

/** `language` null: that of what is around it. */
const element = (name: string, text: string, language: string | null = null): string =>
  `<${name}${languageMark(language)}>${markupText(oneLine(text))}</${name}>`;

const languageMark = (language: string | null): string =>
  language === null ? "" : ` xml:lang="${markupText(language)}"`;

const link = (rel: string, type: string, address: string): string =>
  `<link rel="${rel}" type="${type}" href="${markupText(address)}"/>`;

const authorOf = ({ name, address }: FeedAuthor): string =>
  `<author>${element("name", name)}${element("uri", address)}</author>`;

/**
 * An Atom feed (RFC 4287) with a tombstone for each plan that was withdrawn (RFC 6721), as text. An empty one was never updated: it
 * says the beginning of time.
 */
export function atomFeed({ id, title, home, self, next, locale, author, entries, withdrawn }: Feed): string {
  const times = [...entries.map(({ publishedAt }) => publishedAt), ...withdrawn.map(({ withdrawnAt }) => withdrawnAt)];
  const newest = Math.max(0, ...times.map((time) => time.getTime()));
  const lines = [
    `<?xml version="1.0" encoding="utf-8"?>`,
    `<feed xmlns="http://www.w3.org/2005/Atom"${withdrawn.length === 0 ? "" : ` xmlns:at="${tombstones}"`} xml:lang="${markupText(locale)}">`,
    element("id", id),
    element("title", title),
    element("updated", feedTime(new Date(newest))),
    link("alternate", "text/html", home),
    link("self", "application/atom+xml", self),
    ...(next === null ? [] : [link("next", "application/atom+xml", next)]),
    ...(author === null ? [] : [authorOf(author)]),
    `<generator>Prepwright</generator>`,
    ...entries.flatMap(entryLines),
    ...withdrawn.map(tombstone),
    `</feed>`,
  ];
  return `${lines.join("\n")}\n`;
}

/** The namespace of RFC 6721. */
const tombstones = "http://purl.org/atompub/tombstones/1.0";

function tombstone(entry: WithdrawnEntry): string {
  const { withdrawnAt, because } = entry;
  const said = because === null ? "" : `<at:comment>${markupText(oneLine(because))}</at:comment>`;
  return `<at:deleted-entry ref="${entryId(entry)}" when="${feedTime(withdrawnAt)}">${said}</at:deleted-entry>`;
}

function entryLines(entry: FeedEntry): readonly string[] {
  const texts = entryTexts(entry, wordsFor(entry.locale).changed);
  const { otherLanguage = () => null, introduction = null, summary } = entry;
  return [
    `<entry xml:lang="${markupText(entry.locale)}">`,
    element("id", entryId(entry)),
    element("title", entry.title, otherLanguage(entry.title)),
    element("published", feedTime(entry.firstPublishedAt)),
    element("updated", feedTime(entry.publishedAt)),
    link("alternate", "text/html", entry.address),
    ...(entry.image ? [link("enclosure", entry.image.type, entry.image.url)] : []),
    authorOf(entry.author),
    ...(texts.length === 0
      ? []
      : [
          `<summary type="text"${languageMark(summary === null ? null : otherLanguage(summary))}>${markupText(texts.map(oneLine).join(" "))}</summary>`,
        ]),
    ...(entry.tags ?? []).map((tag) => `<category term="${markupText(oneLine(tag))}"/>`),
    ...(introduction === null
      ? []
      : [
          `<content type="html"${languageMark(otherLanguage(introduction))}>${markupText(writtenHtml(writtenBlocks(introduction)))}</content>`,
        ]),
    `</entry>`,
  ];
}
