import type { Endpoint } from "./endpoint.js";
import { openapiDocument } from "./openapi.js";
import { adoptFoodEndpoint } from "./routes/adopt-food.js";
import { archiveEndpoints } from "./routes/archive.js";
import { changesEndpoint, changeStreamEndpoint } from "./routes/changes.js";
import { componentEndpoint, foodEndpoint, foodsEndpoint } from "./routes/catalogue.js";
import { imageEndpoint } from "./routes/images.js";
import { importEndpoints, morningEndpoint } from "./routes/imports.js";
import { openapiEndpoint } from "./routes/openapi.js";
import { listEndpoint, servingsTableEndpoint, sessionEndpoint, storageEndpoint } from "./routes/plan-parts.js";
import { mailEndpoint, planEndpoint, revisionEndpoint } from "./routes/plan.js";
import { plansEndpoint } from "./routes/plans.js";
import { feedEndpoint, publisherEndpoint, publishersEndpoint } from "./routes/publisher.js";
import { previewEndpoints } from "./routes/preview-links.js";
import { planRequestsEndpoint } from "./routes/plan-requests.js";
import { scheduledEndpoint } from "./routes/scheduled.js";
import { readLinesEndpoint } from "./routes/read-lines.js";
import { shoppingListEndpoint } from "./routes/shopping-list.js";
import { vocabularyEndpoint } from "./routes/vocabulary.js";

/** Every address below /v1, once: what is registered, described and tested. */
export const endpoints: readonly Endpoint[] = [
  plansEndpoint,
  planEndpoint,
  mailEndpoint,
  revisionEndpoint,
  listEndpoint,
  sessionEndpoint,
  storageEndpoint,
  servingsTableEndpoint,
  shoppingListEndpoint,
  componentEndpoint,
  foodsEndpoint,
  foodEndpoint,
  adoptFoodEndpoint,
  readLinesEndpoint,
  vocabularyEndpoint,
  publishersEndpoint,
  publisherEndpoint,
  feedEndpoint,
  imageEndpoint,
  ...previewEndpoints,
  scheduledEndpoint,
  planRequestsEndpoint,
  ...archiveEndpoints,
  changesEndpoint,
  changeStreamEndpoint,
  ...importEndpoints,
  morningEndpoint,
  openapiEndpoint(() => openapiDocument(endpoints)),
];
