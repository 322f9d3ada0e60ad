/** Canonical form, then how the languages say it, in every ending that stands before or after a food. */
const rows: readonly string[] = [
  "chopped|gehackt|haché hachée hachés hachées|picado picada picados picadas|posiekany posiekana posiekane posiekanej posiekanego posiekanych",
  "diced|gewürfelt|en_dés|en_cubos|pokrojony_w_kostkę",
  "sliced|geschnitten|tranché tranchée tranchés tranchées émincé émincée émincés émincées|rebanado rebanada rebanados rebanadas|pokrojony pokrojona pokrojone",
  "grated|gerieben geraspelt|râpé râpée râpés râpées|rallado rallada rallados ralladas|starty starta starte startego startej",
  "minced||||",
  "shredded||||",
  "cubed||||",
  "crumbled|zerbröselt|émietté émiettée|desmenuzado desmenuzada|pokruszony pokruszona pokruszone",
  "mashed|zerdrückt|écrasé écrasée|machacado machacada|rozgnieciony rozgnieciona rozgniecione",
  "melted|geschmolzen|fondu fondue|derretido derretida|roztopiony roztopiona roztopione",
  "peeled|geschält|épluché épluchée épluchés épluchées pelé pelée pelés pelées|pelado pelada pelados peladas|obrany obrana obrane",
  "pitted|entsteint|dénoyauté dénoyautée dénoyautés dénoyautées|deshuesado deshuesada deshuesados deshuesadas|",
  "slivered||||",
  "halved|halbiert|||",
  "quartered|geviertelt|||",
  "julienned||||",
  "torn||||",
  "sifted|gesiebt|tamisé tamisée|tamizado tamizada|przesiany przesiana",
  "packed||||",
  "trimmed||||",
  "zested||||",
  "juiced||||",
];

const germanEndings = ["", "e", "en", "er", "es", "em"];

const spellings = (row: string): readonly (readonly [string, string])[] => {
  const [en = "", de = "", ...others] = row.split("|");
  const german = de === "" ? [] : de.split(" ").flatMap((stem) => germanEndings.map((ending) => stem + ending));
  const rest = others.flatMap((list) => list.split(" ")).filter((word) => word !== "");
  return [en, ...german, ...rest].map((word) => [word.replaceAll("_", " "), en]);
};

/** Any spelling of a form to its English name, which density tables use. */
export const formWords: ReadonlyMap<string, string> = new Map(rows.flatMap(spellings));

/** Words that only sharpen a form ("finely"). */
export const formAdverbs: ReadonlySet<string> = new Set(
  (
    "finely roughly coarsely thinly thickly freshly lightly loosely firmly tightly fein grob frisch dünn " +
    "finement grossièrement fraîchement finamente toscamente recién drobno grubo świeżo cienko"
  ).split(" "),
);

/** Size and ripeness: kept as a note, never part of the food's name. */
export const sizeWords: ReadonlySet<string> = new Set(
  (
    "large medium small big extra-large medium-sized ripe overripe firm fat " +
    "groß große großen großer großes grosse grossen klein kleine kleinen kleiner kleines mittelgroß mittelgroße mittelgroßen mittel mittlere mittleren mittelgr mittl m.-gr kl reif reife reifen reifer " +
    "grand grande grands grandes gros grosse grosses petit petite petits petites moyen moyenne moyens moyennes mûr mûre mûrs mûres " +
    "grandes pequeño pequeña pequeños pequeñas mediano mediana medianos medianas maduro madura maduros maduras " +
    "duży duża duże dużych mały mała małe małych średni średnia średnie średnich dojrzały dojrzała dojrzałe dojrzałych"
  ).split(" "),
);

/** Words that a comma may follow although the food is still to come ("boneless, skinless chicken"). */
export const describingWords: ReadonlySet<string> = new Set(
  "boneless skinless skin-on bone-in seedless unsalted salted unsweetened low-fat reduced-sodium fresh dried raw cooked".split(" "),
); // prettier-ignore

/** Between the number and the unit: how full the spoon is. */
export const fillWords: ReadonlyMap<string, "HEAPED" | "LEVEL" | "SCANT" | "APPROXIMATE"> = new Map([
  ...("heaped heaping rounded gehäufter gehäufte gehäuften gehäuft bombée bombées colmada colmadas czubata czubate czubatych"
    .split(" ")
    .map((word) => [word, "HEAPED"] as const)),
  ["geh", "HEAPED"],
  ...("level gestrichener gestrichene gestrichen rase rases rasa rasas płaska płaskie płaskich"
    .split(" ")
    .map((word) => [word, "LEVEL"] as const)),
  ["gestr", "LEVEL"],
  ...("scant knapp knapper knappe escasa escasas".split(" ").map((word) => [word, "SCANT"] as const)),
  ...("generous good about approximately approx around roughly circa ca etwa ungefähr environ unos aproximadamente około ok"
    .split(" ")
    .map((word) => [word, "APPROXIMATE"] as const)),
]); // prettier-ignore
