import type { GenericUnit } from "./generic-units.js";

/** A unit id, or a generic word that the plan's measures decide, or `NO_UNIT`. */
export type UnitMeaning = `${GenericUnit}?` | (string & {});

/** A word that English takes for a unit and this language for something else: "un quart de citron" is a quarter. */
export const NO_UNIT = "-";

type Words = Readonly<Record<string, string>>;

/** Symbols of every language. */
const everywhere: Words = {
  g: "g",
  kg: "kg",
  mg: "mg",
  dag: "dag dkg",
  ml: "ml mL",
  cl: "cl",
  dl: "dl",
  l: "l L",
  oz: "oz",
  lb: "lb lbs",
};

const en: Words = {
  g: "gram grams gramme grammes gm gms gr",
  kg: "kilogram kilograms kilogramme kilogrammes kilo kilos kgs",
  mg: "milligram milligrams",
  ml: "milliliter milliliters millilitre millilitres mls",
  cl: "centiliter centiliters centilitre centilitres",
  dl: "deciliter deciliters decilitre decilitres",
  l: "liter liters litre litres",
  oz: "ounce ounces ozs",
  lb: "pound pounds",
  stone: "stone stones",
  "cup?": "cup cups c C",
  "tbsp?": "tbsp tbsps tbs tbl tblsp tablespoon tablespoons tablespoonful tablespoonfuls T",
  "tsp?": "tsp tsps teaspoon teaspoons teaspoonful teaspoonfuls t",
  "floz?": "fl_oz floz fl._oz fluid_ounce fluid_ounces fluid_oz",
  "pint?": "pint pints pt pts",
  "quart?": "quart quarts qt qts",
  "gallon?": "gallon gallons gal gals",
  "gill?": "gill gills",
  "us-pint": "liquid_pint liquid_pints us_liquid_pint us_pint us_pints",
  "us-dry-pint": "dry_pint dry_pints us_dry_pint us_dry_pints",
  "us-quart": "liquid_quart liquid_quarts us_quart us_quarts",
  "us-dry-quart": "dry_quart dry_quarts",
  "us-cup": "us_cup us_cups",
  "us-tbsp": "us_tbsp us_tablespoon us_tablespoons",
  "us-tsp": "us_tsp us_teaspoon us_teaspoons",
  "us-floz": "us_fl_oz",
  "us-gallon": "us_gallon us_gallons",
  "us-bushel": "bushel bushels",
  "metric-cup": "metric_cup metric_cups",
  "metric-tbsp": "metric_tbsp metric_tablespoon metric_tablespoons",
  "metric-tsp": "metric_tsp metric_teaspoon metric_teaspoons",
  "au-tbsp": "australian_tbsp australian_tablespoon australian_tablespoons",
  "imp-pint": "imperial_pint imperial_pints uk_pint uk_pints",
  "imp-floz": "imperial_fl_oz uk_fl_oz",
  "imp-quart": "imperial_quart imperial_quarts",
  "imp-gallon": "imperial_gallon imperial_gallons",
  piece: "piece pieces pc pcs each ea",
  dozen: "dozen dozens doz",
  batch: "batch batches",
};

const de: Words = {
  g: "gramm gr",
  kg: "kilogramm kilo kilos",
  cl: "zentiliter",
  dl: "deziliter",
  oz: "unze unzen",
  "metric-pound": "pfund pfd",
  "cup?": "tasse tassen",
  "tbsp?": "EL el esslöffel eßlöffel essl",
  "tsp?": "TL tl teelöffel teel kaffeelöffel KL kl",
  "gallon?": "gallone gallonen",
  piece: "stück stk st stücke",
  dozen: "dutzend",
  batch: "ansatz ansätze",
};

const fr: Words = {
  dl: "décilitre décilitres",
  oz: "once onces",
  "metric-pound": "livre livres",
  "cup?": "tasse tasses",
  "tbsp?":
    "c._à_s c_à_s càs cas cs c._à_soupe c_à_soupe cuil._à_soupe cuil_à_soupe cuillère_à_soupe cuillères_à_soupe cuillere_a_soupe cuilleres_a_soupe cuillerée_à_soupe cuillerées_à_soupe",
  "tsp?":
    "c._à_c c_à_c càc cac cc c._à_café c_à_café cuil._à_café cuil_à_café cuillère_à_café cuillères_à_café cuillere_a_cafe cuilleres_a_cafe cuillerée_à_café cuillerées_à_café",
  "pint?": "pinte pintes",
  [NO_UNIT]: "quart quarts",
  piece: "pièce pièces",
  dozen: "douzaine douzaines",
  batch: "fournée fournées",
};

const es: Words = {
  g: "gramo gramos gr grs",
  kg: "kilogramo kilogramos kilo kilos",
  ml: "mililitro mililitros",
  cl: "centilitro centilitros",
  dl: "decilitro decilitros",
  l: "litro litros",
  oz: "onza onzas",
  lb: "libra libras",
  "cup?": "taza tazas",
  "tbsp?": "cucharada cucharadas cda cdas cucharada_sopera cucharadas_soperas",
  "tsp?": "cucharadita cucharaditas cdta cdtas cdita cditas cucharada_de_café",
  "pint?": "pinta pintas",
  "gallon?": "galón galones",
  piece: "pieza piezas unidad unidades ud uds",
  dozen: "docena docenas",
  batch: "tanda tandas",
};

const pl: Words = {
  g: "gram gramy gramów gramow",
  kg: "kilogram kilogramy kilogramów kilo",
  dag: "deko dekagram dekagramy dekagramów",
  ml: "mililitr mililitry mililitrów",
  l: "litr litry litrów litra",
  oz: "uncja uncje uncji",
  lb: "funt funty funtów",
  "cup?": "szklanka szklanki szklanek szkl",
  "tbsp?": "łyżka łyżki łyżek lyzka lyzki lyzek",
  "tsp?": "łyżeczka łyżeczki łyżeczek lyzeczka lyzeczki lyzeczek łyż._herb",
  "pint?": "pinta pinty pint",
  "quart?": "kwarta kwarty kwart",
  "gallon?": "galon galony galonów galonu",
  piece: "sztuka sztuki sztuk szt",
  dozen: "tuzin tuziny tuzinów",
  batch: "porcja_bazowa porcje_bazowe porcji_bazowych",
};

const compile = (words: Words): ReadonlyMap<string, UnitMeaning> =>
  new Map(
    Object.entries(words).flatMap(([meaning, list]) =>
      list.split(" ").map((word): [string, UnitMeaning] => [word.replaceAll("_", " "), meaning]),
    ),
  );

/** Word as written (case first, then lower case), without its closing full stop, to what it means; by language. */
export const unitWords: Readonly<Record<string, ReadonlyMap<string, UnitMeaning>>> = Object.fromEntries(
  Object.entries({ en, de, fr, es, pl }).map(([language, words]) => [
    language,
    new Map([...compile(everywhere), ...compile(words)]),
  ]),
);
