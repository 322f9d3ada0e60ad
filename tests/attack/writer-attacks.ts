import { crc32 } from "node:zlib";
import { around, get, graphql, listOf, post, times, type AttackRequest, type Target } from "./attack-request.js";

const authorised = (request: AttackRequest): AttackRequest => ({ ...request, authorised: true });

/** What a name in a zip file says of what is behind it. */
interface Claim {
  readonly name: string;
  readonly bytes?: Buffer;
  /** Unpacked. Left out: as many as there are. */
  readonly says?: number;
}

/** A zip file (APPNOTE 6.3.10, 4.3) of stored entries, which says of each what it is told to. */
function zip(claims: readonly Claim[], entries = claims.length): Buffer {
  const local: Buffer[] = [];
  const central: Buffer[] = [];
  let at = 0;
  for (const { name, bytes = Buffer.alloc(0), says = bytes.length } of claims) {
    const written = Buffer.from(name);
    const facts = Buffer.alloc(22);
    facts.writeUInt16LE(20, 0);
    facts.writeUInt32LE(crc32(bytes), 10);
    facts.writeUInt32LE(bytes.length, 14);
    facts.writeUInt32LE(says, 18);
    const length = Buffer.alloc(4);
    length.writeUInt16LE(written.length, 0);
    const head = Buffer.concat([Buffer.from("504b0304", "hex"), facts, length, written]);
    const rest = Buffer.alloc(14);
    rest.writeUInt32LE(at, 10);
    local.push(head, bytes);
    central.push(Buffer.from("504b01021400", "hex"), facts, length.subarray(0, 2), rest, written);
    at += head.length + bytes.length;
  }
  const directory = Buffer.concat(central);
  const end = Buffer.alloc(22);
  end.writeUInt32BE(0x504b0506, 0);
  end.writeUInt16LE(Math.min(entries, 0xffff), 8);
  end.writeUInt16LE(Math.min(entries, 0xffff), 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...local, directory, end]);
}

const manifest = (value: unknown): Claim => ({
  ...{ name: "manifest.json", bytes: Buffer.from(typeof value === "string" ? value : JSON.stringify(value)) },
});

/** Archives that lead elsewhere, claim what they do not hold, or hold too much. */
const archives = (publisher: string): Readonly<Record<string, Buffer>> => {
  const file = { name: "publisher.json", bytes: 2, sha256: "0".repeat(64) };
  return {
    nothing: Buffer.alloc(0),
    "an end alone": zip([], 0),
    "5 MiB of ends": Buffer.concat(listOf(240_000, () => zip([], 0))),
    "a directory that is not there": zip([], 50_000),
    "60,000 names": zip(listOf(60_000, (at) => ({ name: `plans/a/${String(at + 1)}.json` }))),
    "the way to the root": zip([{ name: "../../../../etc/passwd" }]),
    "a name of a bell": zip([{ name: "plans/\u0007/1.json" }]),
    "four gigabytes in no bytes": zip([manifest({}), { name: "publisher.json", says: 0xffff_fffe }]),
    "one name twice": zip([manifest({}), manifest({})]),
    "a list of 5 MiB that is open": zip([manifest("[".repeat(5_000_000))]),
    "a list of 300,000 keys": zip([manifest(`{${times(300_000, (at) => `"k${String(at)}":1`, ",")}}`)]),
    "a list of 40,000 files": zip([
      manifest({ version: 1, publisher, leftOut: [], files: listOf(40_000, () => file) }),
    ]),
    "a version of the future": zip([manifest({ version: 9e99, publisher })]),
    "3 MiB of noise": Buffer.from(listOf(3_000_000, (at) => (at * 7_919) % 251)),
  };
};

