import type { ServerResponse } from "node:http";

/** Tells when whoever asked has gone before the whole answer was sent. */
export function callerDisconnected(response: Pick<ServerResponse, "once" | "writableFinished">): AbortSignal {
  const gone = new AbortController();
  response.once("close", () => {
    if (!response.writableFinished) gone.abort();
  });
  return gone.signal;
}
