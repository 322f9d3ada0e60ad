import { publisherSchema } from "../../services/as-json.js";
import type { Publisher } from "../../services/deps.js";
import { findPublishers } from "../../services/find-publishers.js";
import { asJson, endpoint, found, refused } from "../endpoint.js";
import { inPath } from "../parameter.js";
import { notFound } from "../refusal.js";

export const publisherEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/publishers/{publisher}",
    operationId: "getPublisher",
    tag: "publishers",
    summary: "A publisher",
    parameters: [inPath("publisher", "Slug of the publisher.")],
    refusals: ["not-found"],
    caching: "LIVE",
  },
  async ({ deps, path }) => {
    const [publisher] = await findPublishers(deps, [path["publisher"] ?? ""]);
    return publisher ? found(publisher) : refused(notFound("There is no such publisher."));
  },
  [asJson(publisherSchema, "The publisher.", ({ slug, name }: Publisher) => ({ slug, name }))],
);
