import type { LineModifier, NoAmount } from "../parsed-line.js";

/** Phrases of all five languages; they do not clash. No run of marks is matched beside them: that would cost squares. */
const phrase = (source: string): RegExp => new RegExp(`(?<![\\p{L}])(?:${source})(?![\\p{L}])`, "iu");

const open =
  "plus more|plus extra|and more|plus a little|plus etwas mehr|und etwas mehr|plus un peu|más un poco|más extra|plus trochę|i trochę więcej";

const serving =
  "for serving|to serve|for garnish|for garnishing|to garnish|for dusting|for frying|for greasing|for sprinkling|for drizzling|for brushing|" +
  "zum servieren|zum garnieren|zum braten|zum bestäuben|zum bestreuen|pour servir|pour garnir|pour la cuisson|" +
  "para servir|para decorar|para freír|do podania|do dekoracji|do smażenia";

/** Open extras take everything after them: "plus more for serving". */
export const plusMore = new RegExp(`(?<![\\p{L}])(?:${open})(?![\\p{L}])[^,;()]*`, "iu");

export const linePhrases: readonly (readonly [LineModifier, RegExp])[] = [
  ["FOR_SERVING", phrase(serving)],
  ["TO_TASTE", phrase("(?:or (?:more )?)?to taste|(?:oder )?nach geschmack|nach belieben|(?:ou )?au goût|selon (?:le )?goût|(?:o )?al gusto|(?:lub )?do smaku")],
  ["OPTIONAL", phrase("optional|wahlweise|facultatif|facultative|optionnel|optionnelle|opcional|opcjonalnie")],
  ["DIVIDED", phrase("divided|geteilt|aufgeteilt|divisé|divisée|divisés|divisées|dividido|dividida|podzielone|podzielony")],
]; // prettier-ignore

/** "as needed": no number where there is none, nothing beside one. */
export const asNeeded = phrase(
  "as needed|as required|nach bedarf|au besoin|si besoin|según (?:sea )?necesario|cantidad necesaria|w razie potrzeby",
);

/** One look before all the others: most lines hold none of them. */
export const anyPhrase =
  /plus|more|mehr|więcej|taste|serv|garnish|need|required|option|divid|divis|dust|fry|greas|sprinkl|drizzl|brush|geteilt|nach|zum|goût|besoin|pour|gusto|para|más|smak|opcj|opcion|facult|wahl|podziel|podania|dekor|smaż|potrzeb|neces|extra/i;

export const noAmountOf = (modifiers: readonly LineModifier[], needed: boolean): NoAmount =>
  modifiers.includes("TO_TASTE") ? "TO_TASTE" : needed ? "AS_NEEDED" : "UNSTATED";

/** "juice of 2 lemons": the part, then the whole fruit that is counted. */
export const partOf: readonly (readonly [string, RegExp])[] = [
  ["juice", /^(?:the |le |el |der )?(?:juice (?:of|from)|saft(?: von| eine[rs](?=\s*\d)|(?= eine[rs]))|jus (?:de|d[’'])|(?:zumo|jugo) de|sok z)\s*/i],
  ["zest", /^(?:the |le |der |die )?(?:(?:(?:finely )?grated )?(?:zest|rind|peel) (?:of|from)|(?:abgeriebene )?schale(?: von| eine[rs](?=\s*\d)|(?= eine[rs]))|zestes? (?:de|d[’'])|ralladura de|skórka z)\s*/i],
]; // prettier-ignore

/** Two parts of one fruit: the fruit is counted once, and a person says how the parts are listed. */
export const partsOf =
  /^(?:the )?(?:finely )?(?:grated )?(?:(?:zest|rind) (?:and|&|\+) juice|juice (?:and|&|\+) (?:zest|rind)) of\s+/i;

/** Words between a measure and its food: "of", "de", "d'". */
export const filler = /\s*(?:(?:de l|d)['’]\s*|(?:of the|of an?|of|from|von|des|du|de la|de|z)\s+)/iy;
