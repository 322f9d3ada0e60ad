import { regionCovers, regionsOf } from "../../../domain/model/region.js";
import type { Basis, StorageGuidance, Subject } from "../../../domain/storage/guidance.js";
import { conditionLanguage, isPublishedFigure, lengthText } from "../../sentences/keeping-row.js";
import type { NameBook } from "../../words/name-book.js";
import { degreeText } from "../../words/degree-text.js";
import { printedText } from "../../words/printed-text.js";
import { sourceText } from "../../words/source-text.js";
import { ruledRegionIn } from "../country-name.js";
import { dateLocale } from "../dates.js";
import { between, markup, type Content } from "../markup.js";
import { subjectMarkup } from "../names-markup.js";
import { folded, type PlanView } from "../plan-view.js";
import { saidWith } from "../said-with.js";
import { inLanguage } from "../writers-language.js";

const same = (a: Subject, b: Subject): boolean => a.kind === b.kind && a.slug === b.slug;

/** On whose word everything keeps as long as it does. What a meal keeps by stands with what is in it. */
export function keepingSources(guidance: readonly StorageGuidance[], { answer, book }: PlanView): Content {
  const region = regionsOf(answer.household)[0]?.region ?? null;
  return markup`<ul class="bases">${guidance
    .filter(({ subject }) => subject.kind !== "MEAL")
    .map((row) => rowMarkup(row, region, book))}</ul>`;
}

/** Where a figure holds, for a reader who may live elsewhere; null: where the reader lives, or everywhere. */
const regionOfFigure = ({ region }: Basis, readers: string | null): string | null =>
  region === null || regionCovers(region, readers ?? "") ? null : region;

const isOfElsewhere = (basis: Basis, region: string | null): boolean =>
  region !== null && regionOfFigure(basis, region) !== null;

/** On which condition: in the words of the writer of a component, or of a rule in the reader's language. */
export const conditionMarkup = (basis: Basis, book: NameBook): Content =>
  basis.condition === null ? null : inLanguage(degreeText(basis.condition), conditionLanguage(basis, book));

/**
 * The author's own word and the one that is used, with the word of the reader's own authority where that of another is used; the
 * others that were looked at are folded away.
 */
function rowMarkup(row: StorageGuidance, region: string | null, book: NameBook): Content {
  const words = book.words.page;
  const isForeign = row.basis.some((basis) => basis.decides && isOfElsewhere(basis, region));
  const authority = isForeign
    ? row.basis.find((basis) => basis.region !== null && !isOfElsewhere(basis, region))
    : undefined;
  const isNear = (basis: Basis): boolean =>
    basis.decides || basis === authority || (basis.kind === "WRITER" && same(basis.of, row.subject));
  const near = row.basis.filter(isNear);
  const rest = row.basis.filter((basis) => !isNear(basis));
  const length = lengthText(row.days, row.counts, book.words);
  const several = row.basis.length > 1;
  return markup`<li><b>${subjectMarkup(row.subject, book)}, ${words.place[row.place]}</b>: ${near.map(
    (basis) => markup`${basisText(basis, row, region, book)} `,
  )}${several && markup`<b>${words.use({ length })}</b>`}${
    row.upToDays !== null && ` (${words.upTo({ length: lengthText(row.upToDays, row.counts, book.words) })})`
  }${
    rest.length > 0 &&
    folded(
      words.otherSources({ count: rest.length }),
      markup`<ul>${rest.map((basis) => markup`<li>${basisText(basis, row, region, book)}</li>`)}</ul>`,
    )
  }</li>`;
}

/** `Food Standards Agency (UK): Cooking your food: 48 hours (5 °C).` */
function basisText(basis: Basis, { subject, counts }: StorageGuidance, region: string | null, book: NameBook): Content {
  const words = book.words.page;
  const isOfTable = isPublishedFigure(basis);
  const who = basis.kind === "WRITER" && !isOfTable ? words.author : sourceText(basis.source);
  const length =
    basis.printed === null ? lengthText(basis.days, counts, book.words) : printedText(basis.printed, book.words);
  const elsewhere = regionOfFigure(basis, region);
  const named = elsewhere === null ? null : ruledRegionIn(elsewhere, dateLocale(book));
  const notes: readonly Content[] = [
    same(basis.of, subject) ? null : saidWith((thing) => words.ruleFor({ thing }), subjectMarkup(basis.of, book)),
    basis.byAnalogy ? words.similarFood : null,
    basis.counted.firstDay === 1 && basis.kind === "PUBLISHED" ? words.firstDayCounts : null,
    basis.temperature === null ? null : degreeText(basis.temperature),
    conditionMarkup(basis, book),
    named === null || region === null ? named : words.figureOf({ region: named }),
    basis.kind === "WRITER" && basis.sourced && !isOfTable ? degreeText(sourceText(basis.source)) : null,
  ].filter((note) => note !== null);
  return [`${who}: ${length}`, notes.length > 0 && [" (", between(notes, "; "), ")"], "."];
}
