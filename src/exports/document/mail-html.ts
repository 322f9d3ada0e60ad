import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { Addresses } from "../addresses.js";
import { oneLine } from "../words/legible-text.js";
import { imageHeight, imageWidthFor, type Image } from "../../domain/model/image.js";
import { imagePath } from "../image-address.js";
import { markupText } from "./markup-text.js";
import { planDocumentInSlices } from "./plan-document.js";
import { renderHtmlInSlices, type HtmlElement, type HtmlSkin } from "./render-html.js";
import { otherLanguage } from "../words/languages-of.js";
import { wordsFor } from "../words/words-for.js";
import { writingDirection } from "../words/writing-direction.js";

/** No colours of paper or ink: mail programs choose them, by day and by night. Grey lines show on both. */
const styles: Readonly<Record<HtmlElement, string>> = {
  h1: "margin:0 0 12px;font-size:28px;line-height:1.25",
  h2: "margin:32px 0 8px;padding:0 0 4px;border-bottom:2px solid #888888;font-size:22px;line-height:1.3",
  h3: "margin:20px 0 4px;font-size:18px;line-height:1.3",
  h4: "margin:16px 0 4px;font-size:16px;line-height:1.3",
  p: "margin:0 0 12px",
  ul: "margin:0 0 12px;padding:0 24px",
  ol: "margin:0 0 12px;padding:0 24px",
  li: "margin:0 0 6px",
  table: "width:100%;margin:0 0 16px;border-collapse:collapse",
  th: "padding:6px;border-bottom:1px solid #888888;text-align:START;vertical-align:top;font-size:14px",
  "row-th": "padding:6px;border-bottom:1px solid #888888;text-align:START;vertical-align:top;font-weight:normal",
  td: "padding:6px;border-bottom:1px solid #888888;text-align:START;vertical-align:top",
  a: "text-decoration:underline",
  em: "font-style:italic;font-size:14px",
};

/** Mail programs know left and right, not start. */
const skinOf = (direction: "ltr" | "rtl"): HtmlSkin => ({
  attributes: (element) => ` style="${styles[element].replace("START", direction === "ltr" ? "left" : "right")}"`,
  tick: (label, done) => `${done ? "&#9745;" : "&#9744;"} ${label}`,
  headingsBelow: 0,
});

const body = "margin:0;padding:0;font-family:Georgia,'Times New Roman',serif;font-size:16px;line-height:1.5";

/** Width of the column, in pixels. */
const column = 600;

/** Where pictures are fetched from; null: the mail shows none, and fetches nothing. */
type PictureOrigin = string | null;

/**
 * A whole plan as the HTML of a mail: one column of at most 600 px, inline styles, no script, and nothing to fetch but the plan's picture
 * where it is asked for, in the colours of the reader's own program. Every text of the writer's is escaped. Parameters: `planDocumentInSlices`.
 */
export const mailHtml = (answer: PlanAnswer, addresses: Addresses, changeNote: string | null): string =>
  runToEnd(mailHtmlInSlices(answer, addresses, changeNote));

/** The same, turn by turn. */
export function* mailHtmlInSlices(
  answer: PlanAnswer,
  addresses: Addresses,
  changeNote: string | null,
  pictures: PictureOrigin = null,
): InSlices<string> {
  const { plan } = answer.scaled.bundle;
  const words = wordsFor(answer.reader.locale);
  const direction = writingDirection(plan.locale);
  const blocks = yield* planDocumentInSlices(answer, addresses, changeNote);
  const drawn = yield* renderHtmlInSlices(blocks, skinOf(direction));
  return `<!doctype html>
<html lang="${markupText(otherLanguage(plan.locale, words) === null ? plan.locale : words.language)}" dir="${direction}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="supported-color-schemes" content="light dark">
<title>${markupText(oneLine(plan.title))}</title>
</head>
<body style="${body}">
<table role="presentation" style="width:100%;border-collapse:collapse">
<tr>
<td style="padding:16px">
<table role="presentation" style="width:100%;max-width:600px;margin:0 auto;border-collapse:collapse">
<tr>
<td style="padding:0">
${pictures === null ? "" : pictureHtml(pictures, plan.publisher, plan.image)}${drawn}
</td>
</tr>
</table>
</td>
</tr>
</table>
</body>
</html>
`;
}

/** JPEG, which every mail program shows. Its size is said, so that nothing moves when it comes. */
function pictureHtml(origin: string, publisher: string, image: Image | undefined): string {
  if (image?.stored === undefined) return "";
  const { stored, alt, credit } = image;
  const url = origin + imagePath(publisher, stored, imageWidthFor(stored, column), "JPEG");
  const shown = Math.min(column, stored.width);
  const size = `width="${String(shown)}" height="${String(imageHeight(stored, shown))}"`;
  const style = "display:block;width:100%;height:auto;margin:0 0 12px;border:0";
  const said = credit === null ? "" : `<p style="${styles.p};${styles.em}">${markupText(oneLine(credit))}</p>\n`;
  return `<img src="${markupText(url)}" alt="${markupText(oneLine(alt))}" ${size} style="${style};max-width:${String(shown)}px">\n${said}`;
}
