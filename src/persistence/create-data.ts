import { accessTokenData } from "./access/access-tokens.js";
import { archiveData } from "./archive/archives.js";
import { auditTrailData } from "./access/audit-trail.js";
import { changeData } from "./plans/changes.js";
import type { BulkSql } from "./sql/bulk-sql.js";
import { catalogueData } from "./foods/catalogue.js";
import { componentData } from "./plans/components.js";
import type { Data } from "./data.js";
import { draftData } from "./drafts/drafts.js";
import { feedData } from "./imports/feeds.js";
import { foodData } from "./foods/foods.js";
import type { PrismaClient } from "./generated/client.js";
import { idempotencyKeyData } from "./access/idempotency-keys.js";
import { imageData } from "./images/images.js";
import { importFileData } from "./imports/import-files.js";
import { importRunData } from "./imports/import-runs.js";
import { withTimeout } from "./database/with-timeout.js";
import { listedPackData } from "./imports/listed-packs.js";
import { planFactsData } from "./plans/plan-facts.js";
import { planData } from "./plans/plans.js";
import { scheduledChangeData } from "./plans/scheduled-changes.js";
import { previewLinkData } from "./plans/preview-links.js";
import { publisherFoodData } from "./foods/publisher-foods.js";
import { publisherData } from "./access/publishers.js";
import { revisionData } from "./plans/revisions.js";
import { reviewData } from "./plans/reviews.js";
import { ruleSetData } from "./rules/rule-sets.js";
import { clientSession, transactionSession, type Db, type Session } from "./database/session.js";
import { unlimited, type Semaphore } from "./database/semaphore.js";
import { webhookDeliveryData } from "./webhooks/webhook-deliveries.js";
import { translationData } from "./drafts/translation-drafts.js";
import { usageData } from "./access/usage.js";
import { webhookData } from "./webhooks/webhooks.js";

/** Milliseconds after which a database that is silent counts as one that does not answer. */
const pingPatience = 5_000;

/** Everything of `Data` on one client, whichever database it talks to. `turns`: of its transactions; all at once unless told. */
export const createData = (
  client: PrismaClient,
  bulk: BulkSql,
  close: () => Promise<void>,
  turns: Semaphore = unlimited,
): Data => dataOf(clientSession(client, turns), bulk, close);

function dataOf(session: Session, bulk: BulkSql, close: () => Promise<void>): Data {
  return {
    archives: archiveData(session),
    feeds: feedData(session),
    images: imageData(session),
    importFiles: importFileData(session),
    importRuns: importRunData(session),
    listedPacks: listedPackData(bulk),
    publishers: publisherData(session),
    foods: foodData(session),
    publisherFoods: publisherFoodData(session, "FOOD"),
    publisherPacks: publisherFoodData(session, "PACKS"),
    catalogue: catalogueData(session),
    translations: translationData(session),
    components: componentData(session),
    plans: planData(session),
    drafts: draftData(session),
    revisions: revisionData(session),
    usage: usageData(session),
    planFacts: planFactsData(session),
    reviews: reviewData(session),
    ruleSets: ruleSetData(session),
    accessTokens: accessTokenData(session),
    auditTrail: auditTrailData(session),
    idempotencyKeys: idempotencyKeyData(session),
    changes: changeData(session),
    webhooks: webhookData(session),
    webhookDeliveries: webhookDeliveryData(session),
    previewLinks: previewLinkData(session),
    scheduled: scheduledChangeData(session),
    transaction: (work, longest) =>
      session.transaction((db) => work(dataOf(transactionSession(db), bulk, close)), longest),
    ping: () => ping(session.db),
    close,
  };
}

async function ping(db: Db): Promise<void> {
  await withTimeout(db.$queryRaw`SELECT 1`, pingPatience);
}
