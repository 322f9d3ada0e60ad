import type { StorageAnswer, StorageGuidance, Subject } from "../../domain/storage/guidance.js";
import { degreeText } from "../words/degree-text.js";
import { adviceTexts, type AdviceWords } from "./advice-text.js";

const places = { FRIDGE: "in the fridge", FREEZER: "in the freezer", ROOM: "at room temperature" } as const;

/**
 * What keeps how long, a line each: every component with all its places and the authority that decides, then whatever is
 * planned for too late a day, with what to do about it.
 */
export function keepingLines(storage: StorageAnswer, words: AdviceWords): readonly string[] {
  const { guidance } = storage;
  const components = [
    ...new Set(guidance.flatMap(({ subject }) => (subject.kind === "COMPONENT" ? subject.slug : []))),
  ];
  return [
    ...components.map((slug) => {
      const here = guidance.filter(({ subject }) => subject.kind === "COMPONENT" && subject.slug === slug);
      return `${words.component(slug)}: ${here.map(placeText).join("; ")}`;
    }),
    ...lateLines(storage, words),
  ];
}

/** Whatever is planned for a later day than it keeps, with what to do about it, a line each. */
export function lateLines({ guidance }: StorageAnswer, words: AdviceWords): readonly string[] {
  const late = guidance.filter(({ tooLateFor }) => tooLateFor.length > 0);
  return late.map((each) => {
    const meals = each.tooLateFor.map((meal) => `"${words.meal(meal)}"`).join(", ");
    const advice = adviceTexts(each.advice, words, each.tooLateFor).join(" ");
    return `Too late for ${meals}: ${nameOf(each.subject, words)} keeps ${days(each)}. ${advice}`.trimEnd();
  });
}

function placeText(guidance: StorageGuidance): string {
  const deciding = guidance.basis.find(({ decides }) => decides);
  const until = guidance.keepUntil === null ? "" : ` (until ${guidance.keepUntil})`;
  const parts = [guidance.container, guidance.condition].filter((part) => part !== null).map((part) => `, ${part}`);
  const source = deciding === undefined ? "" : ` [${deciding.source.title}]`;
  return degreeText(`${days(guidance)} ${places[guidance.place]}${until}${parts.join("")}${source}`);
}

const days = ({ days: planned, upToDays, counts }: StorageGuidance): string =>
  `${lengthText(planned, counts)}${upToDays === null ? "" : ` (its source says up to ${lengthText(upToDays, counts)})`}`;

/** Lengths that run by the hour are told in hours up to three days. */
const lengthText = (count: number, counts: StorageGuidance["counts"]): string =>
  counts === "HOURS" && count < 3 ? plural(count * 24, "hour") : plural(count, "day");

const plural = (count: number, one: string): string =>
  `${String(Number(count.toFixed(2)))} ${one}${count === 1 ? "" : "s"}`;

const nameOf = ({ kind, slug }: Subject, words: AdviceWords): string =>
  kind === "MEAL" ? `"${words.meal(slug)}"` : kind === "COMPONENT" ? words.component(slug) : words.food(slug);
