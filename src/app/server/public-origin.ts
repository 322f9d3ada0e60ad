import type { FastifyInstance, FastifyRequest } from "fastify";
import { memoizeLatest } from "../../domain/memoize.js";

declare module "fastify" {
  interface FastifyRequest {
    /** Where readers reach the service, as all absolute links begin: `https://plans.example`, without a slash at the end. */
    publicOrigin: string;
  }
}

/** The header that says where a request was sent is no name and port (RFC 9112, 3.2: such a request is answered with 400). */
class BadHost extends Error {
  override readonly name = "BadHost";
  readonly statusCode = 400;
}

/**
 * Gives every request the origin of its links: the operator's word, and where there is none what the request says it was sent to. That is the
 * caller's word, and an answer with it may be kept by a cache before the service: see docs/operations.md.
 */
export function givePublicOrigin(app: FastifyInstance, publicUrl: string | null): void {
  app.decorateRequest("publicOrigin", "");
  app.addHook("onRequest", (request, _reply, done) => {
    if (publicUrl !== null) {
      request.publicOrigin = publicUrl;
      return done();
    }
    const { protocol, host } = request;
    // HTTP/1.0 has none.
    const asked = host === "" ? null : originOf(protocol, host);
    // Also in what says that the header is wrong.
    request.publicOrigin = asked ?? ownOrigin(request);
    if (asked !== null || host === "") return done();
    done(new BadHost("The Host header must be a host name or an address, and a port if it is not the usual one."));
  });
}

/** Nothing but letters, digits and `.-_~` in a name (RFC 3986 has more, and no host is called so), or an address in brackets. */
const wellFormed = /^([A-Za-z0-9._~-]{1,253}|\[[0-9A-Fa-f:.]{2,45}\])(:\d{1,5})?$/;

/** null: it is no host. */
export const originOf = (protocol: string, host: string): string | null =>
  wellFormed.test(host) ? parsedOrigin(`${protocol === "https" ? "https" : "http"}://${host}`) : null;

/** A service has few names; parsing one takes longer than the rest of a ready answer's address. */
const parsedOrigin = memoizeLatest(
  "origins",
  64,
  (text: string) => text,
  (text) => (URL.canParse(text) ? new URL(text).origin : null),
);

/** The address at which the connection came in. */
function ownOrigin({ protocol, socket: { localAddress = "localhost", localPort } }: FastifyRequest): string {
  const address = localAddress.includes(":") ? `[${localAddress.split("%")[0] ?? ""}]` : localAddress;
  return originOf(protocol, `${address}${localPort === undefined ? "" : `:${localPort}`}`) ?? "http://localhost";
}
