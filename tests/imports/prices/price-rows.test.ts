import fc from "fast-check";
import { readdir, readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import {
  priceColumns,
  priceRowReader,
  type PriceOptions,
  type PriceRow,
} from "../../../src/imports/prices/read-price-row.js";
import { readTable, type TableRow } from "../../../src/imports/tables/read-table.js";

const options: PriceOptions = {
  locale: "en",
  measures: "METRIC",
  currency: "XTS",
  region: "XA",
  seen: "2026-03-01",
  source: "Price list of the corner shop",
  findFood: (slug) => (slug.startsWith("unknown") ? { kind: "NONE" } : { kind: "FOUND", slug }),
  measuresOf: () => [],
};

async function* pieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

async function rowsOf(
  bytes: string | Uint8Array,
  given: Partial<PriceOptions> = {},
  size = 7,
  columnNames: ReadonlyMap<string, string> = new Map(),
): Promise<readonly TableRow<PriceRow>[]> {
  const rows: TableRow<PriceRow>[] = [];
  const columns = { ...priceColumns, columnNames };
  const read = readTable(
    pieces(Buffer.from(bytes), size),
    { columns, delimiter: null },
    priceRowReader({ ...options, ...given }),
  );
  for await (const batch of read) rows.push(...batch);
  return rows;
}

const said = (rows: readonly TableRow<PriceRow>[]) =>
  rows.map((row) =>
    row.ok
      ? [row.line, row.value.food, row.value.pack.price?.amount ?? null]
      : [row.line, ...row.problems.map(problemText)],
  );

const header = "food,pack,content,price\n";

describe("a list of prices", () => {
  it.each(["XTQ", "EUT", "QQQ", "US$", "EURO", "123"])(
    "is refused in a currency that there is not: %s",
    async (currency) => {
      const [row] = await rowsOf(`food,pack,content,price,currency\npearl-barley,bag-500,500 g,1.10,${currency}\n`);
      expect(row).toMatchObject({
        ok: false,
        problems: [{ code: "UNKNOWN_CODE", path: ["currency"], list: "currency", written: currency }],
      });
      if (currency === "EURO") expect(row).toMatchObject({ problems: [{ nearest: expect.arrayContaining(["EUR"]) }] });
    },
  );

  it("is read row by row, with what the feed declares where a row does not say", async () => {
    const [row] = await rowsOf(`${header}pearl-barley,bag-500,500 g,1.10\n`);
    expect(row).toMatchObject({
      ok: true,
      line: 2,
      value: {
        food: "pearl-barley",
        pack: {
          id: "bag-500",
          name: "bag-500",
          content: { low: "500", high: "500", unit: "g" },
          price: { amount: "1.10", currency: "XTS" },
          region: "XA",
          seen: "2026-03-01",
          source: { kind: "PUBLISHED", title: "Price list of the corner shop" },
        },
      },
    });
  });

  // Case O-37: byte order mark, line ends, semicolons and decimal commas.
  it("O-37: from another country, with a byte order mark, semicolons, decimal commas and its own column names", async () => {
    const text =
      "\ufeffArtikel;Pack;Inhalt;Preis;Währung\r\nmehl;tuete;1,5 kg;1,49;eur\r\nsahne;becher;0,25 l;0,80;EUR\r\n";
    const columnNames = new Map([
      ["artikel", "food"],
      ["inhalt", "content"],
      ["preis", "price"],
      ["währung", "currency"],
    ]);
    const rows = await rowsOf(text, { locale: "de" }, 5, columnNames);
    expect(
      rows.map((row) => row.ok && [row.value.pack.content.low, row.value.pack.content.unit, row.value.pack.price]),
    ).toEqual([
      ["3/2", "kg", { amount: "1.49", currency: "EUR" }],
      ["1/4", "l", { amount: "0.80", currency: "EUR" }],
    ]);
  });

  // Case O-38.
  it("O-38: never takes a date for an amount, and offers what may have stood there", async () => {
    const rows = await rowsOf(
      `${header}oats,a,2-Jan,1.10\noats,b,46024,1.10\noats,c,500 g,4-Mar\noats,d,1/2 kg,1.10\n`,
    );
    expect(said(rows)).toEqual([
      [2, expect.stringMatching(/"2-Jan" is a date.*"1\/2" or "1-2"/)],
      [3, expect.stringMatching(/"46024" is a date.*"1\/2" or "1-2"/)],
      [4, expect.stringMatching(/"4-Mar" is a date.*"3\/4" or "3-4"/)],
      [5, "oats", "1.10"],
    ]);
  });

  it("lists every fault of a row under its column, and keeps every other row", async () => {
    const rows = await rowsOf(`${header}unknown-food,two words,5 wotsits,-3\noats,b,0 g,1.999999\noats,c,500 g,\n`);
    expect(
      rows.map((row) => (row.ok ? "ok" : row.problems.map(({ code, path }) => `${String(path[0])} ${code}`))),
    ).toEqual([
      ["food UNKNOWN_FOOD", "pack BAD_SHAPE", "price BAD_SHAPE"],
      ["content BAD_SHAPE", "price BAD_SHAPE"],
      "ok",
    ]);
    expect(rows[2]?.ok && rows[2].value.pack.price).toBeNull();
  });

  it.each([
    ["per kg", "en", "1", "kg"],
    ["per 100 g", "en", "100", "g"],
    ["per lb", "en", "1", "lb"],
    ["/kg", "en", "1", "kg"],
    ["/ 100 g", "en", "100", "g"],
    ["je 500 g", "de", "500", "g"],
    ["pro Pfund", "de", "1", "metric-pound"],
    ["le kg", "fr", "1", "kg"],
    ["les 100 g", "fr", "100", "g"],
    ["por kg", "es", "1", "kg"],
    ["za kg", "pl", "1", "kg"],
    ["per l", "en", "1", "l"],
  ])("sells loose what is priced %s (%s), and needs no pack", async (content, locale, low, unit) => {
    const [row] = await rowsOf(`${header}onion,,${content},2\n`, { locale });
    expect(row).toMatchObject({
      ok: true,
      value: { pack: { id: "loose-xa", name: "loose-xa", content: { low, high: low, unit }, loose: { step: null } } },
    });
  });

  it("keeps the pack of what is loose, and the step it is weighed out by", async () => {
    const rows = await rowsOf(
      "food,pack,content,price,step,region\nnuts,bin-4,per 100 g,1.90,25 g,\nnuts,bin-5,1 kg,19,1 kg,\nnuts,,per kg,18,,XB\n",
      { region: null },
    );
    expect(rows.map((row) => row.ok && [row.value.pack.id, row.value.pack.loose])).toEqual([
      ["bin-4", { step: { low: "25", high: "25", unit: "g" } }],
      ["bin-5", { step: { low: "1", high: "1", unit: "kg" } }],
      ["loose-xb", { step: null }],
    ]);
  });

  it("takes no pack whose name is missing for loose goods, and nothing loose that is not weighed or poured", async () => {
    const rows = await rowsOf(
      `food,pack,content,price,step\noats,,400 g,1,\noats,,1 kg,1,\noats,,per kgg,1,\noats,,per piece,1,\noats,a,per kg,1,2 pieces\noats,b,per kg,1,10-20 g\noats,c,per kg,1,5 ml\noats,d,per kg,1,0 g\n`,
    );
    expect(
      rows.map((row) => (row.ok ? "ok" : row.problems.map(({ code, path }) => `${String(path[0])} ${code}`))),
    ).toEqual([
      ["pack BAD_SHAPE"],
      ["pack BAD_SHAPE"],
      ["content UNKNOWN_UNIT"],
      ["content BAD_AMOUNT"],
      ["step BAD_AMOUNT"],
      ["step BAD_AMOUNT"],
      ["step BAD_AMOUNT"],
      ["step BAD_AMOUNT"],
    ]);
    expect(said(rows)[0]?.[1]).toMatch(/empty where the content is a rate, such as per kg/);
  });

  it("is refused whole, with what to do, where its columns are not those of a price list", async () => {
    expect(said(await rowsOf("food,price\noats,1\n"))).toEqual([
      [1, expect.stringContaining("none called pack, content")],
    ]);
    expect(said(await rowsOf("eins;zwei,drei\n1;2,3\n"))).toEqual([
      [1, expect.stringContaining("Name the delimiter in the feed")],
    ]);
    expect(said(await rowsOf("food,food,pack,content,price\n"))).toEqual([[1, expect.stringContaining("food")]]);
    expect(await rowsOf("")).toEqual([]);
  });

  it("loses one row, and no other, to a stray quotation mark, a field too many or bytes of another encoding", async () => {
    const latin = Buffer.concat([
      Buffer.from(`${header}oats,a,500 g,1\noats,"b,500 g,2\noats,c,500 g,3,4\n`),
      Buffer.from([0x6f, 0xe4, 0x2c]),
      Buffer.from("d,500 g,5\noats,e,500 g,6\n"),
    ]);
    const rows = await rowsOf(latin);
    expect(rows.map(({ line, ok }) => [line, ok])).toEqual([
      [2, true],
      [3, false],
      [4, false],
      [5, false],
      [6, true],
    ]);
  });

  it("passes over a line of a gigabyte in memory that does not grow, and reads what follows", async () => {
    const piece = Buffer.alloc(1024 * 1024, "x");
    async function* endless(): AsyncGenerator<Uint8Array> {
      yield Buffer.from(`${header}oats,a,500 g,1\n`);
      for (let turn = 0; turn < 1024; turn += 1) yield piece;
      yield Buffer.from("\noats,b,500 g,2\n");
    }
    const before = process.memoryUsage().rss;
    const rows: TableRow<PriceRow>[] = [];
    const columns = { ...priceColumns, columnNames: new Map<string, string>() };
    for await (const batch of readTable(endless(), { columns, delimiter: null }, priceRowReader(options)))
      rows.push(...batch);
    expect(rows.map(({ line, ok }) => [line, ok])).toEqual([
      [2, true],
      [3, false],
      [4, true],
    ]);
    expect(process.memoryUsage().rss - before).toBeLessThan(300e6);
  });

  it("reads UTF-16 by its mark", async () => {
    const bytes = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(`${header}müsli,a,500 g,1\n`, "utf16le")]);
    expect(said(await rowsOf(bytes))).toEqual([[2, "müsli", "1"]]);
  });

  it("accounts for every row of any bytes, the same in whatever pieces they come", async () => {
    const folder = "tests/fixtures/imports/prices";
    const files = await Promise.all((await readdir(folder)).map((name) => readFile(`${folder}/${name}`)));
    expect(files.length).toBeGreaterThan(3);
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...files),
        fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 255 })), { maxLength: 6 }),
        fc.integer({ min: 1, max: 50 }),
        async (file, flips, size) => {
          const bytes = Buffer.from(file);
          for (const [at, byte] of flips) bytes[at % bytes.length] = byte;
          const rows = await rowsOf(bytes, {}, size);
          expect(await rowsOf(bytes, {}, bytes.length)).toEqual(rows);
          for (const row of rows) if (!row.ok) expect(row.problems.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});

describe("a price of nothing", () => {
  it.each(["0", "0.00", "00", "0.0000"])("%s is no price: it would win every list", async (price) => {
    const [row] = await rowsOf(`food,pack,content,price\negg,free,6 piece,${price}\n`);
    expect(row?.ok === false && row.problems.map(({ code, path }) => [code, ...path])).toEqual([
      ["BAD_SHAPE", "price"],
    ]);
  });

  it("0,00 in a language with a comma neither; an empty cell says that nobody knows", async () => {
    const [zero, empty] = await rowsOf("food;pack;content;price\negg;free;6 piece;0,00\negg;box;6 piece;\n", {
      locale: "de",
    });
    expect([zero?.ok, empty?.ok === true && empty.value.pack.price]).toEqual([false, null]);
  });
});
