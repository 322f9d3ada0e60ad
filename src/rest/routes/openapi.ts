import { z } from "zod";
import { asJson, endpoint, found, type Endpoint } from "../endpoint.js";

/** The description of all addresses, this one among them. */
export const openapiEndpoint = (describe: () => Readonly<Record<string, unknown>>): Endpoint =>
  endpoint(
    {
      method: "GET",
      path: "/v1/openapi",
      operationId: "getOpenapi",
      tag: "service",
      summary: "This document",
      description: "OpenAPI 3.1. Only what it describes is promised to stay.",
      parameters: [],
      refusals: [],
      caching: "LIVE",
    },
    () => Promise.resolve(found(describe())),
    [
      asJson(z.record(z.string().max(200), z.unknown()), "OpenAPI 3.1.", (document, { publicUrl }) =>
        publicUrl === null ? document : { ...document, servers: [{ url: publicUrl, description: "This service." }] },
      ),
    ],
  );
