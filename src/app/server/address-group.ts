import { isIPv4, isIPv6 } from "node:net";
import ipaddr from "ipaddr.js";

/**
 * The address by which callers are counted. Of an IPv6 address the first 64 bits: one household or machine has all of those
 * below. An IPv4 address written as IPv6 (RFC 4291, 2.5.5.2) is the IPv4 address. null: this is not an address.
 */
export function addressGroup(text: string | undefined): string | null {
  if (text === undefined) return null;
  if (isIPv4(text)) return text;
  const [bare = ""] = text.split("%");
  if (!isIPv6(bare)) return null;
  // Written without dots, because ipaddr.js takes ::192.0.2.7 for a mapped address.
  const address = ipaddr.IPv6.parse(new URL(`http://[${bare}]`).hostname.slice(1, -1));
  if (address.isIPv4MappedAddress()) return address.toIPv4Address().toString();
  const network = address.parts.slice(0, 4).map((group) => group.toString(16));
  return `${network.join(":")}::/64`;
}
