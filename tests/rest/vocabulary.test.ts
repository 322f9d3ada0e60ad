import { afterAll, beforeAll, expect, it } from "vitest";
import { codeListsOf } from "../../src/domain/plan/check/code-lists-of.js";
import { isOnList, usualSpelling } from "../../src/domain/model/code-lists.js";
import { measureSystemWords, placeWords } from "../../src/imports/documents/schemas/shared-schemas.js";
import { documentKinds } from "../../src/imports/documents/document-kinds.js";
import { codeFieldsOf } from "../../src/imports/documents/checks/written-codes.js";
import type { Vocabulary } from "../../src/services/answers/list-vocabulary.js";
import { rules } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, publisher, type RestApp } from "./open-rest.js";

const query = `query ($locale: String) { vocabulary(locale: $locale) {
  locale lists { list codes { code name spellings } }
  problemKinds { code parameters title } warningKinds { code parameters title }
  allergens { code name namedBy { list region law name } } regionsWithRules { code rules holdsIn name }
  currenciesWithPrices { code name } languagesOfWords { code name } } }`;

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

  it("has every code of problems and warnings, with a title and the names of what its messages say beside it", async () => {
    const { problemKinds, warningKinds } = await read();
    const { data } = await app.ask('{ __type(name: "ProblemCode") { enumValues { name } } }');
    const released = (data?.["__type"] as { enumValues: { name: string }[] }).enumValues.map(({ name }) => name);
    expect(problemKinds.map(({ code }) => code).toSorted()).toEqual(released.toSorted());
    for (const { title } of [...problemKinds, ...warningKinds]) expect(title.trim()).not.toBe("");
    const named = (code: string) => [...problemKinds, ...warningKinds].find((each) => each.code === code)?.parameters;
    expect(named("UNKNOWN_FOOD")).toEqual([
      ...[
        "food",
        "offer.nearest",
        "offer.rows.ndbNo",
        "offer.rows.description",
        "offer.slug",
        "offer.language",
        "offer.reader",
      ],
    ]);
    expect(named("LEFT_OVER")).toEqual(["component", "servingsMore"]);
    const german = await read("de");
    expect(german.warningKinds.find(({ code }) => code === "PRICE_UNKNOWN")?.title).toMatch(/Preis/);

    // What is said of a real mistake is what was announced.
    const url = `/v1/plans/${publisher}/bean-night?servings=0&diet=vegn&on-hand=kail:2+g&swap=kale:kail&region=Atlantis`;
    const wrong = ((await app.get(url)).body as { problems: { code: string; parameters: { name: string }[] }[] })
      .problems;
    expect(new Set(wrong.map(({ code }) => code)).size).toBeGreaterThan(1);
    for (const { code, parameters } of wrong)
      expect([code, parameters.filter(({ name }) => !named(code)?.includes(name))]).toEqual([code, []]);
  });

  it("says of each allergen which law names it, and where rules were published", async () => {
    const { allergens, regionsWithRules } = await read("de");
    expect(allergens.map(({ code }) => code)).toEqual(codesOf(await read(), "allergen").map(({ code }) => code));
    const lists = (wanted: string) => allergens.find(({ code }) => code === wanted)?.namedBy ?? [];
    // Mustard must be declared in the Union, the United Kingdom and Canada, and not in the United States; sesame everywhere.
    expect(lists("mustard").map(({ region }) => region)).toEqual(["EU", "GB", "CA"]);
    expect(lists("sesame").map(({ region }) => region)).toEqual(["US", "EU", "GB", "CA", "ANZ"]);
    // A list that another took the place of is not there: coconut was on that of the United States until 2025.
    expect(lists("coconut").map(({ region }) => region)).not.toContain("US");
    expect(lists("almond").find(({ region }) => region === "EU")?.name).toBe("Schalenfrüchte");

    const regions = new Map(regionsWithRules.map((each) => [each.code, each]));
    expect(regions.get("EU")).toMatchObject({
      name: "Europäische Union",
      rules: expect.arrayContaining(["ALLERGENS"]),
    });
    expect(regions.get("EU")?.holdsIn).toHaveLength(27);
    expect(regions.get("ANZ")).toMatchObject({ name: "Australien und Neuseeland", holdsIn: ["AU", "NZ"] });
    expect(regions.get("US-WA")).toMatchObject({ name: "Vereinigte Staaten (WA)", holdsIn: ["US-WA"] });
    expect(regions.get("INT")?.holdsIn).toBeNull();
    for (const { region } of allergens.flatMap(({ namedBy }) => namedBy))
      expect(regions.get(region)?.rules).toContain("ALLERGENS");
    // What a household may name for it is taken.
    for (const { holdsIn } of regionsWithRules)
      for (const region of holdsIn?.slice(-2) ?? [])
        expect((await app.get(`/v1/plans/${publisher}/bean-night/storage?servings=2&region=${region}`)).status).toBe(
          200,
        );
  });

  it("names the currencies that packs have a price in, as soon as one has", async () => {
    const codes = async () => (await read()).currenciesWithPrices.map(({ code }) => code);
    expect(await codes()).toEqual(["XTS"]);
    const [food] = await app.deps.data.foods.bySlugs(["lemon"]);
    const [pack] = food!.packs;
    const priced = { ...pack!, id: "dear", price: { amount: "2.50", currency: "PLN" } };
    const unpriced = { ...pack!, id: "unpriced", price: null };
    await app.deps.data.foods.save([{ ...food!, packs: [...food!.packs, priced, unpriced] }]);
    expect(await codes()).toEqual(["PLN", "XTS"]);
    expect((await read("pl")).currenciesWithPrices[0]?.name).toBe("złoty polski");
    await app.deps.data.foods.save([food!]);
    expect(await codes()).toEqual(["XTS"]);
  });

  it("names the languages of the fixed words", async () => {
    expect((await read("fr")).languagesOfWords).toEqual([
      { code: "en", name: "anglais" },
      { code: "de", name: "allemand" },
      { code: "fr", name: "français" },
      { code: "es", name: "espagnol" },
      { code: "pl", name: "polonais" },
    ]);
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
