/** Part of so many bytes, both ends counted in. */
interface ByteRange {
  readonly from: number;
  readonly to: number;
}

/**
 * The one range that `Range` asks for (RFC 9110, 14.1.2 and 14.2). null: all of it is to be sent, as where several are asked for or the
 * header cannot be read. OUTSIDE: there is nothing there, which is 416.
 */
export function byteRange(header: string | undefined, size: number): ByteRange | "OUTSIDE" | null {
  const [, first = "", last = ""] = /^bytes=[ \t]*(\d{0,15})-(\d{0,15})[ \t]*$/i.exec(header ?? "") ?? [];
  if (first === "" && last === "") return null;
  if (first === "") {
    const count = Number(last);
    return count === 0 || size === 0 ? "OUTSIDE" : { from: Math.max(0, size - count), to: size - 1 };
  }
  const from = Number(first);
  const to = last === "" ? size - 1 : Math.min(Number(last), size - 1);
  if (last !== "" && Number(last) < from) return null;
  return from >= size ? "OUTSIDE" : { from, to };
}
