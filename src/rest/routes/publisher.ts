import { z } from "zod";
import { imageJson } from "../../exports/json/image.js";
import { list, type Json } from "../../exports/json/named-schema.js";
import { pageSchema } from "../../exports/json/page-schema.js";
import { describedPublisherSchema } from "../../exports/json/plan.js";
import { atomFeed } from "../../exports/feeds/atom.js";
import { jsonFeed } from "../../exports/feeds/json-feed.js";
import { imageSources } from "../../exports/image-address.js";
import type { Feed } from "../../exports/feeds/feed.js";
import type { Deps, Publisher } from "../../services/deps.js";
import { listPublishers } from "../../services/access/list-publishers.js";
import { findPublishers } from "../../services/access/find-publishers.js";
import { listFeed, listWithdrawn, type FollowedPlan, type WithdrawnPlan } from "../../services/plans/list-feed.js";
import { isStorable } from "../../services/storable-text.js";
import { publisherAddress } from "../../exports/addresses.js";
import { localeQuery, planPath, publisherPath } from "../../exports/page/page-links.js";
import { asJson, asText, endpoint, found, refused, type Question } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inPath, one, titleLocale } from "../parameter.js";
import { notFound } from "../refusal.js";

const parameters = [inPath("publisher", "Slug of the publisher.")];

async function publisherOf(deps: Deps, { path }: Question): Promise<Publisher | null> {
  const slug = path["publisher"] ?? "";
  const [publisher] = isStorable(slug) ? await findPublishers(deps, [slug]) : [];
  return publisher ?? null;
}

const unknown = notFound("There is no such publisher.");

export const publisherEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/publishers/{publisher}",
    operationId: "getPublisher",
    tag: "publishers",
    summary: "A publisher",
    description:
      "The name readers know it by, and what it says of itself: where it publishes, in which languages and what money.",
    parameters,
    refusals: ["not-found"],
    caching: "LIVE",
    page: ({ path }) => publisherPath(path["publisher"] ?? ""),
  },
  async (question) => {
    const publisher = await publisherOf(question.deps, question);
    return publisher ? found(publisher) : refused(unknown);
  },
  [
    asJson(describedPublisherSchema, "The publisher.", (publisher: Publisher, { origin }) =>
      publisherJson(publisher, origin),
    ),
  ],
);

const publisherJson = (
  { slug, name, region, currency, languages, description, website, image }: Publisher,
  origin: string,
): Json<typeof describedPublisherSchema> => ({
  ...{ slug, name, region, currency, description, website: website ?? null },
  languages: [...languages],
  image: imageJson(origin, slug, image),
});

export const publishersEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/publishers",
    operationId: "listPublishers",
    tag: "publishers",
    summary: "Publishers with a plan in force, by slug",
    description: "For the plans of one of them ask `/v1/plans?publisher=` and its slug.",
    parameters: pageParameters,
    refusals: [],
    caching: "LIVE",
    links: "The next and the previous page",
  },
  (question) => pageOf(question, (page) => listPublishers(question.deps, page)),
  [
    asJson(
      pageSchema("PublisherPage", "A page of publishers.", list(describedPublisherSchema, "In the order of the list.")),
      "The page.",
      ({ items, next, previous }: LinkedPage<Publisher>, { origin }) => ({
        items: items.map((publisher) => publisherJson(publisher, origin)),
        next,
        previous,
      }),
    ),
  ],
);

interface Followed {
  readonly publisher: Publisher;
  readonly page: LinkedPage<FollowedPlan>;
  readonly withdrawn: readonly WithdrawnPlan[];
}

/** A feed for followers: its pages go back in time, and only forwards from the newest. */
export const feedEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/publishers/{publisher}/feed",
    operationId: "getFeed",
    tag: "publishers",
    summary: "What a publisher has published, as a feed",
    description:
      "The newest first, for feed readers: Atom (RFC 4287) or JSON Feed 1.1. A plan that was withdrawn as a whole leaves both; Atom names" +
      " the last 100 of them with the reason (RFC 6721).",
    parameters: [
      ...parameters,
      titleLocale,
      ...pageParameters.filter(({ name }) => name === "first" || name === "after"),
    ],
    refusals: ["not-found"],
    caching: "CHANGES",
    links: "The page of older entries",
  },
  async (question) => {
    const publisher = await publisherOf(question.deps, question);
    if (publisher === null) return refused(unknown);
    const page = await pageOf(question, (wanted) =>
      listFeed(question.deps, publisher.slug, wanted, one(question.query, "locale")),
    );
    if (!page.ok) return page;
    // Only at the front, where those who follow it look.
    const withdrawn = question.query.has("after") ? [] : await listWithdrawn(question.deps, publisher.slug);
    return found({ publisher, page: page.value, withdrawn }, page.headers);
  },
  [
    asText(
      "jsonFeed",
      "As a JSON Feed 1.1.",
      (followed: Followed, question) => jsonFeed(feedOf(followed, question, "json")),
      z.record(z.string().max(200), z.unknown()),
    ),
    asText("atom", "As an Atom feed (RFC 4287).", (followed: Followed, question) =>
      atomFeed(feedOf(followed, question, "atom")),
    ),
  ],
);

function feedOf(
  { publisher, page, withdrawn }: Followed,
  { origin, address, query }: Question,
  suffix: "json" | "atom",
): Feed {
  const author = { name: publisher.name, address: origin + publisherPath(publisher.slug) };
  const at = address.indexOf("?");
  const feed = `${origin}${publisherAddress(publisher.slug)}/feed.${suffix}`;
  const locale = one(query, "locale");
  const queryOf = (of: string): string => (of.includes("?") ? of.slice(of.indexOf("?")) : "");
  return {
    // A feed in another language is another feed, of the same entries.
    id: `urn:uuid:${publisher.id}${locale === null ? "" : `#${encodeURIComponent(locale)}`}`,
    title: publisher.name,
    home: author.address,
    self: feed + (at < 0 ? "" : address.slice(at)),
    next: page.next === null ? null : feed + queryOf(page.next),
    locale: locale ?? page.items[0]?.newest.locale ?? "en",
    author,
    entries: page.items.map(({ first, newest, image, shown: { language, ...words } }) => ({
      planId: first.id,
      ...words,
      address: origin + planPath(newest) + (language === newest.locale ? "" : localeQuery(language)),
      locale: language,
      author,
      firstPublishedAt: first.publishedAt,
      publishedAt: newest.publishedAt,
      changeNote: newest.changeNote,
      image: image?.stored ? (imageSources(origin, publisher.slug, image.stored, "JPEG").at(-1) ?? null) : null,
    })),
    withdrawn: withdrawn.flatMap(({ first, last }) =>
      last.withdrawnAt === null
        ? []
        : [{ planId: first.id, withdrawnAt: last.withdrawnAt, because: last.withdrawnBecause }],
    ),
  };
}
