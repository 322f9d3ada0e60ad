import type { PGlite } from "@electric-sql/pglite";
import { createProbes, signalChannel, type FollowSignals } from "./change-signals.js";

/** Changes of the embedded database, which are all made in this process. */
export const followEmbedded =
  (pglite: PGlite): FollowSignals =>
  async (follower) => {
    const probes = createProbes("embedded");
    const unlisten = await pglite.listen(signalChannel, (payload) => {
      if (!probes.take(payload)) follower.heard(payload);
    });
    follower.listening(true);
    return {
      caughtUp: () => probes.send((payload) => pglite.query("SELECT pg_notify($1, $2)", [signalChannel, payload])),
      close: async () => {
        follower.listening(false);
        probes.release();
        await unlisten();
      },
    };
  };
