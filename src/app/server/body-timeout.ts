import type { FastifyInstance, FastifyReply, RequestPayload } from "fastify";
import type { Socket } from "node:net";

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

/** Milliseconds between two looks at who is late; less where less is allowed. */
const pause = 1_000;

/** A body that was being read when it was last looked at. */
interface Coming {
  readonly reply: FastifyReply;
  readonly payload: RequestPayload;
  readonly until: number;
}

/** Ends a request with 408 whose body has not come within `milliseconds`, or up to a second later. `now` in milliseconds. */
export function addBodyTimeout(app: FastifyInstance, milliseconds: number, now: () => number): void {
  // The last body on each connection, and one look at all: a timer for each would take longer than many an answer.
  const coming = new Map<Socket, Coming>();
  const look = setInterval(
    () => {
      for (const [socket, { reply, payload, until }] of coming) {
        const isOver = payload.readableEnded === true || payload.destroyed === true || socket.destroyed;
        if (!isOver && until > now()) continue;
        coming.delete(socket);
        if (!isOver) end(reply, payload, milliseconds);
      }
    },
    Math.min(pause, milliseconds / 4),
  );
  look.unref();
  app.addHook("onClose", (_app, done) => {
    clearInterval(look);
    done();
  });
  app.addHook("preParsing", ({ headers, routeOptions, raw }, reply, payload, done) => {
    const hasBody = headers["transfer-encoding"] !== undefined || Number(headers["content-length"] ?? 0) > 0;
    if (hasBody && routeOptions.config.upload !== true) {
      coming.set(raw.socket, { reply, payload, until: now() + milliseconds });
    }
    done(null, payload);
  });
}

function end(reply: FastifyReply, payload: RequestPayload, milliseconds: number): void {
  // Answered already, perhaps because there is too much of it: nobody waits for the rest.
  if (reply.sent || payload.listenerCount("error") === 0) return reply.request.raw.socket.destroySoon();
  // Whoever is in the middle of a body cannot begin another request.
  void reply.header("connection", "close");
  payload.emit("error", new BodyTooSlow(`The body did not come within ${milliseconds / 1000} seconds.`));
}
