import { wordsOfMarkup } from "./words-of-markup.js";

export type Node = Readonly<Record<string, unknown>>;

export const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && !Array.isArray(value);

export const listOf = (value: unknown): readonly unknown[] =>
  value === undefined || value === null ? [] : Array.isArray(value) ? value : [value];

/** The first text a property holds: itself, its `@value`, its `name`, or the first of several. */
export function textOf(value: unknown): string | null {
  for (const each of listOf(value)) {
    if (typeof each === "string" || typeof each === "number") {
      const words = wordsOfMarkup(String(each));
      if (words !== "") return words;
    }
    if (isNode(each)) {
      const inner: unknown = each["@value"] ?? each["name"] ?? each["text"];
      const words = typeof inner === "string" ? wordsOfMarkup(inner) : "";
      if (words !== "") return words;
    }
  }
  return null;
}
