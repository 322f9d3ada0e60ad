import { listDocument, type ListInput } from "./list-document.js";
import { renderHtml, type HtmlSkin } from "./render-html.js";

const skin: HtmlSkin = {
  attributes: () => "",
  tick: (label, done) => `<label><input type="checkbox"${done ? " checked" : ""}> ${label}</label>`,
  headingsBelow: 1,
};

/** A shopping list alone, as a fragment of HTML without styles: headings from h2 down, boxes to tick that need no script. */
export const shoppingHtml = (input: ListInput): string => `${renderHtml(listDocument(input), skin)}\n`;
