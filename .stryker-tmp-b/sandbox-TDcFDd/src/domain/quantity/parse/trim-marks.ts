/** The text without these characters at its end. A loop, since a pattern would cost squares on long runs. */
// @ts-nocheck

export const trimEndOf = (text: string, marks: string): string => {
  let end = text.length;
  while (end > 0 && marks.includes(text.charAt(end - 1))) end -= 1;
  return end === text.length ? text : text.slice(0, end);
};

/** The text without these characters at its start. */
export const trimStartOf = (text: string, marks: string): string => {
  let start = 0;
  while (start < text.length && marks.includes(text.charAt(start))) start += 1;
  return start === 0 ? text : text.slice(start);
};
