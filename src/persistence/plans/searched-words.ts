import { editDistance } from "../../domain/quantity/naming/edit-distance.js";
import type { SearchedTexts } from "../../domain/plan/listing/searched-texts.js";
import type { Db } from "../database/session.js";
import { Prisma } from "../generated/client.js";
import { foldWords } from "../sql/fold-words.js";
import { idOfPublisher } from "../sql/id-of-publisher.js";
import type { SearchedWordGroup } from "./plan-facts-data.js";

/** Dictionaries of Postgres that find the forms of a word. Words of other languages are found as they are written, and by their beginnings. */
const dictionaries: Readonly<Record<string, string>> = { en: "english", de: "german", fr: "french", es: "spanish" };

/** Longer ones are numbers and addresses, which nobody types. */
const longestWord = 40;
/** Shorter ones are too like many others. */
const shortestNear = 4;
/** The most words of one plan. */
const mostWords = 6_000;

/** Every folded word, each once. */
export const wordsOf = (texts: readonly SearchedTexts[]): readonly string[] =>
  [...new Set(texts.flatMap(({ text }) => foldWords(text)))]
    .filter((word) => word.length <= longestWord)
    .slice(0, mostWords)
    .toSorted();

/** Words, and their forms by the dictionary of each text's language, as one tsvector. */
export function lexemes(texts: readonly SearchedTexts[], words: readonly string[]): Prisma.Sql {
  const stems = texts.flatMap(({ language, text }) => {
    const dictionary = language === null ? undefined : dictionaries[language];
    if (dictionary === undefined) return [];
    const known = foldWords(text).filter((word) => word.length <= longestWord);
    return [
      Prisma.sql`strip(to_tsvector(${dictionary}::text::regconfig, ${known.slice(0, mostWords).join(" ")}::text))`,
    ];
  });
  return Prisma.join([Prisma.sql`array_to_tsvector(${[...words]}::text[])`, ...stems], " || ");
}

/** The word, and without each of its letters. */
function variantsOf(word: string): readonly string[] {
  const letters = [...word];
  return [...new Set([word, ...letters.map((_, at) => letters.toSpliced(at, 1).join(""))])];
}

const canBeMisspelt = (word: string): boolean => word.length >= shortestNear && /^\p{L}+$/u.test(word);

/** Inside a transaction. */
export async function noteWords(db: Db, publisherId: string, words: readonly string[]): Promise<void> {
  // In one order, so that two that store the same words wait for each other and not both.
  const rows = words.filter(canBeMisspelt).map((word) => ({ word, variants: variantsOf(word) }));
  if (rows.length === 0) return;
  await db.$executeRaw`
    INSERT INTO searched_words (publisher_id, word, variants)
    SELECT ${publisherId}::uuid, n.word, n.variants
    FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS n(word text, variants text[])
    WHERE NOT EXISTS (SELECT FROM searched_words k WHERE k.publisher_id = ${publisherId}::uuid AND k.word = n.word)
    ORDER BY n.word ON CONFLICT (publisher_id, word) DO NOTHING`;
}

/** One word of a search: words that begin so, its other forms, and (`near`) words that it may have been meant for. Letters and digits only. */
function wordQuery({ word, near }: SearchedWordGroup): Prisma.Sql {
  const forms = Object.values(dictionaries).map(
    (dictionary) => Prisma.sql`plainto_tsquery(${dictionary}::text::regconfig, ${word}::text)`,
  );
  const exact = near.map((other) => Prisma.sql`${`'${other}'`}::tsquery`);
  return Prisma.sql`(${Prisma.join([Prisma.sql`${`'${word}':*`}::tsquery`, ...forms, ...exact], " || ")})`;
}

/** Plans f that have all the words. */
export const hasWords = (groups: readonly SearchedWordGroup[]): Prisma.Sql =>
  Prisma.sql`f.words @@ (${Prisma.join(groups.map(wordQuery), " && ")})`;

/** The words of a text that somebody looks for, each once. */
export const wordsLookedFor = (search: string): readonly string[] =>
  foldWords(search).map((word) => word.slice(0, longestWord));

export async function wordsWithoutPlans(db: Db, words: readonly string[]): Promise<readonly string[]> {
  if (words.length === 0) return [];
  const asked = words.map(
    (word, place) =>
      Prisma.sql`SELECT ${place}::int AS place WHERE NOT EXISTS (SELECT FROM plan_facts f WHERE ${hasWords([{ word, near: [] }])})`,
  );
  const rows = await db.$queryRaw<{ place: number }[]>`${Prisma.join(asked, " UNION ALL ")}`;
  return rows.flatMap(({ place }) => words[place] ?? []);
}

/** Words that are looked at, of which some are nearer. */
const mostLookedAt = 200;

export async function nearWords(
  db: Db,
  word: string,
  publisher: string | null,
  limit: number,
): Promise<readonly string[]> {
  if (!canBeMisspelt(word)) return [];
  const ofPublisher = publisher === null ? Prisma.sql`TRUE` : Prisma.sql`w.publisher_id = ${idOfPublisher(publisher)}`;
  const rows = await db.$queryRaw<{ word: string }[]>`
    SELECT DISTINCT w.word FROM searched_words w
    WHERE w.variants && ${[...variantsOf(word)]}::text[] AND ${ofPublisher} LIMIT ${mostLookedAt}::int`;
  const edits = (other: string): number => editDistance(word, other, 3);
  return rows
    .map((row) => row.word)
    .toSorted((a, b) => edits(a) - edits(b) || (a < b ? -1 : 1))
    .slice(0, limit);
}
