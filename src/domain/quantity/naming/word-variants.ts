/**
 * Spellings of one word, the first for all of them. Words of the trade and of dictionaries; common practice, no source. Two words for one food
 * ("aubergine", "eggplant") are names of that food, not spellings.
 */
const spellings: Readonly<Record<string, readonly string[]>> = {
  en: [
    "yogurt yoghurt yoghourt yogourt yoghurts yogurts",
    "chili chilli chile chilly chilis chillis chiles chilies chillies",
    "doughnut donut",
    "omelette omelet",
    "whisky whiskey",
    "hummus houmous houmus humous humus hoummus hommus",
    "bulgur bulghur bulgar burghul bulghar",
    "ketchup catsup",
    "soy soya",
    "tinned canned",
    "wholemeal wholewheat",
    "fillet filet",
    "licorice liquorice",
    "cardamom cardamon cardamum",
    "falafel felafel",
    "caviar caviare",
    "pilau pilaf pilav",
    "semolina semolena",
    "fibre fiber",
    "grey gray",
    "sulphured sulfured",
    "unsulphured unsulfured",
    "flavoured flavored",
    "choy choi",
    "pak bok pac",
    "mozzarella mozarella",
    "dried dry",
  ],
  de: [
    "joghurt jogurt yoghurt yogurt",
    "brokkoli broccoli",
    "chili chilli",
    "couscous kuskus cous-cous",
    "majonase mayonnaise mayonaise",
    "thunfisch tunfisch",
    "spaghetti spagetti",
    "ketchup ketschup",
    "creme krem",
    "bulgur bulghur",
    "hummus humus",
    "soja soya",
    "tahin tahini tahina",
    "getrocknet trocken",
  ],
  fr: [
    "yaourt yogourt yoghourt yoghurt",
    "oignon ognon",
    "boulgour boulghour bulgur bulghour",
    "quinoa kinoa",
    "houmous humus hummus hommos",
    "ketchup catsup",
    "piment-chili chili",
  ],
  es: [
    "yogur yogurt yoghurt yogures",
    "cuscus couscous",
    "quinoa quinua kinoa",
    "mayonesa mahonesa",
    "bulgur burgol",
    "hummus humus",
    "ketchup catsup catchup",
  ],
  pl: ["jogurt yogurt yoghurt", "kuskus couscous", "quinoa kinoa", "hummus humus"],
};

type Rewriting = readonly [written: RegExp, instead: string];

/** A number and its sign. */
const percent: Rewriting = [/(?<=\d) %/g, "%"];

/** Words that some write as one, and the ways to say that something comes in a tin. */
const written: Readonly<Record<string, readonly Rewriting[]>> = {
  en: [
    [/\bwhole (?:wheat|meal)\b/g, "wholemeal"],
    [/\bmange tout\b/g, "mangetout"],
    [/\bfree range\b/g, "freerange"],
    [/\b(?:medium|large|small) sized\b/g, "medium"],
    [/\bextra (?=large|small)/g, ""],
  ],
  de: [[/\b(?:aus|in|von) (?:der |einer )?(?:dosen?|konserven?)\b/g, "aus dose"]],
  fr: [[/\ben (?:boites?|conserves?)\b/g, "en conserve"]],
  es: [[/\b(?:en|de) (?:latas?|conserva)\b/g, "en conserva"]],
  pl: [[/(?<!\p{L})(?:w|z) (?:puszce|puszkach|puszki|puszek)(?!\p{L})/gu, "z puszki"]],
};

const variants: ReadonlyMap<string, ReadonlyMap<string, string>> = new Map(
  Object.entries(spellings).map(([language, rows]) => [
    language,
    new Map(
      rows.flatMap((row) => {
        const [first = "", ...others] = row.split(" ");
        return [first, ...others].map((word) => [word, first] as const);
      }),
    ),
  ]),
);

/** The one spelling of a plain word that stands for all of them. */
export const usualWord = (word: string, language: string): string => variants.get(language)?.get(word) ?? word;

const mayBeApart =
  /%|\b(?:whole|mange|free|sized|extra|dosen?|konserven?|boites?|conserves?|latas?|conserva|pusz\p{L}+)\b/u;

/** Plain words with those put together that some write apart, and one way to say that something comes in a tin. */
export const joinedWords = (words: string, language: string): string =>
  mayBeApart.test(words)
    ? [percent, ...(written[language] ?? [])].reduce((text, [apart, joined]) => text.replace(apart, joined), words)
    : words;

/** "Moehre" for "Möhre", where a keyboard has no umlaut. Both lose the e. */
export const withoutDigraphs = (word: string, language: string): string =>
  language === "de" ? word.replace(/(?<=[aou])e(?!i|u)/g, "") : word;

/** The words of a plain text, also in the spellings that stand for them, in any language, and without their digraphs. */
export function spellingsOf(text: string): readonly string[] {
  const words = text.split(" ");
  const usual = words.flatMap((word) => [...variants.values()].flatMap((known) => known.get(word) ?? []));
  return [...words, ...usual, ...words.map((word) => withoutDigraphs(word, "de"))];
}
