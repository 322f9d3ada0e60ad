import fc from "fast-check";
import ipaddr from "ipaddr.js";
import { describe, expect, it } from "vitest";
import { addressGroup } from "../../../src/app/server/address-group.js";

/** Judge: the package ipaddr.js, which reads and writes every spelling of an address. */
function judged(address: string): string {
  const read = ipaddr.process(address);
  if (read instanceof ipaddr.IPv4) return read.toString();
  return `${read.parts
    .slice(0, 4)
    .map((part) => part.toString(16))
    .join(":")}::/64`;
}

describe("the address a caller is counted by", () => {
  it("is the IPv4 address, or the first 64 bits of an IPv6 address, however it is spelt", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.ipV4(),
          fc.ipV6(),
          fc.ipV4().map((four) => `::ffff:${four}`),
        ),
        (address) => {
          // RFC 4291, 2.5.5.1, deprecated; the judge takes it for the mapped address of 2.5.5.2, which it is not.
          fc.pre(!/^::\d+(\.\d+){3}$/.test(address));
          expect(addressGroup(address)).toBe(judged(address));
          if (!address.includes(":")) return;
          const parsed = ipaddr.IPv6.parse(address);
          for (const spelling of [parsed.toRFC5952String(), parsed.toNormalizedString(), address.toUpperCase()]) {
            expect(addressGroup(spelling)).toBe(judged(address));
          }
        },
      ),
    );
  });

  it.each([
    // RFC 3849 and RFC 5737 keep these for examples.
    ["2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64"],
    ["2001:db8:1:2::", "2001:db8:1:2::/64"],
    ["2001:db8::9", "2001:db8:0:0::/64"],
    ["::1", "0:0:0:0::/64"],
    ["::192.0.2.7", "0:0:0:0::/64"],
    ["::ffff:192.0.2.7", "192.0.2.7"],
    ["::ffff:c000:207", "192.0.2.7"],
    ["fe80::1%eth0", "fe80:0:0:0::/64"],
    ["192.0.2.7", "192.0.2.7"],
  ])("of %s it is %s", (address, group) => expect(addressGroup(address)).toBe(group));

  it.each(["", "unknown", "192.0.2", "192.0.2.7:443", "[2001:db8::1]", "1:2:3", "localhost", "%", undefined])(
    "does not come of %j",
    (text) => expect(addressGroup(text)).toBeNull(),
  );
});
