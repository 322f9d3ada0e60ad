import { describe, expect, it } from "vitest";
import { publicLookup, sendWebhook } from "../../../src/app/outgoing/send-webhook.js";
import { isPublicAddress, urlProblems } from "../../../src/services/webhooks/webhook-address.js";

/** IANA's registries of special-purpose addresses (RFC 6890) and RFC 4291; one address inside each. From memory. */
const notPublic = [
  ...["0.0.0.0", "10.1.2.3", "100.64.0.1", "127.0.0.1", "127.255.255.254", "169.254.169.254", "172.16.0.1"],
  ...["172.31.255.255", "192.0.0.8", "192.0.2.1", "192.168.1.1", "198.18.0.1", "198.51.100.1", "203.0.113.1"],
  ...["224.0.0.1", "240.0.0.1", "255.255.255.255"],
  ...["::", "::1", "::ffff:10.0.0.1", "::ffff:127.0.0.1", "::ffff:a9fe:a9fe", "::ffff:8.8.8.8", "64:ff9b::a00:1"],
  ...["fe80::1", "fc00::1", "fd12:3456::1", "ff02::1", "2001:db8::1", "2002:a00:1::1", "2001::1", "100::1", "3fff::1"],
];

describe("the address of a webhook", () => {
  it.each(notPublic)("%s is not public, and is never connected to", async (address) => {
    expect(isPublicAddress(address)).toBe(false);
    const url = `https://${address.includes(":") ? `[${address}]` : address}/`;
    expect(urlProblems(url, false, ["url"])).toMatchObject([{ code: "BAD_SHAPE", path: ["url"] }]);
    expect(await sendWebhook({ url, headers: {}, body: "" }, { allowPrivate: false })).toEqual({
      answered: false,
      error: "only https: to a public address is allowed",
    });
  });

  it.each(["1.1.1.1", "172.32.0.1", "100.128.0.1", "2606:4700::1111", "2a00:1450::1"])("%s is public", (address) => {
    expect(isPublicAddress(address)).toBe(true);
  });

  it.each([
    "http://2130706433/",
    "http://0x7f.1/",
    "http://0177.0.0.1/",
    "http://127.1/",
    "https://localhost/",
    "https://a.localhost./",
  ])("is refused in disguise: %s", (url) => {
    expect(urlProblems(url.replace("http:", "https:"), false, [])).toHaveLength(1);
  });

  it("is looked at when it is connected to: a name that leads to this machine is refused there", async () => {
    const sent = await sendWebhook({ url: "https://localhost:1/", headers: {}, body: "" }, { allowPrivate: false });
    expect(sent).toEqual({ answered: false, error: "the host leads to an address of a private network" });
    const found = await new Promise((done) => publicLookup("localhost", { all: true }, (error) => done(error?.name)));
    expect(found).toBe("PrivateAddress");
  });

  it("may be private and plain where the operator says so", () => {
    expect(urlProblems("http://127.0.0.1:8080/hook", true, [])).toEqual([]);
    expect(urlProblems("http://hooks.example.org/", false, [])).toHaveLength(1);
    expect(urlProblems("https://hooks.example.org/", false, [])).toEqual([]);
  });
});
