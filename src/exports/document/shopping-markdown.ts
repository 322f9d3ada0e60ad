import { listDocument, type ListInput } from "./list-document.js";
import { renderMarkdown } from "./render-markdown.js";

/** A shopping list alone, as CommonMark with boxes to tick. */
export const shoppingMarkdown = (input: ListInput): string => renderMarkdown(listDocument(input));
