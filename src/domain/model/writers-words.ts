/** Whom or what a plan or a component leans on. */
export interface Credit {
  readonly name: string;
  /** http or https. */
  readonly url?: string;
  /** As its owner names it: "CC BY 4.0". */
  readonly licence?: string;
  /** It was changed, beyond being quoted. */
  readonly adapted?: true;
}

/** Texts in the part of CommonMark that `readWriting` reads. Left out: there is none. */
export interface WritersTexts {
  readonly introduction?: string;
  readonly notes?: string;
  readonly tips?: string;
}

/** What a writer says of a plan or a component beside how it is made. Left out: nothing. */
export interface WritersWords extends WritersTexts {
  /** Things to have at hand that no appliance code names: "a large baking tray". */
  readonly equipment?: readonly string[];
  readonly credits?: readonly Credit[];
}

/** What only a plan has. */
export interface WordsOfPlan extends WritersWords {
  /** What readers look for it by, as written; no two are alike but for case and accents. */
  readonly tags?: readonly string[];
}

const keys = ["introduction", "notes", "tips", "equipment", "credits", "tags"] as const;

/** The words alone, in one order. */
export const wordsOf = (thing: WordsOfPlan): WordsOfPlan =>
  Object.fromEntries(keys.flatMap((key) => (thing[key] === undefined ? [] : [[key, thing[key]]])));
