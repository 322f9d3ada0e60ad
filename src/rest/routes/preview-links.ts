import { z } from "zod";
import { madePreviewLinkSchema, previewLinkPageSchema, previewLinkSchema } from "../../exports/json/preview-link.js";
import { named } from "../../exports/json/named-schema.js";
import { requireScope } from "../../services/access/actor.js";
import type { PreviewLink } from "../../services/deps.js";
import { parseWithSchema } from "../../services/drafts/parse-with-schema.js";
import {
  createPreviewLink,
  listPreviewLinks,
  mostDays,
  revokePreviewLink,
} from "../../services/previews/preview-links.js";
import { asJson, endpoint, found, refused, type Endpoint } from "../endpoint.js";
import { pageOf, pageParameters, type LinkedPage } from "../pagination.js";
import { inPath } from "../parameter.js";
import { notFound, notProcessable } from "../refusal.js";

const path = "/v1/publishers/{publisher}/preview-links";
const publisherIn = inPath("publisher", "Slug of the publisher.");
const scope = "READ_DRAFTS";
const caching = "NEVER";

const wanted = named(
  "NewPreviewLink",
  "Which draft to show, and for how long.",
  z.strictObject({
    slug: z.string().max(200).describe("Slug of the plan."),
    days: z
      .number()
      .int()
      .min(1)
      .max(mostDays)
      .optional()
      .describe(
        "The number of days that it works, and no longer than the access token that makes it. Default: 7, or as long as that token.",
      ),
    idempotencyKey: z
      .string()
      .max(255)
      .optional()
      .describe("A key that you choose, such as a UUID. A request repeated with the same key is carried out once."),
  }),
);

const linkJson = ({ id, publisher, slug, createdAt, expiresAt, revokedAt }: PreviewLink) => ({
  ...{ id, publisher, slug },
  createdAt: createdAt.toISOString(),
  expiresAt: expiresAt.toISOString(),
  revokedAt: revokedAt?.toISOString() ?? null,
});

interface Made {
  readonly link: PreviewLink;
  readonly address: string | null;
}

export const previewEndpoints: readonly Endpoint[] = [
  endpoint(
    {
      method: "POST",
      path,
      operationId: "createPreviewLink",
      tag: "publishers",
      summary: "Make a link that shows a draft",
      description:
        "Whoever has its address sees the draft of the plan as readers would see it, in its newest version at each moment, until it expires or is taken back. Nothing keeps these pages, and search engines do not list them.",
      parameters: [publisherIn],
      body: wanted,
      ...{ scope, caching },
      refusals: ["not-processable"],
    },
    async ({ deps, caller, path: { publisher = "" }, body, origin }) => {
      requireScope(caller.actor, scope, publisher);
      const read = parseWithSchema(wanted, body);
      if (!read.ok) return refused(notProcessable(read.problems));
      const made = await createPreviewLink(deps, caller, { publisher, ...read.value });
      if (!made.ok) return refused(notProcessable(made.problems));
      const { link, path: own } = made.value;
      return found<Made>({ link, address: own === null ? null : origin + own });
    },
    [asJson(madePreviewLinkSchema, "The link.", ({ link, address }: Made) => ({ ...linkJson(link), address }))],
  ),
  endpoint(
    {
      method: "GET",
      path,
      operationId: "listPreviewLinks",
      tag: "publishers",
      summary: "Links that show drafts",
      description: "Newest first, those that have ended too; never their addresses.",
      parameters: [publisherIn, ...pageParameters],
      ...{ scope, caching },
      refusals: [],
      links: "The next and the previous page",
    },
    (question) => {
      const { publisher = "" } = question.path;
      return pageOf<PreviewLink>(question, (page) =>
        listPreviewLinks(question.deps, question.caller.actor, { publisher, page }),
      );
    },
    [
      asJson(previewLinkPageSchema, "The page.", ({ items, next, previous }: LinkedPage<PreviewLink>) => ({
        ...{ next, previous },
        items: items.map(linkJson),
      })),
    ],
  ),
  endpoint(
    {
      method: "POST",
      path: `${path}/{link}/revoke`,
      operationId: "revokePreviewLink",
      tag: "publishers",
      summary: "Take a preview link back",
      description: "From now on its address says so.",
      parameters: [publisherIn, inPath("link", "Id of the link.")],
      ...{ scope, caching },
      refusals: ["not-found"],
    },
    async ({ deps, caller, path: { publisher = "", link = "" } }) => {
      const known = await deps.data.previewLinks.find(link);
      const unknown = refused(notFound("This publisher has no such preview link."));
      // No link has an empty id: refused as one of the publisher's own would be, nothing can be told from it.
      const done = await revokePreviewLink(deps, caller, { id: known?.publisher === publisher ? link : "" });
      return done.ok ? found(done.value) : unknown;
    },
    [asJson(previewLinkSchema, "The link.", linkJson)],
  ),
];
