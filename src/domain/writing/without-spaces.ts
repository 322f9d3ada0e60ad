/** A text without the spaces at its end. An expression that looks for them begins anew at every space that stands elsewhere. */
export function withoutSpacesAtEnd(text: string): string {
  let end = text.length;
  while (end > 0 && text[end - 1] === " ") end -= 1;
  return text.slice(0, end);
}
