import { afterAll, beforeAll, expect, it } from "vitest";
import { codeListsOf } from "../../src/domain/plan/check/code-lists-of.js";
import { isOnList, usualSpelling } from "../../src/domain/model/code-lists.js";
import { measureSystemWords, placeWords } from "../../src/imports/documents/schemas/shared-schemas.js";
import { documentKinds } from "../../src/imports/documents/document-kinds.js";
import { codeFieldsOf } from "../../src/imports/documents/checks/written-codes.js";
import type { Vocabulary } from "../../src/services/answers/list-vocabulary.js";
import { rules } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, type RestApp } from "./open-rest.js";

const query =
  "query ($locale: String) { vocabulary(locale: $locale) { locale lists { list codes { code name spellings } } } }";

describeOnBothDatabases("the vocabulary", (open) => {
  let app: RestApp;
  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  const read = async (locale?: string): Promise<Vocabulary> => {
    const { status, body } = await app.get(`/v1/vocabulary${locale === undefined ? "" : `?locale=${locale}`}`);
    expect(status).toBe(200);
    return body as Vocabulary;
  };
  const codesOf = ({ lists }: Vocabulary, name: string) => lists.find(({ list }) => list === name)?.codes ?? [];
  const nameOf = (of: Vocabulary, list: string, wanted: string) =>
    codesOf(of, list).find(({ code }) => code === wanted)?.name;

  it("says the same through both doors, in any locale", async () => {
    for (const locale of [undefined, "de-AT", "fr", "pl", "ja", "ar"]) {
      const overGraphql = await app.ask(query, { locale });
      expect(overGraphql.data?.["vocabulary"]).toEqual(await read(locale));
    }
  });

  it("has the lists that every field of every document is checked against, code by code", async () => {
    const found = await read();
    const checked = codeListsOf(rules);
    const fields = new Set(documentKinds.flatMap((kind) => codeFieldsOf(kind).map(({ list }) => list)));
    expect(fields.size).toBeGreaterThan(6);
    for (const list of fields) {
      if (list === "usda-number") continue;
      expect([list, codesOf(found, list).map(({ code }) => code)]).toEqual([list, checked[list]?.codes]);
    }
    expect(codesOf(found, "measures").map(({ code, name }) => [code, name])).toEqual(
      Object.entries(measureSystemWords),
    );
    expect(codesOf(found, "place").map(({ code, name }) => [code, name])).toEqual(Object.entries(placeWords));
  });

  it("gives each code once, a name, and spellings that mean it and nothing else", async () => {
    const { lists } = await read();
    const checked = codeListsOf(rules);
    for (const { list, codes } of lists) {
      expect(new Set(codes.map(({ code }) => code)).size).toBe(codes.length);
      expect(codes.length).toBeGreaterThan(2);
      expect(codes.filter(({ name }) => name.trim() === "")).toEqual([]);
      const known = list in checked ? checked[list as keyof typeof checked] : undefined;
      if (known === undefined) continue;
      for (const { code, spellings } of codes)
        for (const written of spellings) {
          expect(usualSpelling(list as keyof typeof checked, written)).toBe(code);
          expect(isOnList(known, written)).toBe(false);
        }
    }
  });

  // Names of countries and money in German, French and Polish. Source: CLDR 48, territories and currencies.
  it("is named in the reader's language", async () => {
    expect(nameOf(await read("de"), "region", "DE")).toBe("Deutschland");
    expect(nameOf(await read("fr"), "region", "GB")).toBe("Royaume-Uni");
    expect(nameOf(await read("fr"), "currency", "EUR")).toBe("euro");
    expect(nameOf(await read("pl"), "language", "de")).toBe("niemiecki");
    expect(nameOf(await read(), "unit", "us-cup")).toBe("US cup");
    expect(nameOf(await read(), "allergen", "tree-nut")).toBe("tree nut");
    // Regulation (EU) No 1169/2011, Annex II, German edition, point 8.
    expect(nameOf(await read("de"), "allergen", "tree-nut")).toBe("Schalenfrüchte");
    expect(nameOf(await read("es"), "aisle", "frozen")).toBe("congelados");
    expect(nameOf(await read("pl"), "appliance", "oven")).toBe("piekarnik");
    expect(nameOf(await read("fr"), "diet", "no-egg")).toBe("sans œuf");
    expect(nameOf(await read("pl"), "keeping-class", "cooked-rice")).toBe("ugotowany ryż");
    expect(nameOf(await read("en-GB"), "keeping-class", "cooked-rice")).toBe("boiled rice");
  });

  it("may be kept, and is not sent again to who has it", async () => {
    const first = await app.get("/v1/vocabulary?locale=de");
    expect(first.headers["cache-control"]).toContain("max-age");
    const again = await app.get("/v1/vocabulary?locale=de", { "if-none-match": first.headers["etag"] ?? "" });
    expect(again.status).toBe(304);
  });

  it("refuses a locale of no language, through both doors", async () => {
    for (const locale of ["english", "xq", "-", "x".repeat(150)]) {
      const { status, body } = await app.rest("GET", `/v1/vocabulary?locale=${locale}`);
      expect(status).toBe(400);
      expect(JSON.stringify(body)).toContain("locale");
      const { data, errors } = await app.ask(query, { locale });
      expect([data, errors.length]).toEqual([null, 1]);
      expect(JSON.stringify(errors)).toContain("locale");
    }
  });
});
