import { isIPv4, isIPv6 } from "node:net";

/**
 * The address by which callers are counted. Of an IPv6 address the first 64 bits: one household or machine has all of those
 * below. An IPv4 address written as IPv6 (RFC 4291, 2.5.5.2) is the IPv4 address. null: this is not an address.
 */
export function addressGroup(text: string | undefined): string | null {
  if (text === undefined) return null;
  if (isIPv4(text)) return text;
  const address = text.split("%")[0] ?? "";
  if (!isIPv6(address)) return null;
  const groups = groupsOf(address);
  const [a = 0, b = 0] = groups.slice(6);
  const mapped = groups.slice(0, 5).every((group) => group === 0) && groups[5] === 0xffff;
  if (mapped) return [a >> 8, a & 0xff, b >> 8, b & 0xff].join(".");
  const network = groups.slice(0, 4).map((group) => group.toString(16));
  return `${network.join(":")}::/64`;
}

/** The eight groups of an IPv6 address in any spelling (RFC 4291, 2.2). */
function groupsOf(address: string): readonly number[] {
  const [before = [], after = []] = address.split("::").map((part) => part.split(":").flatMap(groupOf));
  return [...before, ...Array<number>(8 - before.length - after.length).fill(0), ...after];
}

/** One group; none of nothing; two where the last 32 bits are written as IPv4. */
function groupOf(text: string): readonly number[] {
  if (text === "") return [];
  if (!text.includes(".")) return [Number.parseInt(text, 16)];
  const [a = 0, b = 0, c = 0, d = 0] = text.split(".").map(Number);
  return [a * 256 + b, c * 256 + d];
}
