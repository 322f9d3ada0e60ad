import type { AmountLanguage } from "../reader-locale.js";

/** Forms by CLDR plural category; a single text where the number does not matter. */
export type NameForms = string | Readonly<Record<string, string>>;

type NamesByLanguage = Readonly<Record<AmountLanguage, NameForms>>;

const same = (name: string): NamesByLanguage => ({ en: name, de: name, fr: name, es: name, pl: name });

/** One and many; in Polish one, few, many and the genitive of a fraction (other). */
const forms = (en: string, de: string, fr: string, es: string, pl: string): NamesByLanguage => {
  const two = (text: string): NameForms => {
    const [one = "", other = one] = text.split("|");
    return { one, many: other, other };
  };
  const [one = "", few = one, many = few, other = few] = pl.split("|");
  return { en: two(en), de: two(de), fr: two(fr), es: two(es), pl: { one, few, many, other } };
};

const symbols = ["g", "kg", "mg", "dag", "ml", "cl", "dl", "l", "oz", "lb"];

const numbered = (ids: readonly string[], name: (id: string) => NamesByLanguage): [string, NamesByLanguage][] =>
  ids.map((id) => [id, name(id)]);

const canNumbers: Readonly<Record<string, string>> = {
  "can-no10": "10",
  "can-no300": "300",
  "can-no303": "303",
  "can-no2": "2",
  "can-no2half": "2½",
  "can-no5": "5",
};

const canName = (number: string): NamesByLanguage =>
  forms(
    `No. ${number} can|No. ${number} cans`,
    `Dose Nr. ${number}|Dosen Nr. ${number}`,
    `boîte n° ${number}|boîtes n° ${number}`,
    `lata n.º ${number}|latas n.º ${number}`,
    `puszka nr ${number}|puszki nr ${number}|puszek nr ${number}|puszki nr ${number}`,
  );

/** Names of vessels carry their number: `scoop-8`, `ladle-4`, `gn-1-2-65`. */
export const vesselName = (id: string): NamesByLanguage | null => {
  const [kind, ...rest] = id.split("-");
  const number = rest.join("-");
  if (kind === "can") return canName(canNumbers[id] ?? number);
  if (kind === "gn") return same(`GN ${rest[0] ?? ""}/${rest[1] ?? ""} ${rest[2] ?? ""} mm`);
  if (kind === "scoop") {
    return forms(
      `No. ${number} scoop|No. ${number} scoops`,
      `Portionierer Nr. ${number}|Portionierer Nr. ${number}`,
      `cuillère à portionner n° ${number}|cuillères à portionner n° ${number}`,
      `porcionador n.º ${number}|porcionadores n.º ${number}`,
      `porcjoner nr ${number}|porcjonery nr ${number}|porcjonerów nr ${number}|porcjonera nr ${number}`,
    );
  }
  if (kind === "ladle") {
    return forms(
      `${number} oz ladle|${number} oz ladles`,
      `Schöpfkelle ${number} oz|Schöpfkellen ${number} oz`,
      `louche ${number} oz|louches ${number} oz`,
      `cucharón ${number} oz|cucharones ${number} oz`,
      `chochla ${number} oz|chochle ${number} oz|chochli ${number} oz|chochli ${number} oz`,
    );
  }
  return null;
};

/** Names by id, and by the id without its system (`cup` for `us-cup`). */
export const unitNames: ReadonlyMap<string, NamesByLanguage> = new Map<string, NamesByLanguage>([
  ...numbered(symbols, same),
  ["tsp", forms("tsp", "TL", "c. à c.", "cdta.|cdtas.", "łyżeczka|łyżeczki|łyżeczek|łyżeczki")],
  ["tbsp", forms("tbsp", "EL", "c. à s.", "cda.|cdas.", "łyżka|łyżki|łyżek|łyżki")],
  ["cup", forms("cup|cups", "Tasse|Tassen", "tasse|tasses", "taza|tazas", "szklanka|szklanki|szklanek|szklanki")],
  ["pinch", forms("pinch|pinches", "Prise|Prisen", "pincée|pincées", "pizca|pizcas", "szczypta|szczypty|szczypt|szczypty")],
  ["floz", same("fl oz")],
  ["pint", forms("pint|pints", "Pint|Pints", "pinte|pintes", "pinta|pintas", "pinta|pinty|pint|pinty")],
  ["quart", forms("quart|quarts", "Quart|Quarts", "qt", "qt", "kwarta|kwarty|kwart|kwarty")],
  ["gallon", forms("gallon|gallons", "Gallone|Gallonen", "gallon|gallons", "galón|galones", "galon|galony|galonów|galonu")],
  ["gill", forms("gill|gills", "Gill|Gills", "gill|gills", "gill|gills", "gill|gille|gilli|gilla")],
  ["fluid-dram", same("fl dr")],
  ["dry-pint", forms("dry pint|dry pints", "Dry Pint|Dry Pints", "dry pint|dry pints", "dry pint|dry pints", "dry pint")],
  ["dry-quart", forms("dry quart|dry quarts", "Dry Quart|Dry Quarts", "dry quart|dry quarts", "dry quart|dry quarts", "dry quart")],
  ["bushel", forms("bushel|bushels", "Bushel|Bushels", "boisseau|boisseaux", "bushel|bushels", "buszel|buszle|buszli|buszla")],
  ["go", same("gō")],
  ["stone", forms("stone", "Stone", "stone", "stone", "stone")],
  ["metric-pound", forms("pound (500 g)|pounds (500 g)", "Pfund", "livre|livres", "libra (500 g)|libras (500 g)", "funt (500 g)|funty (500 g)|funtów (500 g)|funta (500 g)")],
  ["stick-butter", forms("stick of butter|sticks of butter", "US-Stück Butter", "bâtonnet de beurre|bâtonnets de beurre", "barra de mantequilla|barras de mantequilla", "kostka masła US|kostki masła US|kostek masła US|kostki masła US")],
  ["piece", forms("piece|pieces", "Stück", "pièce|pièces", "unidad|unidades", "sztuka|sztuki|sztuk|sztuki")],
  ["dozen", forms("dozen", "Dutzend", "douzaine|douzaines", "docena|docenas", "tuzin|tuziny|tuzinów|tuzina")],
  ["batch", forms("batch|batches", "Ansatz|Ansätze", "fournée|fournées", "tanda|tandas", "partia|partie|partii|partii")],
]); // prettier-ignore

