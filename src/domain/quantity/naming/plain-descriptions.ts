import { accentedWords, plainWords } from "./plain-words.js";

const germanEndings = ["", "e", "er", "es", "en", "em"];
const polishEndings = ["y", "i", "a", "e", "ie", "ego", "iego", "ej", "iej", "ych", "ich", "ym", "im", "ą"];

const set = (words: string): readonly string[] => words.split(" ").filter((word) => word !== "");
const inflected = (stems: string, endings: readonly string[]): readonly string[] =>
  set(stems).flatMap((stem) => endings.map((ending) => stem + ending));
const romance = (stems: string): readonly string[] =>
  set(stems).flatMap((stem) => [stem, `${stem}s`, `${stem}e`, `${stem}es`]);
const spanish = (stems: string): readonly string[] =>
  set(stems).flatMap((stem) => ["o", "a", "os", "as"].map((ending) => stem + ending));

const wordsOf = (lists: Readonly<Record<string, readonly string[]>>): ReadonlyMap<string, ReadonlySet<string>> =>
  new Map(
    Object.entries(lists).map(([language, words]) => [
      language,
      new Set(words.map(language === "pl" ? accentedWords : plainWords)),
    ]),
  );

/** Freshness: changes nothing, but for what is another food when it is fresh. */
export const freshWords = wordsOf({
  en: ["fresh"],
  de: inflected("frisch", germanEndings),
  fr: set("frais fraîche fraîches"),
  es: spanish("fresc"),
  pl: inflected("śwież", polishEndings),
});

/** Sizes and ripeness: change how much one is, not what it is. */
const sizeWords = wordsOf({
  en: set("large small medium big ripe jumbo"),
  de: [...inflected("groß klein mittelgroß mittler reif", germanEndings)],
  fr: [...romance("grand petit gros mûr"), ...set("grosse grosses moyen moyenne moyens moyennes")],
  es: [...set("grande grandes"), ...spanish("pequeñ median madur")],
  pl: [...inflected("duż mał śred średni dojrzał", polishEndings), ...set("duże małe średnie")],
});

/** How it was grown or handled: changes nothing. */
const growingWords = wordsOf({
  en: set("organic bio freerange homegrown washed unwashed unpeeled unwaxed uncooked loose nice good"),
  de: [...set("bio"), ...inflected("biologisch ökologisch regional unbehandelt gewaschen ungekocht", germanEndings)],
  fr: [...set("bio biologique biologiques"), ...romance("lavé")],
  es: [...spanish("ecológic biológic orgánic"), ...set("bio")],
  pl: [...inflected("ekologiczn", polishEndings), ...set("bio eko")],
});

/** How a food was preserved or readied: another food, which a name without such a word does not tell from its sisters. */
export const stateWords = wordsOf({
  en: set("dried dry tinned canned frozen cooked boiled"),
  de: [...inflected("getrocknet gekocht gefroren tiefgefroren tiefgekühlt", germanEndings)],
  fr: set(
    "sec secs sèche sèches séché séchée séchés séchées surgelé surgelée surgelés surgelées cuit cuite cuits cuites",
  ),
  es: [...spanish("sec cocid congelad hervid"), ...spanish("desecad")],
  pl: inflected("such suszon mrożon gotowan konserwow", polishEndings),
});

/** Colours and the like: part of the name, wherever they stand. */
export const freeWords = wordsOf({
  en: set(
    "green red white black brown yellow purple golden dried tinned canned frozen smoked ground whole sweet wild baby raw cooked boiled roasted toasted salted unsalted pickled plain",
  ),
  de: inflected(
    "grün rot weiß schwarz gelb braun lila getrocknet gefroren tiefgekühlt geräuchert gemahlen ganz süß wild roh gekocht geröstet gesalzen ungesalzen eingelegt",
    germanEndings,
  ),
  fr: [
    ...romance("vert noir brun sec surgelé fumé moulu entier sucré cru cuit grillé salé"),
    ...set("rouge rouges jaune jaunes blanc blanche blancs blanches doux douce sèche sèches"),
  ],
  es: [
    ...spanish("roj blanc negr amarill sec congelad ahumad molid enter crud cocid tostad salad"),
    ...set("verde verdes dulce dulces"),
  ],
  pl: inflected(
    "zielon czerwon biał czarn żółt brązow such suszon mrożon wędzon mielon cał słodk surow gotowan",
    polishEndings,
  ).concat(
    // The part of a plant stands before its name or behind it: "korzeń pietruszki", "pietruszka korzeń".
    set("korzeń korzenia nać naci natka natki liście liści liść"),
  ),
});

