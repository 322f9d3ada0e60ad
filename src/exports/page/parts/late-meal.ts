import type { Meal } from "../../../domain/model/plan.js";
import type { Advice } from "../../../domain/storage/advice.js";
import type { StorageGuidance } from "../../../domain/storage/guidance.js";
import { adviceText } from "../../sentences/advice-text.js";
import { lengthText } from "../../sentences/keeping-row.js";
import { between, markup, type Content } from "../markup.js";
import { foodMarkup, subjectMarkup } from "../names-markup.js";
import { dayInWords, folded, sentences, type PlanView } from "../plan-view.js";
import { andListMarkup, saidWith } from "../said-with.js";
import { inWritersLanguage } from "../writers-language.js";

type Way<C extends Advice["code"]> = Extract<Advice, { readonly code: C }>;

/** Guidance of whatever does not keep until a meal. */
export const lateFor = ({ answer }: PlanView, meal: string): readonly StorageGuidance[] =>
  answer.storage.guidance.filter(({ tooLateFor }) => tooLateFor.includes(meal));

const adviceOf = <C extends Advice["code"]>(rows: readonly StorageGuidance[], code: C): readonly Way<C>[] =>
  rows.flatMap(({ advice }) => advice.filter((each): each is Way<C> => each.code === code));

/** What to do with one thing that does not keep until a meal: the simplest way out. null: none is known. */
type WayOut = Way<"FREEZE"> | Way<"MAKE_LATER"> | Way<"SHOP_TWICE"> | null;

function wayOut(row: StorageGuidance, meal: string): WayOut {
  const frozen = adviceOf([row], "FREEZE").find(({ portions }) => portions.some((each) => each.meal === meal));
  const later = adviceOf([row], "MAKE_LATER").find(({ meals }) => meals.some((each) => each.meal === meal));
  const bought = adviceOf([row], "SHOP_TWICE").find(({ meals }) => meals.includes(meal));
  return frozen ?? later ?? bought ?? null;
}

/** What does not keep until a meal, each with its way out; and whether all of it has one, so that the meal can wait. */
function waysFor(view: PlanView, meal: string) {
  const rows = lateFor(view, meal);
  const parts = rows.filter(({ subject }) => subject.kind !== "MEAL");
  const ways = parts.map((row) => wayOut(row, meal));
  return { rows, parts, ways, canWait: parts.length > 0 && ways.every((way) => way !== null) };
}

/** Components that are to be frozen for a meal; none where freezing alone does not help it. */
export function frozenFor(view: PlanView, meal: string): readonly string[] {
  const { ways, canWait } = waysFor(view, meal);
  return canWait ? ways.flatMap((way) => (way?.code === "FREEZE" ? [way.component] : [])) : [];
}

/** For a meal that comes later than its food keeps: why in a few words, one decision, and the rest folded away. */
export function lateMealMarkup({ slug }: Meal, view: PlanView): Content {
  const { book } = view;
  const words = book.words.page;
  const { rows, parts, ways, canWait } = waysFor(view, slug);
  if (rows.length === 0) return null;
  const earlier = adviceOf(rows, "EAT_EARLIER").filter(({ meal }) => meal === slug);
  const latest = earlier.length === 0 ? null : Math.min(...earlier.map(({ latestDay }) => latestDay));
  const day = (of: number): string => dayInWords(of, view.answer, book);
  const decision: readonly Content[] = [
    ...(canWait ? waysText(ways, slug, view) : []),
    ...(latest === null
      ? canWait
        ? []
        : [words.nothingHelps]
      : [canWait ? words.eatInstead({ day: day(latest) }) : words.eatOnly({ day: day(latest) })]),
  ];
  return markup`<div class="late"><p><b>${whyText(parts.length > 0 ? parts : rows, view)}</b> ${sentences(decision)}</p>
${folded(words.whyAndMore, markup`<ul>${moreTexts(rows, slug, view).map((text) => markup`<li>${text}</li>`)}</ul>`)}</div>`;
}

