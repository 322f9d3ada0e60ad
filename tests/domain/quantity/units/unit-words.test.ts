import { describe, expect, it } from "vitest";
import { findUnit } from "../../../../src/domain/quantity/unit.js";

/** What each word means to a US cook who pours; `_` is a space. Common practice, no source. */
const rows: readonly (readonly [language: string, id: string, words: string])[] = [
  ["en", "g", "g"],
  ["en", "kg", "kg"],
  ["en", "mg", "mg"],
  ["en", "dag", "dag dkg"],
  ["en", "ml", "ml mL"],
  ["en", "cl", "cl"],
  ["en", "dl", "dl"],
  ["en", "l", "l L"],
  ["en", "oz", "oz"],
  ["en", "lb", "lb lbs"],
  ["en", "g", "gram grams gramme grammes gm gms gr"],
  ["en", "kg", "kilogram kilograms kilogramme kilogrammes kilo kilos kgs"],
  ["en", "mg", "milligram milligrams"],
  ["en", "ml", "milliliter milliliters millilitre millilitres mls"],
  ["en", "cl", "centiliter centiliters centilitre centilitres"],
  ["en", "dl", "deciliter deciliters decilitre decilitres"],
  ["en", "l", "liter liters litre litres"],
  ["en", "oz", "ounce ounces ozs"],
  ["en", "lb", "pound pounds"],
  ["en", "stone", "stone stones"],
  ["en", "us-cup", "cup cups c C"],
  ["en", "us-tbsp", "tbsp tbsps tbs tbl tblsp tablespoon tablespoons tablespoonful tablespoonfuls T"],
  ["en", "us-tsp", "tsp tsps teaspoon teaspoons teaspoonful teaspoonfuls t"],
  ["en", "us-floz", "fl_oz floz fl._oz fluid_ounce fluid_ounces fluid_oz"],
  ["en", "us-pint", "pint pints pt pts"],
  ["en", "us-quart", "quart quarts qt qts"],
  ["en", "us-gallon", "gallon gallons gal gals"],
  ["en", "us-gill", "gill gills"],
  ["en", "us-pint", "liquid_pint liquid_pints us_liquid_pint us_pint us_pints"],
  ["en", "us-dry-pint", "dry_pint dry_pints us_dry_pint us_dry_pints"],
  ["en", "us-quart", "liquid_quart liquid_quarts us_quart us_quarts"],
  ["en", "us-dry-quart", "dry_quart dry_quarts"],
  ["en", "us-cup", "us_cup us_cups"],
  ["en", "us-tbsp", "us_tbsp us_tablespoon us_tablespoons"],
  ["en", "us-tsp", "us_tsp us_teaspoon us_teaspoons"],
  ["en", "us-floz", "us_fl_oz"],
  ["en", "us-gallon", "us_gallon us_gallons"],
  ["en", "us-bushel", "bushel bushels"],
  ["en", "metric-cup", "metric_cup metric_cups"],
  ["en", "metric-tbsp", "metric_tbsp metric_tablespoon metric_tablespoons"],
  ["en", "metric-tsp", "metric_tsp metric_teaspoon metric_teaspoons"],
  ["en", "au-tbsp", "australian_tbsp australian_tablespoon australian_tablespoons"],
  ["en", "imp-pint", "imperial_pint imperial_pints uk_pint uk_pints"],
  ["en", "imp-floz", "imperial_fl_oz uk_fl_oz"],
  ["en", "imp-quart", "imperial_quart imperial_quarts"],
  ["en", "imp-gallon", "imperial_gallon imperial_gallons"],
  ["en", "piece", "piece pieces pc pcs each ea"],
  ["en", "dozen", "dozen dozens doz"],
  ["en", "batch", "batch batches"],
  ["de", "g", "gramm gr"],
  ["de", "kg", "kilogramm kilo kilos"],
  ["de", "cl", "zentiliter"],
  ["de", "dl", "deziliter"],
  ["de", "oz", "unze unzen"],
  ["de", "metric-pound", "pfund pfd"],
  ["de", "us-cup", "tasse tassen"],
  ["de", "us-tbsp", "EL el esslöffel eßlöffel essl"],
  ["de", "us-tsp", "TL tl teelöffel teel kaffeelöffel KL kl"],
  ["de", "us-gallon", "gallone gallonen"],
  ["de", "piece", "stück stk st stücke"],
  ["de", "dozen", "dutzend"],
  ["de", "batch", "ansatz ansätze"],
  ["fr", "dl", "décilitre décilitres"],
  ["fr", "oz", "once onces"],
  ["fr", "metric-pound", "livre livres"],
  ["fr", "us-cup", "tasse tasses"],
  [
    "fr",
    "us-tbsp",
    "c._à_s c_à_s càs cas cs c._à_soupe c_à_soupe cuillère_à_soupe cuillères_à_soupe cuillere_a_soupe cuilleres_a_soupe cuillerée_à_soupe cuillerées_à_soupe",
  ],
  [
    "fr",
    "us-tsp",
    "c._à_c c_à_c càc cac cc c._à_café c_à_café cuillère_à_café cuillères_à_café cuillere_a_cafe cuilleres_a_cafe cuillerée_à_café cuillerées_à_café",
  ],
  ["fr", "us-pint", "pinte pintes"],
  ["fr", "piece", "pièce pièces"],
  ["fr", "dozen", "douzaine douzaines"],
  ["fr", "batch", "fournée fournées"],
  ["es", "g", "gramo gramos gr grs"],
  ["es", "kg", "kilogramo kilogramos kilo kilos"],
  ["es", "ml", "mililitro mililitros"],
  ["es", "cl", "centilitro centilitros"],
  ["es", "dl", "decilitro decilitros"],
  ["es", "l", "litro litros"],
  ["es", "oz", "onza onzas"],
  ["es", "lb", "libra libras"],
  ["es", "us-cup", "taza tazas"],
  ["es", "us-tbsp", "cucharada cucharadas cda cdas cucharada_sopera cucharadas_soperas"],
  ["es", "us-tsp", "cucharadita cucharaditas cdta cdtas cdita cditas cucharada_de_café"],
  ["es", "us-pint", "pinta pintas"],
  ["es", "us-gallon", "galón galones"],
  ["es", "piece", "pieza piezas unidad unidades ud uds"],
  ["es", "dozen", "docena docenas"],
  ["es", "batch", "tanda tandas"],
  ["pl", "g", "gram gramy gramów gramow"],
  ["pl", "kg", "kilogram kilogramy kilogramów kilo"],
  ["pl", "dag", "deko dekagram dekagramy dekagramów"],
  ["pl", "ml", "mililitr mililitry mililitrów"],
  ["pl", "l", "litr litry litrów litra"],
  ["pl", "oz", "uncja uncje uncji"],
  ["pl", "lb", "funt funty funtów"],
  ["pl", "us-cup", "szklanka szklanki szklanek szkl"],
  ["pl", "us-tbsp", "łyżka łyżki łyżek lyzka lyzki lyzek"],
  ["pl", "us-tsp", "łyżeczka łyżeczki łyżeczek lyzeczka lyzeczki lyzeczek łyż._herb"],
  ["pl", "us-pint", "pinta pinty pint"],
  ["pl", "us-quart", "kwarta kwarty kwart"],
  ["pl", "us-gallon", "galon galony galonów galonu"],
  ["pl", "piece", "sztuka sztuki sztuk szt"],
  ["pl", "dozen", "tuzin tuziny tuzinów"],
  ["pl", "batch", "porcja_bazowa porcje_bazowe porcji_bazowych"],
];

