// @ts-nocheck
import type { Endpoint } from "./endpoint.js";
import { openapiDocument } from "./openapi.js";
import { openapiEndpoint } from "./routes/openapi.js";
import { planEndpoint } from "./routes/plan.js";

/** Every address below /v1, once: what is registered, described and tested. */
export const endpoints: readonly Endpoint[] = [planEndpoint, openapiEndpoint(() => openapiDocument(endpoints))];
