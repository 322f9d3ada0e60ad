import type { Path } from "../../domain/problem.js";
import { isNode, listOf, textOf, type Node } from "./node-text.js";
import { wordsOfMarkup } from "./words-of-markup.js";
import type { WebStep } from "./web-recipe.js";

/** Told of everything that could not be read: where, and what stands there. */
type Unread = (path: Path, got: string) => void;

/** The most lists and sections inside one another that are walked. */
const deepestList = 8;

const shown = (value: unknown): string => JSON.stringify(value).slice(0, 60);

const isNothing = (value: unknown): boolean =>
  value === undefined || value === null || (typeof value === "string" && value.trim() === "");

/** Walks lists in lists; `read` is given everything that is no list. What is nested too deep is unread. */
function walk<T>(
  value: unknown,
  path: Path,
  unread: Unread,
  read: (each: unknown, path: Path, depth: number) => readonly T[],
  depth = 0,
): readonly T[] {
  if (depth > deepestList) {
    unread(path, "lists nested too deep");
    return [];
  }
  if (!Array.isArray(value)) return isNothing(value) ? [] : read(value, path, depth);
  return value.flatMap((each: unknown, at) => walk(each, [...path, at], unread, read, depth + 1));
}

/** Every text of a property, through lists in lists and `itemListElement`; what holds none is unread. */
export function readTexts(value: unknown, path: Path, unread: Unread): readonly string[] {
  const read = (each: unknown, at: Path, depth: number): readonly string[] => {
    const inside = isNode(each) ? each["itemListElement"] : undefined;
    if (inside !== undefined) return walk(inside, [...at, "itemListElement"], unread, read, depth + 1);
    const text = textOf(isNode(each) && isNode(each["item"]) ? each["item"] : each);
    if (text === null) unread(at, shown(each));
    return text === null ? [] : [text];
  };
  return walk(value, path, unread, read);
}

/**
 * Steps in order, through sections, lists and lists in lists. A text of several lines is several steps. Whatever gives no step is
 * unread: a boil that is lost can hurt.
 */
export function readSteps(value: unknown, path: Path, unread: Unread): readonly WebStep[] {
  const stepsIn = (inner: unknown, at: Path, section: string | null, from: number): readonly WebStep[] =>
    walk(
      inner,
      at,
      unread,
      (each, here, depth): readonly WebStep[] => {
        const found =
          typeof each === "string" ? linesOf(each, section) : isNode(each) ? nodeSteps(each, here, section, depth) : [];
        if (found.length === 0) unread(here, shown(each));
        return found;
      },
      from,
    );
  const nodeSteps = (node: Node, at: Path, section: string | null, depth: number): readonly WebStep[] => {
    const name = (["itemListElement", "steps", "item"] as const).find((field) => node[field] !== undefined);
    const text = textOf(node["text"]);
    if (name === undefined) {
      const words = text ?? textOf(node["name"]) ?? textOf(node["description"]);
      return words === null ? [] : [{ section, text: words }];
    }
    const title = isSection(node) ? textOf(node["name"]) : null;
    const inside = stepsIn(node[name], [...at, name], title ?? section, depth + 1);
    const said = inside.map((step) => step.text).join(" ");
    return text === null || said.includes(text) ? inside : [{ section: title ?? section, text }, ...inside];
  };
  return stepsIn(value, path, null, 0);
}

const linesOf = (text: string, section: string | null): readonly WebStep[] =>
  text
    .split(/(?:\r?\n)+|<\/(?:p|li)>/i)
    .map(wordsOfMarkup)
    .filter((words) => words !== "")
    .map((words) => ({ section, text: words }));

const isSection = (node: Node): boolean => listOf(node["@type"]).some((type) => String(type).endsWith("HowToSection"));
