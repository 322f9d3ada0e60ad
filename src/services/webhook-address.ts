import { BlockList, isIP } from "node:net";
import type { Path, Problem } from "../domain/problem.js";

/** The longest address of a webhook, in characters. */
export const longestUrl = 2000;

/** IPv4 addresses that are not on the open internet: the special-purpose registry of IANA (RFC 6890), and multicast. */
const notPublic4 = new BlockList();
for (const [net, bits] of [
  ["0.0.0.0", 8],
  ["10.0.0.0", 8],
  ["100.64.0.0", 10],
  ["127.0.0.0", 8],
  ["169.254.0.0", 16],
  ["172.16.0.0", 12],
  ["192.0.0.0", 24],
  ["192.0.2.0", 24],
  ["192.88.99.0", 24],
  ["192.168.0.0", 16],
  ["198.18.0.0", 15],
  ["198.51.100.0", 24],
  ["203.0.113.0", 24],
  ["224.0.0.0", 4],
  ["240.0.0.0", 4],
] as const) {
  notPublic4.addSubnet(net, bits, "ipv4");
}

/** Of IPv6 only global unicast is public; this leaves out mapped and translated IPv4, loopback, link-local and unique local. */
const unicast6 = new BlockList();
unicast6.addSubnet("2000::", 3, "ipv6");

/** Inside global unicast: protocol assignments and tunnels of IPv4 (Teredo, 6to4), and documentation. */
const notPublic6 = new BlockList();
for (const [net, bits] of [
  ["2001::", 23],
  ["2001:db8::", 32],
  ["2002::", 16],
  ["3fff::", 20],
] as const) {
  notPublic6.addSubnet(net, bits, "ipv6");
}

/** Whether an IP address is on the open internet, as text, without brackets. */
export function isPublicAddress(address: string): boolean {
  const family = isIP(address);
  if (family === 4) return !notPublic4.check(address, "ipv4");
  return family === 6 && unicast6.check(address, "ipv6") && !notPublic6.check(address, "ipv6");
}

/** The IP address that an address of the web names outright, or null: it names a host. */
export function literalAddress({ hostname }: URL): string | null {
  const bare = hostname.startsWith("[") ? hostname.slice(1, -1) : hostname;
  return isIP(bare) === 0 ? null : bare;
}

/**
 * What is wrong with an address that is to be told of changes. Where a host name leads is only known when it is connected to,
 * and is looked at then.
 */
export function urlProblems(text: string, allowPrivate: boolean, path: Path): readonly Problem[] {
  if (text.length > longestUrl) {
    return [{ code: "TOO_LARGE", path, what: "characters", size: text.length, limit: longestUrl }];
  }
  const wrong = (got: string): readonly Problem[] => [
    { code: "BAD_SHAPE", path, expected: `the full address of a public host, beginning with https://`, got },
  ];
  const url = URL.canParse(text) ? new URL(text) : null;
  if (url === null) return wrong("something else");
  if (url.protocol !== "https:" && !(allowPrivate && url.protocol === "http:")) return wrong(url.protocol);
  if (url.username !== "" || url.password !== "") return wrong("a user name or a password in it");
  const literal = literalAddress(url);
  if (!allowPrivate && literal !== null && !isPublicAddress(literal)) return wrong("an address of a private network");
  if (!allowPrivate && /(^|\.)localhost\.?$/.test(url.hostname)) return wrong("this machine itself");
  return [];
}
