import type { FastifyRequest } from "fastify";
import { addressGroup } from "./address-group.js";

/**
 * By what a caller without a token is counted. What a trusted proxy says of it counts if it is an address; else the callers
 * behind that proxy are counted as one.
 */
export function callerAddress({ ip, socket }: FastifyRequest): string {
  return addressGroup(ip) ?? addressGroup(socket.remoteAddress) ?? "unknown";
}
