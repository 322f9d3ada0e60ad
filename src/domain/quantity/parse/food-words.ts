import { trimEndOf } from "./trim-marks.js";
import { describingWords, formAdverbs, formWords, sizeWords } from "./words/form-words.js";

interface FoodWords {
  readonly food: string;
  /** With forms and sizes, which may belong to its name ("firm tofu"); null where nothing was taken. */
  readonly whole: string | null;
  readonly form: string | null;
  readonly notes: readonly string[];
}

const JOINERS = new Set(["and", "&", "und", "et", "y", "i"]);

const bare = (word: string): string => trimEndOf(word, ",.").toLowerCase();

/** True while the food itself is still to come: "boneless", "peeled". */
export const onlyDescribes = (segment: string): boolean =>
  segment
    .split(" ")
    .map(bare)
    .every((word) => formWords.has(word) || formAdverbs.has(word) || sizeWords.has(word) || describingWords.has(word));

/** Words at the end that say the form, as French, Spanish and Polish put them ("cebolla picada"). */
const formsBehind = (words: readonly string[]): number => {
  let from = words.length;
  while (from > 1 && (formWords.has(bare(words[from - 1] ?? "")) || formAdverbs.has(bare(words[from - 1] ?? ""))))
    from -= 1;
  return from;
};

/** "finely" before "chopped"; "freshly" before "ground" belongs to the name. */
const sharpens = (words: readonly string[], at: number): boolean =>
  formAdverbs.has(bare(words[at] ?? "")) && formWords.has(bare(words[at + 1] ?? ""));

const formsOf = (words: readonly string[]): readonly string[] =>
  words.flatMap((word) => {
    const form = formWords.get(bare(word));
    return form === undefined ? [] : [form];
  });

/**
 * Takes forms ("chopped") and sizes ("ripe") from a food's words. What is sold in a container keeps all its words: "diced
 * tomatoes" in a tin are their own food.
 */
export const foodWords = (segment: string, keepsForms: boolean): FoodWords => {
  const words = segment.split(" ").filter((word) => word !== "");
  const notes: string[] = [];
  let from = 0;
  for (; from < words.length - 1; from += 1) {
    const word = bare(words[from] ?? "");
    const isForm = formWords.has(word) || sharpens(words, from);
    if (sizeWords.has(word)) notes.push(words[from] ?? "");
    else if (!(isForm && !keepsForms) && !(from > 0 && JOINERS.has(word))) break;
  }
  let last = words.length;
  for (; last > from + 1 && sizeWords.has(bare(words[last - 1] ?? "")); last -= 1) notes.push(words[last - 1] ?? "");
  const to = keepsForms ? last : Math.max(formsBehind(words.slice(0, last)), from + 1);
  const forms = keepsForms ? [] : [...formsOf(words.slice(0, from)), ...formsOf(words.slice(to, last))];
  const food = words.slice(from, to).join(" ");
  const whole = words.join(" ");
  return {
    food,
    whole: whole === food ? null : whole,
    form: forms.length === 0 ? null : [...new Set(forms)].join(", "),
    notes,
  };
};
