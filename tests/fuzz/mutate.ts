import type { Dice } from "../kit/arbitrary/dice.js";

type Mutation = (bytes: Buffer, dice: Dice) => Buffer;

const at = (bytes: Buffer, { roll }: Dice): number => roll(Math.max(1, bytes.length));

/** A piece of text in the middle of the file. */
const insert = (bytes: Buffer, dice: Dice, text: string | Buffer): Buffer => {
  const place = at(bytes, dice);
  return Buffer.concat([bytes.subarray(0, place), Buffer.from(text as string), bytes.subarray(place)]);
};

/** What happens to files: bits fall over, lines break off, programs save in other encodings, and people mean harm. */
export const mutations: Readonly<Record<string, Mutation>> = {
  "bits fall over": (bytes, dice) => {
    const changed = Buffer.from(bytes);
    for (let turn = 0; turn <= dice.roll(8); turn += 1) {
      const place = at(changed, dice);
      if (changed.length > 0) changed[place] = (changed[place] ?? 0) ^ (1 << dice.roll(8));
    }
    return changed;
  },
  "breaks off": (bytes, dice) => bytes.subarray(0, at(bytes, dice)),
  "a piece stands twice": (bytes, dice) => {
    const from = at(bytes, dice);
    const piece = bytes.subarray(from, from + dice.roll(400));
    return Buffer.concat([bytes.subarray(0, from), piece, piece, bytes.subarray(from)]);
  },
  "a piece is missing": (bytes, dice) => {
    const from = at(bytes, dice);
    return Buffer.concat([bytes.subarray(0, from), bytes.subarray(from + dice.roll(200))]);
  },
  "saved as Latin-1": (bytes) => Buffer.from(bytes.toString("utf8"), "latin1"),
  "saved as UTF-16": (bytes) =>
    Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(bytes.toString("utf8"), "utf16le")]),
  "other line ends": (bytes, dice) =>
    Buffer.from(bytes.toString("utf8").replaceAll("\n", dice.pick(["\r\n", "\r", "\n\n", "\u2028"]))),
  "other delimiters": (bytes, dice) =>
    Buffer.from(bytes.toString("utf8").replaceAll(",", dice.pick([";", "\t", "|", ",,"]))),
  "strange characters": (bytes, dice) =>
    insert(
      bytes,
      dice,
      dice.pick([
        "\0",
        "\ufeff",
        "\u202e",
        "\ud800",
        "½",
        "⁄",
        '"',
        "'",
        "\\",
        "%",
        "&amp;&#0;",
        "<!--",
        "]]>",
        "{{",
        "- ",
        ": ",
        "\t",
      ]),
    ),
  "a number without end": (bytes, dice) =>
    insert(bytes, dice, dice.pick(["9".repeat(400), "1e308", "-0", "NaN", "Infinity", "0x10", "1/0", "1.5.5"])),
  "a nesting bomb": (bytes, dice) => {
    const depth = 1 + dice.roll(20_000);
    return insert(bytes, dice, dice.pick(["[", '{"a":', "<div>", "- - ", "((", "a: &a [*a, "]).repeat(depth));
  },
  "an entity bomb": (bytes, dice) => {
    const names = Array.from(
      { length: 9 },
      (_, level) =>
        `a${String(level)}: &a${String(level)} [${level === 0 ? "x" : `*a${String(level - 1)},`.repeat(9)}]`,
    );
    return insert(
      bytes,
      dice,
      dice.pick([`\n${names.join("\n")}\n`, '<!DOCTYPE x [<!ENTITY a "&a;&a;">]>&a;', "&amp;".repeat(2_000)]),
    );
  },
  "a very long line": (bytes, dice) => insert(bytes, dice, "x".repeat(10_000 + dice.roll(1_500_000))),
};