/** Texts of writers in which a reader of Markdown that tries again and again would be lost. */
const writings: readonly string[] = [
  "*".repeat(20_000),
  "*a _b ".repeat(4_000),
  "**a*".repeat(5_000),
  "[".repeat(20_000),
  "[a](".repeat(5_000),
  "[a](https://a.example/".repeat(900),
  "\\".repeat(20_000),
  "- ".repeat(10_000),
  listOf(140, (at) => `${"  ".repeat(at)}- a`).join("\n"),
  "1. a\n".repeat(4_000),
  "<a ".repeat(6_000),
  "&#x".repeat(6_000),
  `a${" ".repeat(19_000)}b`,
  "a\n\n".repeat(6_000),
];

const lists = "introduction notes tips".split(" ");

const planOf = (text: string, at: number): string =>
  `kind: plan\nslug: w${String(at)}\ntitle: W\nlocale: en\nmeasured-in: metric\nserves: 2\n` +
  `${lists.map((key) => `${key}: ${JSON.stringify(text)}\n`).join("")}tags: [${times(200, (tag) => `t${String(tag)}`, ", ")}]\nmeals: []\n`;

/** Of writers and operators: archives, texts, own prices and foods to adopt; and of strangers who ask for the same. */
export function writerAttacks(target: Target): readonly AttackRequest[] {
  const { publisher, foods } = target;
  const root = `/v1/publishers/${publisher}`;
  const imports = Object.entries(archives(publisher)).flatMap(([name, body]) =>
    ["", "?dryRun=yes"].map((query): AttackRequest =>
      authorised({
        ...{ name: `an archive of ${name}`, method: "POST", path: `${root}/import${query}` },
        headers: { "content-type": "application/zip" },
        body,
      }),
    ),
  );
  const exports = [
    authorised(get("everything of a publisher", `${root}/export`)),
    authorised(get("a part of everything", `${root}/export`, { range: `bytes=${"0-0,".repeat(2_000)}0-0` })),
    authorised(get("everything of nobody", `/v1/publishers/${"%00".repeat(500)}/export`)),
    get("everything, by nobody", `${root}/export`),
    post("an archive by nobody", `${root}/import`, "x".repeat(5_000_000), { "content-type": "application/zip" }),
    authorised(get("a try of a long word", `${root}/import?dryRun=${"yes".repeat(2_000)}`)),
  ];
  const numbers = ["1".repeat(200), "\u0000", "'; --", "09040", "🥕".repeat(50), "1".repeat(400_000)];
  const adopted = numbers.flatMap((ndbNo) =>
    [
      { ndbNo },
      { ndbNo, slug: "a-".repeat(100), name: "\u202e".repeat(400) },
      { ndbNo, name: "y".repeat(200_000) },
    ].map((body) => authorised(post("a food to adopt", `${root}/foods/adopt`, body))),
  );
  const check = (name: string, texts: readonly string[]): AttackRequest =>
    authorised(
      graphql(
        name,
        "query ($p: String!, $t: [DocumentTextInput!]!) { checkDocuments(publisher: $p, texts: $t) { problems { code message path line } findings { __typename } } }",
        { p: publisher, t: texts.map((text, at) => ({ name: `w${String(at)}.yaml`, text })) },
      ),
    );
  const packs = (count: number, of: (at: number) => string, slug: string): string =>
    `kind: packs\nslug: ${slug}\npacks:\n${times(count, (at) => `  - { id: p${String(at)}, name: p, content: ${of(at)}, price: ${String(at)}.00 XTS, seen: "2026-02-01", source: writer }\n`, "")}`;
  return [
    ...imports,
    ...exports,
    ...adopted,
    ...writings.map((text, at) => check("a text of a writer", [planOf(text, at)])),
    check(
      "40 plans of long texts",
      listOf(40, (at) => planOf(around(writings, at), at)),
    ),
    check("a price list of 4,000 packs", [packs(4_000, (at) => `${String(at + 1)} g`, around(foods, 0))]),
    check(
      "300 price lists",
      listOf(300, (at) => packs(20, () => "1/3 kg", around(foods, at))),
    ),
    check("a price list of contents that are none", [
      packs(3_000, (at) => `${"1/".repeat(20)}${String(at)}`, around(foods, 1)),
    ]),
  ];
}
