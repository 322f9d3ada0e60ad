import { Ajv } from "ajv";
import * as formats from "ajv-formats";
import fc from "fast-check";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { atomFeed } from "../../../src/exports/feeds/atom.js";
import type { Feed, FeedEntry } from "../../../src/exports/feeds/feed.js";
import { jsonFeed } from "../../../src/exports/feeds/json-feed.js";
import { oneLine } from "../../../src/exports/words/legible-text.js";
import { hostileText } from "../hostile-text.js";
import { jsonFeedSchema } from "./json-feed-schema.js";

const ajv = new Ajv({ strict: true, strictRequired: false, allErrors: true });
formats.default.default(ajv);
const isJsonFeed = ajv.compile(jsonFeedSchema);

const author = { name: "The Third Gate Allotment Society", address: "https://plans.example/third-gate-allotments" };

const entry = (facts: Partial<FeedEntry> = {}): FeedEntry => ({
  planId: "01936d2e-7a4c-7c3f-9b1a-2f60b8a4d001",
  title: "Roots & barley, four ways",
  summary: "One wet Sunday in the kitchen.",
  introduction: null,
  tags: [],
  address: "https://plans.example/third-gate-allotments/roots-and-barley?servings=4&region=GB",
  locale: "en-GB",
  author,
  firstPublishedAt: new Date("2026-02-01T08:00:00.250Z"),
  publishedAt: new Date("2026-02-20T06:30:00Z"),
  changeNote: "The barley now takes less water.",
  ...facts,
});

const feed = (entries: readonly FeedEntry[], facts: Partial<Feed> = {}): Feed => ({
  id: "urn:uuid:01936d2e-0000-7000-8000-2f60b8a4d000",
  title: "Plans of The Third Gate Allotment Society",
  home: "https://plans.example/third-gate-allotments",
  self: "https://plans.example/v1/feeds/third-gate-allotments",
  next: "https://plans.example/v1/feeds/third-gate-allotments?after=abc",
  locale: "en-GB",
  author,
  entries,
  withdrawn: [],
  ...facts,
});

const beans = entry({
  planId: "01936d2e-7a4c-7c3f-9b1a-2f60b8a4d002",
  title: "Put the beans on to soak",
  summary: null,
  changeNote: null,
  publishedAt: new Date("2026-01-04T10:00:00Z"),
  firstPublishedAt: new Date("2026-01-04T10:00:00Z"),
});

interface AtomLink {
  readonly "@rel": string;
  readonly "@href": string;
}
interface AtomEntry {
  readonly id: string;
  readonly title: string;
  readonly updated: string;
  readonly published: string;
  readonly summary?: { readonly "#text": string };
  readonly author: { readonly name: string; readonly uri: string };
  readonly link: readonly AtomLink[];
}
interface AtomDocument {
  readonly id: string;
  readonly title: string;
  readonly updated: string;
  readonly link: readonly AtomLink[];
  readonly entry?: readonly AtomEntry[];
}

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: "@",
  parseTagValue: false,
  trimValues: false,
  htmlEntities: true,
  isArray: (name) => name === "entry" || name === "link",
});

function atomOf(text: string): AtomDocument {
  expect(XMLValidator.validate(text)).toBe(true);
  return (parser.parse(text) as { feed: AtomDocument }).feed;
}

const itemsOf = (text: string): readonly Record<string, unknown>[] =>
  (JSON.parse(text) as { items: readonly Record<string, unknown>[] }).items;

