import { hash, randomInt } from "node:crypto";
import { crc32 } from "node:zlib";

const digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
const prefix = "prepwright_";
const idLength = 8;
/** 62 to the 30th is more than 178 bits. */
const secretLength = 30;
const checkLength = 6;

/** Every token has this shape; a scanner for leaked secrets can look for it. The last six digits are a checksum. */
export const tokenPattern = /^prepwright_[0-9A-Za-z]{44}$/;

/** A token taken apart. The id may be shown and stored, the secret may not. */
interface TokenParts {
  readonly id: string;
  readonly secret: string;
}

/** A new id and secret, from the generator of the operating system. */
export const newTokenParts = (): TokenParts => ({ id: randomDigits(idLength), secret: randomDigits(secretLength) });

/** `prepwright_`, the id, the secret, and the CRC-32 of all that, in base 62. */
export function tokenText({ id, secret }: TokenParts): string {
  const checked = prefix + id + secret;
  return checked + checksum(checked);
}

/** null: not a token, or one with a slip of the pen. */
export function readTokenText(text: string): TokenParts | null {
  if (!tokenPattern.test(text)) return null;
  const checked = text.slice(0, -checkLength);
  if (text.slice(-checkLength) !== checksum(checked)) return null;
  const id = checked.slice(prefix.length, prefix.length + idLength);
  return { id, secret: checked.slice(prefix.length + idLength) };
}

/** What is stored of a secret. It is random and long, so one round of SHA-256 is as good as a slow hash. */
export const secretHash = (secret: string): string => hash("sha256", secret);

/** From the generator of the operating system. */
export const randomDigits = (length: number): string =>
  Array.from({ length }, () => digits.charAt(randomInt(digits.length))).join("");

function checksum(text: string): string {
  let rest = crc32(text);
  let written = "";
  for (let place = 0; place < checkLength; place += 1) {
    written = digits.charAt(rest % digits.length) + written;
    rest = Math.floor(rest / digits.length);
  }
  return written;
}
