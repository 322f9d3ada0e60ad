import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import { listDocumentInSlices, type ListInput } from "./list-document.js";
import { renderMarkdownInSlices } from "./render-markdown.js";

/** A shopping list alone, as CommonMark with boxes to tick. */
export const shoppingMarkdown = (input: ListInput): string => runToEnd(shoppingMarkdownInSlices(input));

/** The same, turn by turn. */
export function* shoppingMarkdownInSlices(input: ListInput): InSlices<string> {
  return yield* renderMarkdownInSlices(yield* listDocumentInSlices(input));
}
