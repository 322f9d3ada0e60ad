import { runToEnd, type InSlices } from "../domain/counted-work.js";
import { AnswerTooLarge, mostAnswerBytes } from "./answer-size.js";

/**
 * `JSON.stringify`. What comes to more characters than that is given up before any of it is written: its length is counted first, which
 * takes a fraction of the time that writing takes. A turn to count, and one to write.
 *
 * @throws AnswerTooLarge
 */
export function* boundedJsonInSlices(value: unknown, most = mostAnswerBytes): InSlices<string> {
  if (countTo(value, most, 0) > most) throw new AnswerTooLarge();
  yield;
  const text = JSON.stringify(value);
  if (text.length > most) throw new AnswerTooLarge();
  return text;
}

/** The same in one turn, of what is short. @throws AnswerTooLarge */
export const boundedJson = (value: unknown, most = mostAnswerBytes): string =>
  runToEnd(boundedJsonInSlices(value, most));

/** Characters of the value as JSON and those before, at least: figures count as one, nothing is escaped. Stops above the most. */
function countTo(value: unknown, most: number, before: number): number {
  if (typeof value === "string") return before + value.length + 2;
  if (typeof value !== "object" || value === null) return before + 1;
  if ("toJSON" in value) return before;
  let count = before + 2;
  if (Array.isArray(value)) {
    // Commas stand between the entries.
    count -= Math.min(1, value.length);
    for (const each of value as readonly unknown[]) {
      count = countTo(each, most, count + 1);
      if (count > most) return count;
    }
    return count;
  }
  const members = value as Readonly<Record<string, unknown>>;
  // The names as a list: answers have no prototype, and counting them with `for in` takes a third longer.
  for (const name of Object.keys(members)) {
    const member = members[name];
    if (member === undefined || typeof member === "function") continue;
    count = countTo(member, most, count + name.length + 3);
    if (count > most) return count;
  }
  return count;
}
