import { unlimitedWork, type Work } from "../../counted-work.js";
import { memoizeLatest } from "../../memoize.js";
import { accentedWords, plainWords } from "./plain-words.js";
import {
  changesNothing,
  freeWords,
  freshWords,
  joiningWords,
  onlyFresh,
  onlyPrepares,
  stateWords,
} from "./plain-descriptions.js";
import { joinedWords, usualWord, withoutDigraphs } from "./word-variants.js";
import { wordStem } from "./word-stem.js";

const folded = (words: string, language: string): string => foldedFrom(words, plainWords(words), language);

const foldedFrom = (written: string, plain: string, language: string): string =>
  joinedWords(language === "pl" ? accentedWords(written) : plain, language);

/** The words that a name is made of, without those that only join them. */
const wordsOf = (written: string, language: string): readonly string[] => wordsIn(folded(written, language), language);

const oneWord = /^[a-z0-9%]+$/;

function wordsIn(text: string, language: string): readonly string[] {
  if (oneWord.test(text)) return [text];
  const words = text.match(/[\p{L}\p{N}%]+/gu) ?? [];
  const joining = joiningWords.get(language);
  if (joining === undefined || !words.some((word) => joining.has(word))) return words;
  const telling = words.filter((word) => !joining.has(word));
  return telling.length > 0 ? telling : words;
}

const isFree = (word: string, language: string): boolean => freeWords.get(language)?.has(word) === true;

const freeEndings: Readonly<Record<string, RegExp>> = {
  de: /(?:e[rsnm]?)$/u,
  fr: /(?:h?es?|s)$/u,
  es: /[oa]?s?$/u,
};

const oneForm = (word: string, language: string): string => {
  const usual = usualWord(word, language);
  return withoutDigraphs(usual === word ? usualWord(wordStem(word, language), language) : usual, language);
};

const freeForm = (word: string, language: string): string => {
  const ending = freeEndings[language];
  return ending === undefined ? oneForm(word, language) : usualWord(word.replace(ending, ""), language);
};

/** The forms that words have in keys. */
interface WordForms {
  readonly one: (word: string, language: string) => string;
  readonly free: (word: string, language: string) => string;
}

const wordForms: WordForms = { one: oneForm, free: freeForm };

/** Words as a key: in their order, but for colours and the like, which a name has before or behind. */
function keyOf(words: readonly string[], language: string, forms = wordForms): string {
  const [only] = words;
  if (words.length === 1 && only !== undefined) return forms.one(only, language);
  const named = words.filter((word) => !isFree(word, language));
  if (named.length === 0) return words.map((word) => forms.one(word, language)).join(" ");
  const free = words.filter((word) => isFree(word, language)).map((word) => forms.free(word, language));
  return [...named.map((word) => forms.one(word, language)), ...free.toSorted().map((word) => `+${word}`)].join(" ");
}

const isState = (word: string, language: string): boolean => stateWords.get(language)?.has(word) === true;

/** Whether a name says that its food is fresh, and nothing else about how it is preserved. */
export const saysFresh = (name: string, language: string): boolean => {
  const words = wordsOf(name, language);
  return words.some((word) => onlyFresh(word, language, words)) && !words.some((word) => isState(word, language));
};

/** What a name of a food is found by. */
interface NameKeys {
  /** As written, plain. */
  readonly plain: string;
  readonly key: string;
  /** The key without the words for how it is preserved, or that it is fresh; null: the name has none. */
  readonly state: string | null;
}

/** The same form of a word each time it is asked for, by language. */
function rememberedForms(): WordForms {
  const remember = (form: WordForms["one"]): WordForms["one"] => {
    const known = new Map<string, Map<string, string>>();
    return (word, language) => {
      const forms = known.get(language) ?? new Map<string, string>();
      const before = forms.get(word);
      if (before !== undefined) return before;
      const found = form(word, language);
      known.set(language, forms.set(word, found));
      return found;
    };
  };
  return { one: remember(oneForm), free: remember(freeForm) };
}

/** Reads the keys of many names: each word is taken apart once. */
export function nameKeyReader(): (name: string, language: string) => NameKeys {
  const forms = rememberedForms();
  return (name, language) => {
    const plain = plainWords(name);
    const words = wordsIn(foldedFrom(name, plain, language), language);
    return { plain, key: keyOf(words, language, forms), state: stateKey(words, language, forms) };
  };
}