/** The trade's words for measures that foods name most, by the English word of one: writers name measures once, in theirs. */
export const measureNames: ReadonlyMap<string, NamesByLanguage> = new Map<string, NamesByLanguage>([
  ["clove", forms("clove|cloves", "Zehe|Zehen", "gousse|gousses", "diente|dientes", "ząbek|ząbki|ząbków|ząbka")],
  ["head", forms("head|heads", "Kopf|Köpfe", "tête|têtes", "cabeza|cabezas", "główka|główki|główek|główki")],
  ["slice", forms("slice|slices", "Scheibe|Scheiben", "tranche|tranches", "rebanada|rebanadas", "kromka|kromki|kromek|kromki")],
  ["stick", forms("stick|sticks", "Stange|Stangen", "branche|branches", "rama|ramas", "łodyga|łodygi|łodyg|łodygi")],
  ["sprig", forms("sprig|sprigs", "Zweig|Zweige", "brin|brins", "ramita|ramitas", "gałązka|gałązki|gałązek|gałązki")],
  ["bunch", forms("bunch|bunches", "Bund", "botte|bottes", "manojo|manojos", "pęczek|pęczki|pęczków|pęczka")],
  ["tin", forms("tin|tins", "Dose|Dosen", "boîte|boîtes", "lata|latas", "puszka|puszki|puszek|puszki")],
  ["can", forms("can|cans", "Dose|Dosen", "boîte|boîtes", "lata|latas", "puszka|puszki|puszek|puszki")],
  ["leaf", forms("leaf|leaves", "Blatt|Blätter", "feuille|feuilles", "hoja|hojas", "liść|liście|liści|liścia")],
  ["stalk", forms("stalk|stalks", "Stängel", "tige|tiges", "tallo|tallos", "łodyga|łodygi|łodyg|łodygi")],
  ["handful", forms("handful|handfuls", "Handvoll", "poignée|poignées", "puñado|puñados", "garść|garście|garści|garści")],
  ["jar", forms("jar|jars", "Glas|Gläser", "bocal|bocaux", "tarro|tarros", "słoik|słoiki|słoików|słoika")],
  ["packet", forms("packet|packets", "Packung|Packungen", "paquet|paquets", "paquete|paquetes", "opakowanie|opakowania|opakowań|opakowania")],
  ["bottle", forms("bottle|bottles", "Flasche|Flaschen", "bouteille|bouteilles", "botella|botellas", "butelka|butelki|butelek|butelki")],
  ["glass", forms("glass|glasses", "Glas|Gläser", "verre|verres", "vaso|vasos", "szklanka|szklanki|szklanek|szklanki")],
  ["cube", forms("cube|cubes", "Würfel", "cube|cubes", "cubo|cubos", "kostka|kostki|kostek|kostki")],
  ["rasher", forms("rasher|rashers", "Scheibe|Scheiben", "tranche|tranches", "loncha|lonchas", "plaster|plastry|plastrów|plastra")],
  ["wedge", forms("wedge|wedges", "Spalte|Spalten", "quartier|quartiers", "gajo|gajos", "cząstka|cząstki|cząstek|cząstki")],
  ["sheet", forms("sheet|sheets", "Blatt|Blätter", "feuille|feuilles", "lámina|láminas", "arkusz|arkusze|arkuszy|arkusza")],
  ["loaf", forms("loaf|loaves", "Laib|Laibe", "pain|pains", "hogaza|hogazas", "bochenek|bochenki|bochenków|bochenka")],
  ["ball", forms("ball|balls", "Kugel|Kugeln", "boule|boules", "bola|bolas", "kulka|kulki|kulek|kulki")],
  ["fillet", forms("fillet|fillets", "Filet|Filets", "filet|filets", "filete|filetes", "filet|filety|filetów|fileta")],
  ["ear", forms("ear|ears", "Kolben", "épi|épis", "mazorca|mazorcas", "kolba|kolby|kolb|kolby")],
  ["ladle", forms("ladle|ladles", "Schöpfkelle|Schöpfkellen", "louche|louches", "cucharón|cucharones", "chochla|chochle|chochli|chochli")],
]); // prettier-ignore

/** Said beside a unit whose size is not the reader's own. English puts it first, the others in brackets behind. */
export const systemNames: Readonly<Record<string, Readonly<Record<AmountLanguage, string>>>> = {
  us: { en: "US", de: "US", fr: "US", es: "US", pl: "US" },
  metric: { en: "metric", de: "metr.", fr: "métr.", es: "métr.", pl: "metr." },
  imp: { en: "imperial", de: "UK", fr: "UK", es: "UK", pl: "UK" },
  au: { en: "Australian", de: "AU", fr: "AU", es: "AU", pl: "AU" },
  label: { en: "label", de: "Etikett", fr: "étiquette", es: "etiqueta", pl: "etykieta" },
  jp: { en: "Japanese", de: "JP", fr: "JP", es: "JP", pl: "JP" },
};
