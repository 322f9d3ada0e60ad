import type { Basis, StorageGuidance, Subject } from "../../../domain/storage/guidance.js";
import { adviceTexts } from "../../sentences/advice-text.js";
import { degreeText } from "../../words/degree-text.js";
import { sourceText } from "../../words/source-text.js";
import { dayText, momentText } from "../dates.js";
import { markup, type Content } from "../markup.js";
import { folded, part, type PlanView } from "../plan-view.js";

const places = { FRIDGE: "in the fridge", FREEZER: "in the freezer", ROOM: "at room temperature" } as const;

const groups = [
  ["COMPONENT", "What was made ahead"],
  ["MEAL", "Meals, put together"],
  ["FOOD", "Fresh from the shop"],
] as const satisfies readonly (readonly [Subject["kind"], string])[];

/** How long everything keeps, on whose word, until when, and what to do where a day comes too late. */
export function storagePart(view: PlanView): Content {
  const { guidance, unknown } = view.answer.storage;
  const tables = groups.map(([kind, title]) => {
    const rows = guidance.filter(({ subject }) => subject.kind === kind);
    if (rows.length === 0) return null;
    return kind === "FOOD" ? folded(title, table(title, rows, view)) : table(title, rows, view);
  });
  const silent = [...new Map(unknown.map(({ subject }) => [`${subject.kind} ${subject.slug}`, subject])).values()];
  return part(
    "keeps",
    "How long it keeps",
    [
      tables,
      silent.length > 0 &&
        markup`<p class="aside">Nobody says how long these keep: ${silent.map(view.book.subject).join(", ")}. Follow your local
food-safety advice.</p>`,
    ],
    "The stricter of the writer’s word and the published rule decides; both are shown.",
  );
}

function table(title: string, rows: readonly StorageGuidance[], view: PlanView): Content {
  return markup`<table class="keeping"><caption>${title}</caption>
<thead><tr><th scope="col">What</th><th scope="col">How long, and where</th><th scope="col">Who says so</th></tr></thead>
<tbody>${rows.map((each, at) => row(each, rows[at - 1], view))}</tbody></table>`;
}

const same = (a: Subject, b: Subject | undefined): boolean => a.kind === b?.kind && a.slug === b.slug;

function row(guidance: StorageGuidance, before: StorageGuidance | undefined, view: PlanView): Content {
  const { book, answer } = view;
  const { subject, place, container, condition, keepUntil, lastDay, purpose, limitedBy } = guidance;
  const zone = answer.household.session?.zone ?? null;
  const until =
    keepUntil === null || zone === null
      ? null
      : guidance.counts === "HOURS"
        ? momentText(keepUntil, zone)
        : lastDay === null
          ? null
          : dayText(lastDay);
  const kept = [container, condition, purpose === "QUALITY" ? "for its quality, not its safety" : null];
  return markup`<tr><th scope="row">${same(subject, before?.subject) ? markup`<span class="quiet">${book.subject(subject)}</span>` : book.subject(subject)}</th>
<td><b>${lengthOf(guidance)}</b>${
    guidance.upToDays !== null &&
    markup` <span class="quiet">(its source says up to ${lengthOf({ days: guidance.upToDays, counts: guidance.counts })})</span>`
  } ${places[place]}${until !== null && markup`, <b>until ${until}</b>`}${kept
    .filter((each) => each !== null)
    .map((each) => markup`<span class="quiet">, ${degreeText(each)}</span>`)}${
    limitedBy !== null && markup`<span class="quiet">; ${book.subject(limitedBy)} in it decides</span>`
  }</td>
<td>${basesMarkup(guidance, view)}</td></tr>
${
  guidance.tooLateFor.length > 0 &&
  markup`<tr class="late"><td colspan="3"><p class="flag">Too late for ${guidance.tooLateFor.map((meal) => `“${book.meal(meal)}”`).join(", ")}.</p>
<ul>${adviceTexts(guidance.advice, book, guidance.tooLateFor).map((advice) => markup`<li>${advice}</li>`)}</ul></td></tr>`
}`;
}

/** The writer's own word and the one that decides; the others that were weighed are folded away. */
function basesMarkup(guidance: StorageGuidance, view: PlanView): Content {
  const isNear = ({ of, kind, decides }: Basis): boolean =>
    decides || (kind === "WRITER" && same(of, guidance.subject));
  const near = guidance.basis.filter(isNear);
  const rest = guidance.basis.filter((basis) => !isNear(basis));
  const list = (bases: readonly Basis[]): Content =>
    markup`<ul class="bases">${bases.map((basis) => basisMarkup(basis, guidance, view))}</ul>`;
  return [list(near), rest.length > 0 && folded(`${rest.length} more weighed`, list(rest))];
}

const count = (value: number, one: string): string => `${Number(value.toFixed(1))} ${value === 1 ? one : `${one}s`}`;

const lengthOf = ({ days, counts }: Pick<StorageGuidance, "days" | "counts">): string =>
  counts === "HOURS" && days < 3 ? count(days * 24, "hour") : count(days, "day");

function basisMarkup(basis: Basis, { subject, counts, basis: all }: StorageGuidance, { book }: PlanView): Content {
  const whose = basis.kind === "WRITER" ? "Writer" : `Published${basis.region === null ? "" : ` (${basis.region})`}`;
  const length = basis.printed ?? lengthOf({ days: basis.days, counts });
  const notes = [
    same(basis.of, subject) ? null : `of ${book.subject(basis.of)}`,
    basis.byAnalogy ? "stands in: no figure is published for this very food" : null,
    basis.counted.firstDay === 1 && basis.kind === "PUBLISHED" ? "the day of making is day 1" : null,
    basis.temperature,
    basis.condition,
  ].flatMap((note) => (note === null ? [] : [degreeText(note)]));
  const body = markup`<b>${whose}: ${length}</b>${basis.decides && all.length > 1 && markup` <strong class="decides">decides</strong>`}
<span class="quiet">${sourceText(basis.source)}${notes.map((note) => `; ${note}`)}</span>`;
  return markup`<li>${body}</li>`;
}
