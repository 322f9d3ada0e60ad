/** The most of each that a body of JSON may hold. Texts may be long; what has many values takes a hundred times as long to read. */
const jsonLimits = { values: 20_000, levels: 100 } as const;

/** What a body has more of than it may. */
export interface JsonExcess {
  readonly what: keyof typeof jsonLimits;
  readonly limit: number;
}

const code = (sign: string): number => sign.charCodeAt(0);
const [quote, backslash, comma] = [code('"'), code("\\"), code(",")];
const [openList, closeList, openObject, closeObject] = [code("["), code("]"), code("{"), code("}")];

/** Counts values and levels before any of them is built; null: they are few enough. What is no JSON is left to who reads it. */
export function countJson(bytes: Uint8Array): JsonExcess | null {
  // A value takes a byte at least: no short body has too many.
  if (bytes.length <= jsonLimits.levels) return null;
  let [values, levels, isText] = [1, 0, false];
  for (let at = 0; at < bytes.length; at++) {
    const byte = bytes[at];
    if (isText) {
      if (byte === backslash) at += 1;
      else if (byte === quote) isText = false;
    } else if (byte === quote) isText = true;
    else if (byte === comma) values += 1;
    else if (byte === openList || byte === openObject) {
      values += 1;
      levels += 1;
      if (levels > jsonLimits.levels) return { what: "levels", limit: jsonLimits.levels };
    } else if (byte === closeList || byte === closeObject) levels -= 1;
    if (values > jsonLimits.values) return { what: "values", limit: jsonLimits.values };
  }
  return null;
}

export const excessText = ({ what, limit }: JsonExcess): string =>
  what === "levels"
    ? `The body nests lists and objects more than ${String(limit)} deep.`
    : `The body holds more than ${String(limit)} values. Request less, or use several requests.`;