function stateKey(words: readonly string[], language: string, forms: WordForms): string | null {
  if (words.length < 2) return null;
  const plain = words.filter((word) => !isState(word, language) && !onlyFresh(word, language, words));
  const rest = plain.slice(0, inContainer(plain));
  return rest.length === words.length || rest.length === 0 ? null : keyOf(rest, language, forms);
}

const containers = new Set("in aus from conserve boite bote conserva lata puszki puszce".split(" "));

/** "Kichererbsen aus der Dose": the words up to the container. */
function inContainer(words: readonly string[]): number {
  const at = words.findIndex((word) => containers.has(word));
  if (at < 1) return words.length;
  return /^(?:en|w|z)$/u.test(words[at - 1] ?? "") ? at - 1 : at;
}

/** What a text may mean, each way with the keys to look up: those before go first. */
interface NameReading {
  readonly keys: readonly string[];
  /** "fresh" was left out: nothing from a dry shelf is meant. */
  readonly isFresh: boolean;
}

/** Two words that written as one name another food: corn flour is no cornflour, sweet bread no sweetbread. */
const staysApart = new Set(["corn flour", "sweet bread", "sweet breads"]);

function joinedOnce(words: readonly string[], language: string): readonly string[] {
  return words.slice(1).flatMap((word, at) => {
    const before = words[at] ?? "";
    if (language === "en" && staysApart.has(`${before} ${word}`)) return [];
    return keyOf([...words.slice(0, at), before + word, ...words.slice(at + 2)], language);
  });
}

/** "Biomilch" */
const withoutBio = (words: readonly string[]): readonly string[] =>
  words.map((word) => (/^bio\p{L}{4,}/u.test(word) ? word.slice(3) : word));

/** Most words of a text that are looked at in other ways than as written. */
const mostWords = 8;

/** What stands before the first comma, and the one thing behind it that says which food is meant; work done on it is left out. */
function aroundComma(
  written: string,
  language: string,
): { readonly head: string; readonly tail: string | null } | null {
  const [head = "", ...tails] = written.split(/\s*[,;]\s*/u);
  if (tails.length === 0) return null;
  const telling = tails.filter((tail) => !onlyPrepares(folded(tail, language).split(" "), language));
  return telling.length > 1 ? null : { head, tail: telling[0] ?? null };
}

interface NameAsked {
  readonly written: string;
  readonly language: string;
  readonly work: Work;
}

const stepsOfReading = 24;

/** A name is held against one plan after another, and against all foods: its forms are the same each time. */
const latestReadings = memoizeLatest(
  "name-readings",
  2_000,
  ({ written, language }: NameAsked) => `${language} ${written}`,
  ({ written, language, work }) => {
    work.step(stepsOfReading);
    return read(written, language);
  },
);

/** The ways to read a text as a food's name, the nearest to its words first. */
export const readingsOf = (written: string, language: string, work: Work = unlimitedWork): readonly NameReading[] =>
  latestReadings({ written, language, work });

function read(written: string, language: string): readonly NameReading[] {
  const whole = wordsOf(written, language);
  if (whole.length === 0 || whole.length > mostWords) return [];
  const parts = aroundComma(written, language);
  const orders =
    parts === null
      ? [whole]
      : parts.tail === null
        ? [wordsOf(parts.head, language)]
        : [wordsOf(`${parts.head} ${parts.tail}`, language), wordsOf(`${parts.tail} ${parts.head}`, language)];
  const telling = orders.map((words) => {
    const left = words.filter((word) => !changesNothing(word, language, words));
    return left.length === 0 ? words : left;
  });
  const isFresh = whole.some((word) => freshWords.get(language)?.has(word) === true);
  const bare = telling.map((words) => (language === "de" ? withoutBio(words) : words));
  return [
    { keys: orders.map((words) => keyOf(words, language)), isFresh: false },
    { keys: telling.map((words) => keyOf(words, language)), isFresh },
    { keys: bare.map((words) => keyOf(words, language)), isFresh },
    { keys: bare.flatMap((words) => joinedOnce(words, language)), isFresh },
  ];
}
