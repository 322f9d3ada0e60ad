/** What a sentence is made with: text as it is shown, numbers to count by, words to choose by. */
export type Arguments = Readonly<Record<string, string | number>>;

/** A sentence in ICU MessageFormat, in English. */
interface Message<Given extends Arguments> {
  readonly text: string;
  /** Arguments such as a caller gives: what translators see, and what says the types. */
  readonly example: Given;
}

/** `message("{count, plural, one {# day} other {# days}}", { count: 3 })` */
export const message = <Given extends Arguments>(text: string, example: Given): Message<Given> => ({ text, example });

/** Words without arguments, sentences with some, and groups of either. */
export interface Catalogue {
  readonly [key: string]: string | Message<Arguments> | Catalogue;
}

/** A catalogue in another language: the same keys, each a text. */
export type Translation<Of> = {
  readonly [Key in keyof Of]: Of[Key] extends string | Message<Arguments> ? string : Translation<Of[Key]>;
};

/** A catalogue to speak with: words as they are, sentences as functions of their arguments. */
export type Spoken<Of> = {
  readonly [Key in keyof Of]: Of[Key] extends string
    ? string
    : Of[Key] extends Message<infer Given>
      ? (given: Given) => string
      : Spoken<Of[Key]>;
};

/** Whether an entry is a sentence with arguments, not words or a group of entries. */
export const isMessage = (entry: Catalogue[string]): entry is Message<Arguments> =>
  typeof entry !== "string" && typeof entry["text"] === "string" && typeof entry["example"] === "object";
