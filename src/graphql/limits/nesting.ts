import { GraphQLError, Lexer, Source, TokenKind } from "graphql";

/** The most brackets that may be open at a time. The deepest operation that `documentLimits` lets through has a third of them. */
export const deepestNesting = 100;

const opening: readonly string[] = [TokenKind.BRACE_L, TokenKind.BRACKET_L, TokenKind.PAREN_L];
const closing: readonly string[] = [TokenKind.BRACE_R, TokenKind.BRACKET_R, TokenKind.PAREN_R];

/**
 * Looks at the brackets of a document before it is parsed: the parser calls itself for each, and a document of nothing else would use
 * up its stack. null: it may be parsed. What the lexer cannot read is left to the parser to say.
 *
 * @param tokens no more of them are looked at
 */
export function nestingFault(body: string, tokens: number): GraphQLError | null {
  const source = new Source(body);
  const lexer = new Lexer(source);
  let depth = 0;
  for (let seen = 0; seen < tokens; seen += 1) {
    let kind: string;
    try {
      ({ kind } = lexer.advance());
    } catch (error) {
      if (error instanceof GraphQLError) return null;
      throw error;
    }
    if (kind === TokenKind.EOF) return null;
    if (opening.includes(kind)) depth += 1;
    if (closing.includes(kind)) depth -= 1;
    if (depth <= deepestNesting) continue;
    const message = `This document has more than ${deepestNesting} nested brackets. Use several requests.`;
    return new GraphQLError(message, { source, positions: [lexer.token.start] });
  }
  return null;
}
