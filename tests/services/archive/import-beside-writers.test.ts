import { expect, it } from "vitest";
import { newWebhookSecret } from "../../../src/services/webhooks/webhook-message.js";
import { describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { exported, imported, openEmpty, openFull, publisher } from "./archive-of-a-publisher.js";

/** Something to wait for. */
function gate(): { readonly promise: Promise<void>; readonly resolve: () => void } {
  let resolve = (): void => undefined;
  const promise = new Promise<void>((done) => (resolve = done));
  return { promise, resolve };
}

describeOnServer("an archive that comes in while somebody is writing for the same publisher", (open) => {
  it("waits for what is being kept, and is refused since the publisher is not empty any more", async () => {
    let database: TestDatabase | undefined;
    const [here, there] = [await openFull(open), await openEmpty(async () => (database = await open()))];
    const waiting = async (): Promise<unknown> =>
      (
        await database?.sql.query(
          `SELECT count(*)::int AS "waiting" FROM pg_stat_activity WHERE wait_event_type = 'Lock' AND datname = current_database()`,
          [],
        )
      )?.rows[0]?.["waiting"];
    try {
      const zip = await exported(here);
      const { promise: written, resolve: isWritten } = gate();
      const { promise: end, resolve: mayEnd } = gate();
      const writing = there.deps.data.transaction(async (data) => {
        const webhook = { publisher, url: "https://hooks.example.org/late", kinds: ["PLAN_WITHDRAWN"] as const };
        await data.webhooks.create({ ...webhook, secret: newWebhookSecret(), createdAt: new Date(0) });
        isWritten();
        await end;
      });
      await written;
      const importing = imported(there, zip);
      try {
        await expect.poll(waiting, { timeout: 20_000 }).toBe(1);
      } finally {
        mayEnd();
        await writing;
      }
      expect(await importing).toMatchObject({ ok: false, problems: [{ code: "PUBLISHER_NOT_EMPTY" }] });
    } finally {
      await Promise.all([here.close(), there.close()]);
    }
  });
});