/** `Boiled barley and lemon yoghurt keep 48 hours; this meal comes later.` */
function whyText(rows: readonly StorageGuidance[], { book }: PlanView): Content {
  const byLength = new Map<string, Map<string, Content>>();
  for (const { subject, days, counts } of rows) {
    const length = lengthText(days, counts, book.words);
    const named = byLength.get(length) ?? new Map<string, Content>();
    byLength.set(length, named.set(book.subject(subject), subjectMarkup(subject, book)));
  }
  const { keeps, comesLater } = book.words.page;
  const reasons = [...byLength].map(([length, named]) =>
    saidWith((names) => keeps({ names, length }), andListMarkup([...named.values()], book.words)),
  );
  return saidWith((all) => comesLater({ reasons: all }), between(reasons, "; "));
}

/** One sentence for all that is frozen alike, one for each thing that is made or bought later. */
function waysText(ways: readonly WayOut[], meal: string, { answer, book }: PlanView): readonly Content[] {
  const words = book.words.page;
  const own = (component: string): Content => inWritersLanguage(book.component(component), book);
  const frozen = ways.filter((way) => way?.code === "FREEZE");
  const daysBefore = [...new Set(frozen.map(({ thawDaysBefore }) => thawDaysBefore))];
  return [
    ...daysBefore.map((days) => {
      const alike = frozen.filter(({ thawDaysBefore }) => thawDaysBefore === days);
      const amounts = alike.map(({ component, portions }) => {
        const amount = portions.find((each) => each.meal === meal)?.amount ?? null;
        return saidWith(
          (what) =>
            amount === null
              ? words.theShareOf({ what })
              : words.amountOf({ amount: book.amount(amount, component), what }),
          own(component),
        );
      });
      return saidWith(
        (all) => words.freeze({ amounts: all, daysBefore: days, count: alike.length }),
        andListMarkup(amounts, book.words),
      );
    }),
    ...ways.flatMap((way) => {
      if (way?.code === "MAKE_LATER") {
        const notBefore = way.meals.find((each) => each.meal === meal)?.notBefore ?? 0;
        const day = dayInWords(notBefore, answer, book);
        return [saidWith((what) => words.makeLater({ what, day }), own(way.component))];
      }
      if (way?.code !== "SHOP_TWICE") return [];
      const day = dayInWords(way.notBefore, answer, book);
      return [saidWith((what) => words.buyLater({ what, day }), foodMarkup(way.food, book))];
    }),
  ];
}

/** Whose word counts, what comes after thawing, and what else can be done. */
function moreTexts(rows: readonly StorageGuidance[], meal: string, { answer, book }: PlanView): readonly Content[] {
  const words = book.words.page;
  const own = (component: string): Content => inWritersLanguage(book.component(component), book);
  const swapped = (other: string): Content =>
    saidWith((title) => words.swapDays({ meal: title }), inWritersLanguage(book.meal(other), book));
  const texts = rows.flatMap(({ advice, subject }) =>
    advice.flatMap((each): readonly Content[] => {
      switch (each.code) {
        case "FREEZE":
          return [
            saidWith(
              (what) => words.onceThawed({ what, length: book.words.days({ count: each.daysAfterThawing }) }),
              own(each.component),
            ),
          ];
        case "MAKE_LATER":
          return each.meals
            .filter((other) => other.meal === meal)
            .map(({ notBefore }) =>
              saidWith(
                (what) => words.makeLater({ what, day: dayInWords(notBefore, answer, book) }),
                own(each.component),
              ),
            );
        case "SWAP_DAYS":
          return each.meal === meal ? [swapped(each.with)] : each.with === meal ? [swapped(each.meal)] : [];
        case "WRITER_EXCEEDS_RULE":
          return [
            [
              subjectMarkup(subject, book),
              `: ${words.authorAndRule({ author: book.words.days({ count: each.writerDays }), rule: book.words.days({ count: each.ruleDays }) })}`,
            ],
          ];
        case "EAT_EARLIER":
        case "SHOP_TWICE":
        case "EAT_BEFORE":
          return [];
        case "NO_PUBLISHED_RULE":
        case "REGION_WITHOUT_RULE":
          return [[subjectMarkup(subject, book), `: ${adviceText(each, book)}`]];
      }
    }),
  );
  return [...new Map(texts.map((text) => [markup`${text}`.text, text])).values()];
}