/** Words between the words of a name. What something is with, without or in is never one of them. */
export const joiningWords = wordsOf({
  en: set("of the"),
  de: set("der die das den dem von vom des"),
  fr: set("d de du des la le les l"),
  es: set("de del la el los las"),
  pl: [],
});

/** What is another food when it is fresh: yeast, noodles, soft cheese, and so on. */
const otherWhenFresh = wordsOf({
  en: set(
    "yeast pasta noodle noodles spaghetti tagliatelle ravioli gnocchi cheese cream breadcrumb breadcrumbs crumb crumbs lasagne sausage",
  ),
  de: set("hefe nudel nudeln pasta spaghetti tagliatelle käse semmelbrösel paniermehl sahne creme würste wurst"),
  fr: set("levure pâte pâtes fromage crème chapelure lasagne lasagnes saucisse saucisses"),
  es: set("levadura pasta queso nata crema fideos lasaña"),
  pl: set("drożdże drożdży makaron makaronu ser sera serek śmietana śmietany"),
});

/** Sizes that belong to the name of some beans, lentils, oats and salts. */
const otherBySize = wordsOf({
  en: set("bean beans oat oats lentil lentils salt pasta"),
  de: set("bohne bohnen linse linsen salz haferflocken"),
  fr: set("pois haricot haricots sel lentille lentilles suisse flocon flocons"),
  es: set("alubia alubias judía judías sal lenteja lentejas"),
  pl: set("fasola fasoli sól soli soczewica soczewicy płatki płatków"),
});

const has = (list: ReadonlyMap<string, ReadonlySet<string>>, language: string, word: string): boolean =>
  list.get(language)?.has(word) === true;

/** Whether a word says nothing about which food is meant, among these words of the name. */
export function changesNothing(word: string, language: string, words: readonly string[]): boolean {
  if (has(growingWords, language, word)) return true;
  if (has(freshWords, language, word)) return !words.some((each) => has(otherWhenFresh, language, each));
  return has(sizeWords, language, word) && !words.some((each) => has(otherBySize, language, each));
}

/** Whether a word of a name only says that it is fresh, which is what is sold where nothing else is said. */
export const onlyFresh = (word: string, language: string, words: readonly string[]): boolean =>
  has(freshWords, language, word) && changesNothing(word, language, words);

/** Parts of a shop where nothing is fresh: what is called fresh there is another food. */
export const shelvesOfDryGoods: ReadonlySet<string> = new Set([
  "dry-goods",
  "breakfast",
  "baking",
  "spices",
  "tins",
  "jars",
  "frozen",
  "oils-and-vinegars",
  "sauces-and-condiments",
]);

/** Work done on a food after it is bought, behind a comma. */
const preparations = wordsOf({
  en: set(
    "chopped diced sliced grated peeled halved quartered cubed shredded crushed torn trimmed rinsed washed drained finely roughly coarsely thinly and deseeded seeded cored pitted",
  ),
  de: [
    ...inflected(
      "gehackt gewürfelt geschnitten gerieben geraspelt geschält halbiert geviertelt zerdrückt abgetropft entkernt",
      germanEndings,
    ),
    ...set("fein grob und klein"),
  ],
  fr: [...romance("haché tranché émincé râpé pelé épluché égoutté dénoyauté"), ...set("finement et")],
  es: [...spanish("picad rallad pelad troced escurrid deshuesad"), ...set("finamente y")],
  pl: [...inflected("posiekan pokrojon start obran odsączon", polishEndings), ...set("drobno i")],
});

/** Whether these words only say what is done with a food once it is there. */
export const onlyPrepares = (words: readonly string[], language: string): boolean =>
  words.length > 0 && words.every((word) => has(preparations, language, word));

/** Whether one of these words says how large or ripe one is. */
export const saysSize = (words: string, language: string): boolean =>
  (language === "pl" ? accentedWords(words) : plainWords(words))
    .split(" ")
    .some((word) => has(sizeWords, language, word));
