import type { FastifyInstance } from "fastify";

declare module "fastify" {
  interface FastifyContextConfig {
    /** The body is a file, which may take as long as any request may. */
    upload?: boolean;
  }
}

/** Milliseconds: for the head of a request, for its body, and for a file that is uploaded. */
export const requestTimes = { head: 10_000, body: 30_000, upload: 600_000 } as const;

class BodyTooSlow extends Error {
  override readonly name = "BodyTooSlow";
  readonly statusCode = 408;
}

/** Ends a request with 408 whose body has not come within `milliseconds`. */
export function limitBodyTime(app: FastifyInstance, milliseconds: number): void {
  app.addHook("preParsing", (request, reply, payload, done) => {
    const { headers, routeOptions } = request;
    const hasBody = headers["transfer-encoding"] !== undefined || Number(headers["content-length"] ?? 0) > 0;
    if (hasBody && routeOptions.config.upload !== true) {
      const timer = setTimeout(() => {
        // Answered already, perhaps because there is too much of it: nobody waits for the rest.
        if (reply.sent || payload.listenerCount("error") === 0) return request.raw.socket.destroySoon();
        // Whoever is in the middle of a body cannot begin another request.
        void reply.header("connection", "close");
        payload.emit("error", new BodyTooSlow(`The body did not come within ${milliseconds / 1000} seconds.`));
      }, milliseconds);
      const stop = (): void => clearTimeout(timer);
      payload.once("end", stop).once("close", stop);
    }
    done(null, payload);
  });
}
