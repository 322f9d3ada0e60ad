import { BlockList, isIP } from "node:net";
import type { ClientSettings } from "../setup/environment.js";

const loopback = new BlockList();
loopback.addSubnet("127.0.0.0", 8, "ipv4");
loopback.addAddress("::1", "ipv6");

/** What to say before a token goes where others may read it on the way; null: it does not. To this machine itself nobody is between. */
export function plainTokenWarning({ server, token }: ClientSettings): string | null {
  if (token === null || server === null || !URL.canParse(server)) return null;
  const { protocol, hostname } = new URL(server);
  if (protocol !== "http:" || isThisMachine(hostname)) return null;
  return `Warning: the access token goes to ${hostname} over plain http, where anybody on the way can read it. Use https://, and make a new token.`;
}

function isThisMachine(hostname: string): boolean {
  const address = hostname.replace(/^\[(.*)\]$/, "$1");
  const family = isIP(address);
  if (family === 0) return /^(.+\.)?localhost\.?$/.test(address);
  return loopback.check(address, family === 4 ? "ipv4" : "ipv6");
}
