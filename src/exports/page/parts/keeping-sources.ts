import type { Basis, StorageGuidance, Subject } from "../../../domain/storage/guidance.js";
import { lengthText } from "../../sentences/keeping-row.js";
import type { NameBook } from "../../words/name-book.js";
import { degreeText } from "../../words/degree-text.js";
import { printedText } from "../../words/printed-text.js";
import { sourceText } from "../../words/source-text.js";
import { markup, type Content } from "../markup.js";
import { folded, type PlanView } from "../plan-view.js";

const same = (a: Subject, b: Subject): boolean => a.kind === b.kind && a.slug === b.slug;

/** On whose word everything keeps as long as it does. What a meal keeps by stands with what is in it. */
export const keepingSources = (guidance: readonly StorageGuidance[], { book }: PlanView): Content =>
  markup`<ul class="bases">${guidance
    .filter(({ subject }) => subject.kind !== "MEAL")
    .map((row) => rowMarkup(row, book))}</ul>`;

/** The author's own word and the one that is used; the others that were looked at are folded away. */
function rowMarkup(row: StorageGuidance, book: NameBook): Content {
  const words = book.words.page;
  const isNear = ({ of, kind, decides }: Basis): boolean => decides || (kind === "WRITER" && same(of, row.subject));
  const near = row.basis.filter(isNear);
  const rest = row.basis.filter((basis) => !isNear(basis));
  const length = lengthText(row.days, row.counts, book.words);
  const several = row.basis.length > 1;
  return markup`<li><b>${book.subject(row.subject)}, ${words.place[row.place]}</b>: ${near.map(
    (basis) => markup`${basisText(basis, row, book)} `,
  )}${several && markup`<b>${words.use({ length })}</b>`}${
    row.upToDays !== null && ` (${words.upTo({ length: lengthText(row.upToDays, row.counts, book.words) })})`
  }${
    rest.length > 0 &&
    folded(
      words.otherSources({ count: rest.length }),
      markup`<ul>${rest.map((basis) => markup`<li>${basisText(basis, row, book)}</li>`)}</ul>`,
    )
  }</li>`;
}

/** `Food Standards Agency (UK): Cooking your food: 48 hours (5 °C).` */
function basisText(basis: Basis, { subject, counts }: StorageGuidance, book: NameBook): string {
  const words = book.words.page;
  const who = basis.kind === "WRITER" ? words.author : sourceText(basis.source);
  const length =
    basis.printed === null ? lengthText(basis.days, counts, book.words) : printedText(basis.printed, book.words);
  const notes = [
    same(basis.of, subject) ? null : words.ruleFor({ thing: book.subject(basis.of) }),
    basis.byAnalogy ? words.similarFood : null,
    basis.counted.firstDay === 1 && basis.kind === "PUBLISHED" ? words.firstDayCounts : null,
    basis.temperature,
    basis.condition,
    basis.kind === "WRITER" && basis.sourced ? sourceText(basis.source) : null,
  ].flatMap((note) => (note === null ? [] : [degreeText(note)]));
  return `${who}: ${length}${notes.length === 0 ? "" : ` (${notes.join("; ")})`}.`;
}
