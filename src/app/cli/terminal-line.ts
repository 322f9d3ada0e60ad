/** One line that a terminal shows as it is: a file or a service may hold signs that move the cursor or turn the text round. */
export const terminalLine = (text: string): string =>
  text.replace(
    /[\p{Cc}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/gu,
    (sign) => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`,
  );
