import { componentData } from "./components.js";
import type { Data } from "./data.js";
import { foodData } from "./foods.js";
import type { PrismaClient } from "./generated/client.js";
import { keepingRuleData } from "./keeping-rules.js";
import { planData } from "./plans.js";
import { publisherData } from "./publishers.js";
import { revisionData } from "./revisions.js";
import { clientSession, transactionSession, type Session } from "./session.js";

/** Everything of `Data` on one client, whichever database it talks to. */
export const createData = (client: PrismaClient, close: () => Promise<void>): Data =>
  dataOf(clientSession(client), close);

function dataOf(session: Session, close: () => Promise<void>): Data {
  return {
    publishers: publisherData(session),
    foods: foodData(session),
    components: componentData(session),
    plans: planData(session),
    revisions: revisionData(session),
    keepingRules: keepingRuleData(session),
    transaction: (work) => session.transaction((db) => work(dataOf(transactionSession(db), close))),
    ping: async () => {
      await session.db.$queryRaw`SELECT 1`;
    },
    close,
  };
}
