import { isIP } from "node:net";
import ipaddr from "ipaddr.js";
import type { Path, Problem } from "../../domain/problem.js";

/** The longest address of a webhook, in characters. */
const longestUrl = 2000;

/** Of IPv6 only global unicast is public: mapped and translated IPv4, loopback, link-local and unique local addresses lie outside. */
const globalUnicast = ipaddr.IPv6.parseCIDR("2000::/3");

/** Inside global unicast: protocol assignments and tunnels of IPv4 (Teredo), and documentation (RFC 9637). */
const notPublic = ["2001::/23", "3fff::/20"].map((network) => ipaddr.IPv6.parseCIDR(network));

/** Whether an IP address is on the open internet, as text, without brackets. */
export function isPublicAddress(address: string): boolean {
  if (isIP(address) === 0) return false;
  const parsed = ipaddr.parse(address);
  if (parsed.range() !== "unicast") return false;
  if (parsed instanceof ipaddr.IPv4) return true;
  return parsed.match(globalUnicast) && !notPublic.some((network) => parsed.match(network));
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