describe("a feed of what was published", () => {
  it("is what the golden files show", async () => {
    await expect(jsonFeed(feed([entry(), beans]))).toMatchFileSnapshot("../../golden/feed.json");
    await expect(atomFeed(feed([entry(), beans]))).toMatchFileSnapshot("../../golden/feed.atom");
  });

  it("is a JSON Feed 1.1 with all its musts, also when it is empty", () => {
    for (const each of [feed([entry(), beans]), feed([], { next: null, author: null })]) {
      isJsonFeed(JSON.parse(jsonFeed(each)));
      expect(isJsonFeed.errors ?? []).toEqual([]);
    }
    expect(isJsonFeed({ version: "https://jsonfeed.org/version/1", title: "x", items: [] })).toBe(false);
  });

  it("is an Atom feed with the musts of RFC 4287", () => {
    const atom = atomOf(atomFeed(feed([entry(), beans])));
    const text = atomFeed(feed([entry()]));
    expect(text).toContain('<feed xmlns="http://www.w3.org/2005/Atom"');
    // 4.1.1: exactly one id, title and updated; a self link; an author on the feed or on every entry.
    for (const name of ["id", "title", "updated"]) {
      expect(text.slice(0, text.indexOf("<entry")).split(`<${name}>`)).toHaveLength(2);
    }
    expect(atom.link.map((each) => each["@rel"])).toEqual(["alternate", "self", "next"]);
    expect(atom.updated).toBe("2026-02-20T06:30:00Z");
    expect(atom.entry).toHaveLength(2);
    for (const each of atom.entry ?? []) {
      // 4.1.2: id, title, updated; an alternate link where there is no content. 3.3: RFC 3339 with an upper-case T and Z.
      expect(each.id).toMatch(/^urn:uuid:[0-9a-f-]{36}$/);
      expect(each.title).not.toBe("");
      for (const time of [each.updated, each.published]) expect(time).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
      expect(each.link.map((one) => one["@rel"])).toEqual(["alternate"]);
      expect(each.author.name).toBe(author.name);
    }
    expect(atom.entry?.[0]?.link[0]?.["@href"]).toBe(entry().address);
    expect(atomOf(atomFeed(feed([]))).updated).toBe("1970-01-01T00:00:00Z");
  });

  it("keeps the id of a plan that was renamed and moved, and tells that it was updated", () => {
    const before = entry();
    const after = entry({
      title: "Roots, barley and kale",
      address: "https://elsewhere.example/roots",
      publishedAt: new Date("2026-03-05T09:00:00Z"),
    });
    const [was, is] = [before, after].map((each) => itemsOf(jsonFeed(feed([each])))[0]);
    expect(is?.["id"]).toBe(was?.["id"]);
    expect(is?.["date_published"]).toBe(was?.["date_published"]);
    expect(is?.["date_modified"]).toBe("2026-03-05T09:00:00Z");
    const [atomWas, atomIs] = [before, after].map((each) => atomOf(atomFeed(feed([each]))).entry?.[0]);
    expect(atomIs?.id).toBe(atomWas?.id);
    expect(atomIs?.id).toBe(is?.["id"]);
    expect(atomIs?.updated).toBe("2026-03-05T09:00:00Z");
  });

  it("says what a revision changed, in both", () => {
    expect(itemsOf(jsonFeed(feed([entry()])))[0]?.["content_text"]).toContain("less water");
    expect(atomOf(atomFeed(feed([entry()]))).entry?.[0]?.summary?.["#text"]).toContain("less water");
  });

  it("holds any text as text", () => {
    fc.assert(
      fc.property(hostileText, (words) => {
        fc.pre(oneLine(words) !== "");
        const hostile = feed([entry({ title: words, summary: words, changeNote: words })], { title: words });
        isJsonFeed(JSON.parse(jsonFeed(hostile)));
        expect(isJsonFeed.errors ?? []).toEqual([]);
        expect(itemsOf(jsonFeed(hostile))[0]?.["title"]).toBe(oneLine(words));
        const atom = atomOf(atomFeed(hostile));
        expect(atom.entry).toHaveLength(1);
        expect(atom.title).toBe(oneLine(words));
        expect(atom.entry?.[0]?.title).toBe(oneLine(words));
      }),
      { numRuns: 300 },
    );
  });
});
