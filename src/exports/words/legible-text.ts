/**
 * Controls, lone surrogates and non-characters: XML, HTML and calendars have no place for them. And signs that turn the direction of writing
 * (UAX 9, 2): they reach beyond the words they stand in, so "contains milk" could be made to read otherwise. Letters have a direction of
 * their own and need none.
 */
const illegible =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\p{Bidi_Control}\p{Surrogate}\p{Noncharacter_Code_Point}]/gu;

/** Text with the characters left out that no text format can carry, or that change the text around it. Line ends stay. */
export const legibleText = (text: string): string => text.replace(illegible, "");

/** The same on one line: every run of white space becomes one space. */
export const oneLine = (text: string): string => legibleText(text.replace(/\s+/g, " ")).replace(/ {2,}/g, " ").trim();
