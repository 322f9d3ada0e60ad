/** Whether a description can be read aloud: it begins and ends as a sentence does, and says nothing in telegram style. */
export function readsAsASentence(description: string): boolean {
  const text = description.trim();
  return (
    /^["`\p{Lu}\d]/u.test(text) && /[.!?:)]$/.test(text) && !/\b(Left out|Null|Empty|Absent|Asks for): /.test(text)
  );
}
