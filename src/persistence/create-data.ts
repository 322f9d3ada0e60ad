import { accessTokenData } from "./access-tokens.js";
import { auditTrailData } from "./audit-trail.js";
import { changeData } from "./changes.js";
import type { BulkSql } from "./bulk-sql.js";
import { catalogueData } from "./catalogue.js";
import { componentData } from "./components.js";
import type { Data } from "./data.js";
import { draftData } from "./drafts.js";
import { feedData } from "./feeds.js";
import { foodData } from "./foods.js";
import type { PrismaClient } from "./generated/client.js";
import { idempotencyKeyData } from "./idempotency-keys.js";
import { importFileData } from "./import-files.js";
import { importRunData } from "./import-runs.js";
import { inTime } from "./in-time.js";
import { listedPackData } from "./listed-packs.js";
import { planData } from "./plans.js";
import { publisherData } from "./publishers.js";
import { revisionData } from "./revisions.js";
import { reviewData } from "./reviews.js";
import { ruleSetData } from "./rule-sets.js";
import { clientSession, transactionSession, type Db, type Session } from "./session.js";
import { withoutTurns, type Turns } from "./turns.js";
import { webhookDeliveryData } from "./webhook-deliveries.js";
import { webhookData } from "./webhooks.js";

/** Milliseconds after which a database that is silent counts as one that does not answer. */
const pingPatience = 5_000;

/** Everything of `Data` on one client, whichever database it talks to. `turns`: of its transactions; all at once unless told. */
export const createData = (
  client: PrismaClient,
  bulk: BulkSql,
  close: () => Promise<void>,
  turns: Turns = withoutTurns,
): Data => dataOf(clientSession(client, turns), bulk, close);

function dataOf(session: Session, bulk: BulkSql, close: () => Promise<void>): Data {
  return {
    feeds: feedData(session),
    importFiles: importFileData(session),
    importRuns: importRunData(session),
    listedPacks: listedPackData(bulk),
    publishers: publisherData(session),
    foods: foodData(session),
    catalogue: catalogueData(session),
    components: componentData(session),
    plans: planData(session),
    drafts: draftData(session),
    revisions: revisionData(session),
    reviews: reviewData(session),
    ruleSets: ruleSetData(session),
    accessTokens: accessTokenData(session),
    auditTrail: auditTrailData(session),
    idempotencyKeys: idempotencyKeyData(session),
    changes: changeData(session),
    webhooks: webhookData(session),
    webhookDeliveries: webhookDeliveryData(session),
    transaction: (work) => session.transaction((db) => work(dataOf(transactionSession(db), bulk, close))),
    ping: () => ping(session.db),
    close,
  };
}

async function ping(db: Db): Promise<void> {
  await inTime(db.$queryRaw`SELECT 1`, pingPatience);
}
