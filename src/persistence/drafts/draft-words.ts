import { wordsOf, type WordsOfPlan } from "../../domain/model/writers-words.js";
import { Prisma } from "../generated/client.js";
import { fromJson, toJson } from "../sql/json-column.js";

/** What a writer says of a plan, a meal or a component as its column; nothing said is null. */
export function wordsColumn(thing: WordsOfPlan): Prisma.InputJsonValue | typeof Prisma.DbNull {
  const words = wordsOf(thing);
  return Object.keys(words).length === 0 ? Prisma.DbNull : toJson(words);
}

export const wordsFrom = (column: Prisma.JsonValue): WordsOfPlan =>
  column === null ? {} : wordsOf(fromJson<WordsOfPlan>(column));
