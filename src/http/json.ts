import { countJson, type JsonExcess } from "./json-size.js";

/** Whether a body is said to be in UTF-8, or nothing is said. JSON has one encoding; other charsets are refused instead of misread. */
export function isUtf8(contentType: string | undefined): boolean {
  const charset = /charset\s*=\s*"?([^\s;"]+)/i.exec(contentType ?? "")?.[1];
  return charset === undefined || charset.toLowerCase() === "utf-8";
}

const utf8 = new TextDecoder("utf-8", { fatal: true });

/** `excess` null: it is no JSON in UTF-8. Otherwise it was not read, for it has too much in it. */
type JsonRead =
  { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly excess: JsonExcess | null };

/** Reads UTF-8 JSON and nothing else. */
export function readJson(bytes: Buffer): JsonRead {
  const excess = countJson(bytes);
  if (excess !== null) return { ok: false, excess };
  try {
    return { ok: true, value: JSON.parse(utf8.decode(bytes)) };
  } catch {
    return { ok: false, excess: null };
  }
}
