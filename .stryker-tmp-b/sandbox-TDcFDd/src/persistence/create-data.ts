// @ts-nocheck
import { accessTokenData } from "./access-tokens.js";
import { auditTrailData } from "./audit-trail.js";
import { changeData } from "./changes.js";
import { componentData } from "./components.js";
import type { Data } from "./data.js";
import { draftData } from "./drafts.js";
import { foodData } from "./foods.js";
import type { PrismaClient } from "./generated/client.js";
import { idempotencyKeyData } from "./idempotency-keys.js";
import { planData } from "./plans.js";
import { publisherData } from "./publishers.js";
import { revisionData } from "./revisions.js";
import { ruleSetData } from "./rule-sets.js";
import { clientSession, transactionSession, type Db, type Session } from "./session.js";

/** Milliseconds after which a database that is silent counts as one that does not answer. */
const pingPatience = 5_000;

/** Everything of `Data` on one client, whichever database it talks to. */
export const createData = (client: PrismaClient, close: () => Promise<void>): Data =>
  dataOf(clientSession(client), close);

function dataOf(session: Session, close: () => Promise<void>): Data {
  return {
    publishers: publisherData(session),
    foods: foodData(session),
    components: componentData(session),
    plans: planData(session),
    drafts: draftData(session),
    revisions: revisionData(session),
    ruleSets: ruleSetData(session),
    accessTokens: accessTokenData(session),
    auditTrail: auditTrailData(session),
    idempotencyKeys: idempotencyKeyData(session),
    changes: changeData(session),
    transaction: (work) => session.transaction((db) => work(dataOf(transactionSession(db), close))),
    ping: () => ping(session.db),
    close,
  };
}

async function ping(db: Db): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const silence = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`no answer within ${pingPatience} ms`)), pingPatience);
  });
  try {
    await Promise.race([db.$queryRaw`SELECT 1`, silence]);
  } finally {
    clearTimeout(timer);
  }
}
