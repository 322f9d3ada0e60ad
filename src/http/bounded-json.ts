import { AnswerTooLarge, mostAnswerBytes } from "./answer-size.js";

/**
 * `JSON.stringify`. What comes to more characters than that is given up before any of it is written: its length is counted first, which
 * takes a fraction of the time that writing takes.
 *
 * @throws AnswerTooLarge
 */
export function boundedJson(value: unknown, most = mostAnswerBytes): string {
  count(value, most);
  return write(value, most);
}

/** The same of what may be long: a turn to count, and one to write. @throws AnswerTooLarge */
export function* boundedJsonInSlices(value: unknown, most = mostAnswerBytes): Generator<undefined, string, undefined> {
  count(value, most);
  yield;
  return write(value, most);
}

function count(value: unknown, most: number): void {
  if (countTo(value, most, 0) > most) throw new AnswerTooLarge();
}

function write(value: unknown, most: number): string {
  const text = JSON.stringify(value);
  if (text.length > most) throw new AnswerTooLarge();
  return text;
}

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
