import type { IncomingHttpHeaders } from "node:http";
import Negotiator from "negotiator";

/**
 * The media type that a client likes best of those that there are, by its `Accept` (RFC 9110, 12.5.1); of equal weight and equally
 * precise, the first. An empty `Accept` says as little as none. undefined: it accepts none of them.
 */
export const acceptedType = ({ accept }: IncomingHttpHeaders, types: readonly string[]): string | undefined =>
  new Negotiator({ headers: { accept: accept === "" ? undefined : accept } }).mediaTypes([...types])[0];