const found = (word: string, locale: string) => findUnit(word, { locale, measures: "US_CUSTOMARY", form: "liquid" });

describe("unit words", () => {
  it.each(rows)("%s, %s: %s", (language, id, words) => {
    for (const word of words.split(" ").map((each) => each.replaceAll("_", " "))) {
      expect(found(word, language), word).toEqual({ kind: "FOUND", id });
    }
  });

  it.each(["de", "fr", "es", "pl", "it"])("in %s are the symbols and the English ones as well", (language) => {
    for (const symbol of ["g", "kg", "mg", "dag", "ml", "cl", "dl", "l", "oz", "lb"]) {
      expect(found(symbol, language), symbol).toEqual({ kind: "FOUND", id: symbol });
    }
    expect(found("litres", language)).toEqual({ kind: "FOUND", id: "l" });
    expect(found("gallons", language)).toEqual({ kind: "FOUND", id: "us-gallon" });
  });

  it("leaves the French quart a quarter", () => {
    expect(found("quart", "fr")).toBeNull();
    expect(found("quarts", "fr")).toBeNull();
    expect(found("quart", "de")).toEqual({ kind: "FOUND", id: "us-quart" });
  });

  it("tells the capital spoon from the small one", () => {
    expect(found("T", "en")).toEqual({ kind: "FOUND", id: "us-tbsp" });
    expect(found("t", "en")).toEqual({ kind: "FOUND", id: "us-tsp" });
  });
});

const GENERIC = ["cup", "tbsp", "tsp", "fl oz", "pint", "quart", "gallon", "gill"];

// Whose measures have a size of their own for a word; where there are more than one, nobody guesses.
describe("words whose size the measures decide", () => {
  it.each([
    ["US_CUSTOMARY", ["us-cup", "us-tbsp", "us-tsp", "us-floz", "us-pint|us-dry-pint", "us-quart", "us-gallon", "us-gill"]],
    ["UK_IMPERIAL", ["metric-cup|us-cup", "metric-tbsp", "metric-tsp", "imp-floz", "imp-pint", "imp-quart", "imp-gallon", "imp-gill"]],
    ["METRIC", ["metric-cup|us-cup", "metric-tbsp", "metric-tsp", "us-floz|imp-floz", "us-pint|imp-pint|us-dry-pint", "us-quart|imp-quart|us-dry-quart", "us-gallon|imp-gallon", "us-gill|imp-gill"]],
    ["METRIC_CUP", ["metric-cup", "metric-tbsp", "metric-tsp", "us-floz|imp-floz", "us-pint|imp-pint|us-dry-pint", "us-quart|imp-quart|us-dry-quart", "us-gallon|imp-gallon", "us-gill|imp-gill"]],
    ["AUSTRALIAN", ["metric-cup", "au-tbsp", "metric-tsp", "us-floz|imp-floz", "us-pint|imp-pint|us-dry-pint", "us-quart|imp-quart|us-dry-quart", "us-gallon|imp-gallon", "us-gill|imp-gill"]],
  ] as const)("in %s", (measures, meanings) => {
    const said = GENERIC.map((word) => {
      const unit = findUnit(word, { locale: "en", measures });
      return unit?.kind === "AMBIGUOUS" ? unit.candidates.join("|") : unit?.id;
    });
    expect(said).toEqual(meanings);
  });
}); // prettier-ignore
