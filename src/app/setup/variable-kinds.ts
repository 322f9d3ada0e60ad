import { isIPv4, isIPv6 } from "node:net";
import { z } from "zod";
import { originOf } from "../server/public-origin.js";

export const levels = ["fatal", "error", "warn", "info", "debug", "trace", "silent"] as const;

export const serverUrl = z.string().regex(/^postgres(ql)?:\/\/\S+$/, "must begin with postgres:// or postgresql://");

/** What the framework's reader of proxies' headers takes. */
export function isNetwork(text: string): boolean {
  if (["loopback", "linklocal", "uniquelocal"].includes(text)) return true;
  const [address = "", prefix, ...more] = text.split("/");
  const bits = isIPv4(address) ? 32 : isIPv6(address) ? 128 : -1;
  if (bits === -1 || more.length > 0) return false;
  return prefix === undefined || (/^\d{1,3}$/.test(prefix) && Number(prefix) <= bits);
}

export const points = z
  .string()
  .regex(/^\d{1,12}$/, "must be a whole number of points a minute; 0 is no limit")
  .transform(Number);

export const portNumber = z
  .string()
  .regex(/^\d{1,5}$/, "must be a whole number from 0 to 65535; 0 picks a free port")
  .transform(Number)
  .refine((port) => port <= 65_535, "must be a whole number from 0 to 65535; 0 picks a free port");

export const hostName = z.string().regex(/^[A-Za-z0-9.:-]+$/, "must be a host name or an address");

/** An origin: links of pages are from its root, so a service below a path of it would have broken ones. */
export const publicUrl = z
  .string()
  .refine(isOrigin, "must be https:// or http://, a host and at most a port: https://plans.example.org")
  .transform((text) => new URL(text).origin);

function isOrigin(text: string): boolean {
  if (!/^https?:\/\/[^\s/@?#\\]+\/?$/i.test(text) || !URL.canParse(text)) return false;
  return originOf("http", new URL(text).host) !== null;
}

export const seconds = (least: number, most: number) => {
  const message = `must be a whole number of seconds from ${least} to ${most}`;
  return z
    .string()
    .regex(/^\d{1,4}$/, message)
    .transform((text) => Number(text) * 1000)
    .refine((milliseconds) => milliseconds >= least * 1000 && milliseconds <= most * 1000, message);
};

/** A switch: `1` or `0`. */
export const flag = z.enum(["0", "1"], "must be 1 or 0").transform((text) => text === "1");

export const folder = z.string().min(1);

/** A whole number within bounds; `rule` says which, for whoever wrote another. */
export const wholeNumber = (pattern: RegExp, rule: string) => z.string().regex(pattern, rule).transform(Number);

/** Texts with commas between. */
export const listOf = (isRight: (text: string) => boolean, rule: string) =>
  z
    .string()
    .transform((text) => text.split(",").map((each) => each.trim()))
    .refine((texts) => texts.every(isRight), rule);
