import Validator from "@adobe/structured-data-validator";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import type { Image } from "../../src/domain/model/image.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { atomFeed } from "../../src/exports/feeds/atom.js";
import { jsonFeed } from "../../src/exports/feeds/json-feed.js";
import { imageSources } from "../../src/exports/image-address.js";
import { planJson } from "../../src/exports/json/plan.js";
import { planCard } from "../../src/exports/page/card.js";
import { picturePart } from "../../src/exports/page/parts/picture-part.js";
import type { Html } from "../../src/exports/page/markup.js";
import { licenceOf } from "../../src/exports/schema-org/schema-org-image.js";
import { schemaOrgText } from "../../src/exports/schema-org/schema-org.js";
import { addresses, answerOf, demoBundle } from "./demo-answer.js";
import { htmlTree } from "./html-tree.js";

const image: Image = {
  file: "bowl.jpg",
  alt: 'A "bowl" <b>of</b> barley',
  credit: "Third Gate",
  licence: "CC-BY-4.0",
  stored: { hash: "ab".repeat(32), width: 1_600, height: 1_200, placeholder: "#8a9b5c" },
};
const bundle = demoBundle("roots-and-barley");
const pictured: PlanBundle = { ...bundle, plan: { ...bundle.plan, image, licence: "CC-BY-4.0" } };
const at = `https://plans.example/images/third-gate-allotments/${"ab".repeat(32)}`;

describe("a plan with a picture", () => {
  it("has no error left for search engines (@adobe/structured-data-validator)", async () => {
    const text = schemaOrgText(await answerOf(pictured, 6), addresses);
    const graph = (JSON.parse(text) as { "@graph": readonly Readonly<Record<string, unknown>>[] })["@graph"];
    const recipes = graph.filter((thing) => thing["@type"] === "Recipe");
    expect(recipes).toHaveLength(bundle.plan.meals.length);
    const located = recipes.map((recipe) => ({ ...recipe, "@location": "0,1" }));
    const issues = await new Validator().validate({ jsonld: { Recipe: located }, microdata: {}, rdfa: {} });
    expect(issues.filter(({ severity }) => severity === "ERROR")).toEqual([]);
    expect(recipes[0]).toMatchObject({
      license: "https://spdx.org/licenses/CC-BY-4.0.html",
      image: { url: `${at}/1280.jpg`, caption: image.alt, creditText: "Third Gate" },
    });
  });

  it("says its terms as an address where they are one, and else as a notice", () => {
    expect(licenceOf("https://terms.example/")).toEqual({ license: "https://terms.example/" });
    expect(licenceOf("CC0-1.0")).toEqual({ license: "https://spdx.org/licenses/CC0-1.0.html" });
    expect(licenceOf("All rights reserved")).toEqual({ copyrightNotice: "All rights reserved" });
    expect(licenceOf("javascript:alert(1)")).toEqual({ copyrightNotice: "javascript:alert(1)" });
  });

  it("shows it on pages in every form and width, with the room it takes, and its words as words", () => {
    const part = picturePart({ image, publisher: "third-gate-allotments", sizes: "100vw" });
    const markup = (part as Html).text;
    const path = `/images/third-gate-allotments/${"ab".repeat(32)}`;
    expect(markup).toContain(`srcset="${path}/320.avif 320w, ${path}/640.avif 640w, ${path}/1280.avif 1280w"`);
    expect(markup).toContain('width="1280" height="960"');
    expect(markup).toContain('alt="A &quot;bowl&quot; &lt;b&gt;of&lt;/b&gt; barley"');
    expect(markup).toContain('loading="lazy"');
    expect(JSON.stringify(htmlTree(markup))).not.toContain('"b"');
    expect(picturePart({ image: undefined, publisher: "x", sizes: "100vw" })).toBeNull();
    const { stored: _, ...unstored } = image;
    expect(picturePart({ image: unstored, publisher: "x", sizes: "100vw" })).toBeNull();
  });

  it("has it over REST and on its card, and nothing where there is none", async () => {
    const json = planJson(await answerOf(pictured, 4));
    expect(json).toMatchObject({
      licence: "CC-BY-4.0",
      image: { alt: image.alt, placeholder: "#8a9b5c", width: 1_600 },
    });
    expect(json.image?.sources.map(({ width, type }) => `${width} ${type}`)).toHaveLength(9);
    expect(json.meals[0]?.image).toBeNull();
    const card = planCard(await answerOf(pictured, 4), addresses.plan);
    expect(card.image?.sources[0]).toEqual({ url: `${at}/320.avif`, type: "image/avif", width: 320, height: 240 });
    const plain = await answerOf(bundle, 4);
    expect([planJson(plain).image, planJson(plain).licence, planCard(plain, addresses.plan).image]).toEqual([
      null,
      null,
      null,
    ]);
  });

  it("has it in feeds: an enclosure of RFC 4287, and the image of JSON Feed 1.1", () => {
    const author = { name: "Third Gate", address: "https://plans.example/p/third-gate-allotments" };
    const entry = {
      ...{ planId: "01936d2e-7a4c-7c3f-9b1a-2f60b8a4d001", title: "Roots", summary: null, address: addresses.plan },
      ...{ locale: "en", author, firstPublishedAt: new Date(0), publishedAt: new Date(0), changeNote: null },
      image: imageSources("https://plans.example", "third-gate-allotments", image.stored!, "JPEG").at(-1) ?? null,
    };
    const feed = {
      ...{ id: "urn:uuid:01936d2e-7a4c-7c3f-9b1a-2f60b8a4d002", title: "Plans", home: author.address, next: null },
      ...{ self: `${author.address}/feed`, locale: "en", author, entries: [entry], withdrawn: [] },
    };
    const atom = atomFeed(feed);
    expect(XMLValidator.validate(atom)).toBe(true);
    const read = new XMLParser({ ignoreAttributes: false }).parse(atom) as {
      feed: { entry: { link: readonly Readonly<Record<string, string>>[] } };
    };
    expect(read.feed.entry.link).toContainEqual({
      "@_rel": "enclosure",
      "@_type": "image/jpeg",
      "@_href": `${at}/1280.jpg`,
    });
    expect(JSON.parse(jsonFeed(feed))).toMatchObject({ items: [{ image: `${at}/1280.jpg` }] });
  });
});
