import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Readable } from "node:stream";

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

/** Milliseconds between two looks at who is late, or less where less is allowed. */
const pause = 1_000;

/** A body that is being read. */
interface Coming {
  readonly reply: FastifyReply;
  readonly payload: Readable;
  readonly until: number;
}

/** Ends a request with 408 whose body has not come within `milliseconds`, or up to a second later. `now` in milliseconds. */
export function limitBodyTime(app: FastifyInstance, milliseconds: number, now: () => number): void {
  // One look at all of them: a timer for each would cost more than what is asked.
  const coming = new Map<FastifyRequest, Coming>();
  const end = ({ reply, payload }: Coming): void => {
    // Answered already, perhaps because there is too much of it: nobody waits for the rest.
    if (reply.sent || payload.listenerCount("error") === 0) return void reply.raw.socket?.destroySoon();
    // Whoever is in the middle of a body cannot begin another request.
    void reply.header("connection", "close");
    payload.emit("error", new BodyTooSlow(`The body did not come within ${milliseconds / 1000} seconds.`));
  };
  const look = setInterval(
    () => {
      const at = now();
      for (const [request, each] of coming) {
        // They are in the order in which they began.
        if (each.until > at) return;
        coming.delete(request);
        end(each);
      }
    },
    Math.min(pause, milliseconds / 4),
  );
  look.unref();
  app.addHook("onClose", (_app, done) => {
    clearInterval(look);
    done();
  });
  app.addHook("preParsing", (request, reply, payload, done) => {
    const { headers, routeOptions } = request;
    const hasBody = headers["transfer-encoding"] !== undefined || Number(headers["content-length"] ?? 0) > 0;
    if (hasBody && routeOptions.config.upload !== true) {
      coming.set(request, { reply, payload, until: now() + milliseconds });
      const forget = (): void => void coming.delete(request);
      payload.once("end", forget).once("close", forget);
    }
    done(null, payload);
  });
}
