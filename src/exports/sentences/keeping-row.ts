import { daysAfter } from "../../domain/plan/session/session-date.js";
import type { Basis, StorageGuidance } from "../../domain/storage/guidance.js";
import { dateText, momentText } from "../words/clock-text.js";
import { degreeText } from "../words/degree-text.js";
import type { NameBook } from "../words/name-book.js";
import { printedText } from "../words/printed-text.js";
import { sourceText } from "../words/source-text.js";
import type { Words } from "../words/words.js";

/** How something keeps in one place, in words. */
interface KeepingRow {
  readonly what: string;
  readonly where: string;
  /** "2 days, until Tuesday 3 March 2026". */
  readonly keeps: string;
  /** Container and condition; empty where nobody gives any. */
  readonly how: string;
  /** The writer's word and the published rules, each with its source; the one that stands says so. */
  readonly whoSays: readonly string[];
}

/** The language of the condition of a rule, where it is the writer's and in another than the fixed words. */
export function conditionLanguage({ kind, of, condition }: Basis, book: NameBook): string | null {
  const component = kind === "WRITER" && of.kind === "COMPONENT" ? book.componentOf(of.slug) : undefined;
  const keeping = component === undefined ? [] : [component, ...component.routes].flatMap((made) => made.keeping);
  const isWriters = condition !== null && keeping.some((rule) => rule.condition === condition);
  return isWriters ? book.languageOf(condition) : null;
}

/** @param zone of the session; null without one */
export function keepingRow(guidance: StorageGuidance, book: NameBook, zone: string | null): KeepingRow {
  const { words } = book;
  const { subject, place, limitedBy, container, condition, basis, purpose } = guidance;
  return {
    what: book.subject(subject),
    where: words.places[place],
    keeps: [
      rangeText(guidance, words),
      ...untilText(guidance, book, zone),
      ...(purpose === "QUALITY" ? [words.forQuality] : []),
      ...(limitedBy === null ? [] : [words.limitedBy({ part: book.subject(limitedBy) })]),
    ].join(", "),
    how: degreeText([container, condition].filter((each) => each !== null).join(", ")),
    // A meal keeps as its parts do, and each of those has a row of its own.
    whoSays: basis.filter(({ decides }) => decides || subject.kind !== "MEAL").map((each) => basisText(each, book)),
  };
}

/** "3 days (its source says up to 4 days)": both ends of a printed range, and which of them counts. */
export function rangeText({ days, upToDays, counts }: StorageGuidance, words: Words): string {
  const planned = lengthText(days, counts, words);
  return upToDays === null ? planned : words.plannedOf({ planned, upTo: lengthText(upToDays, counts, words) });
}

/** Lengths that run by the hour are told in hours up to three days. */
export const lengthText = (days: number, counts: StorageGuidance["counts"], words: Words): string =>
  counts === "HOURS" && days < 3
    ? words.hours({ count: hundredths(days * 24) })
    : words.days({ count: hundredths(days) });

/** The number that plurals go by is the one that is shown. */
const hundredths = (value: number): number => Number(value.toFixed(2));

function untilText({ lastDay, keepUntil, counts }: StorageGuidance, { words, reader }: NameBook, zone: string | null) {
  if (lastDay === null || keepUntil === null || zone === null) return [];
  const when = counts === "HOURS" ? momentText(keepUntil, zone, reader.locale) : dateText(lastDay, reader.locale);
  return [words.until({ when })];
}

/** What a table says of one food, with the region that it was published for: nobody who wrote the plan said it. */
export const isPublishedFigure = (basis: Basis): basis is Basis & { readonly region: string } =>
  basis.kind === "WRITER" && basis.sourced && basis.region !== null;

function basisText(basis: Basis, { words }: NameBook): string {
  const { kind, printed, counted, region, source, byAnalogy, decides, note } = basis;
  const unit = counted.in === "HOURS" ? words.hours : words.days;
  const length =
    printed !== null
      ? printedText(printed, words)
      : unit({ count: counted.in === "HOURS" ? counted.days * 24 : counted.days });
  const says =
    kind === "PUBLISHED"
      ? words.ruleSays({ length, region: region ?? "none" })
      : isPublishedFigure(basis)
        ? words.figureSays({ length, region: basis.region })
        : words.writerSays({ length });
  const beside = [
    ...(basis.condition === null ? [] : [basis.condition]),
    ...(byAnalogy ? [words.byAnalogy] : []),
    ...(note === null ? [] : [note]),
    ...(decides ? [words.decides] : []),
  ];
  return degreeText(`${says}: ${sourceText(source)}${beside.length === 0 ? "" : ` (${beside.join("; ")})`}`);
}

/** The local date of a day after the session, where there is one: "Tuesday 3 March 2026". */
export const dayText = (day: number, sessionDay: string | null, { words, reader }: NameBook): string =>
  sessionDay === null ? words.dayOfPlan({ day }) : dateText(daysAfter(sessionDay, day), reader.locale);
