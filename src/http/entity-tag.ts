import { createHash } from "node:crypto";

/** Of the bytes themselves, so that whatever went into them is in the tag. */
export const tagOf = (body: Buffer): string =>
  `"${createHash("sha256").update(body).digest("base64url").slice(0, 27)}"`;

/** RFC 9110 13.1.2: compared weakly, so a tag that a proxy has weakened still counts. */
export function isKnownTag(ifNoneMatch: string | undefined, etag: string): boolean {
  if (ifNoneMatch === undefined) return false;
  if (ifNoneMatch.trim() === "*") return true;
  return (ifNoneMatch.match(/(?:W\/)?"[^"]*"/g) ?? []).some((tag) => tag.replace(/^W\//, "") === etag);
}
