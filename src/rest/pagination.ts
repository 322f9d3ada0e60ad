import { z } from "zod";
import type { Problem, Result } from "../domain/problem.js";
import type { Page } from "../services/deps.js";
import { largestPage, type WantedPage } from "../services/answers/page-request.js";
import { found, refused, type Found, type Question } from "./endpoint.js";
import { inQuery, one, wholeNumber, type Parameter } from "./parameter.js";
import { parameterOf } from "./plan-search-query.js";
import { badParameters } from "./refusal.js";

const size = z.number().int().min(1).max(largestPage);
/** Place in a list. */
export const cursor = z.string().max(1_000);

/** Which page of a list. */
export const pageParameters: readonly Parameter[] = [
  inQuery(
    "first",
    `How many, from the start or after \`after\`: 1 to ${largestPage}. 20 if neither this nor \`last\` is given.`,
    size,
  ),
  inQuery("after", "Go on after this place. Take it from the address of the next page.", cursor),
  inQuery("last", `How many, from the end or before \`before\`: 1 to ${largestPage}.`, size),
  inQuery("before", "Go back from this place. Take it from the address of the previous page.", cursor),
];

export interface LinkedPage<T> {
  readonly items: readonly T[];
  /** Addresses; null where there is none. */
  readonly next: string | null;
  readonly previous: string | null;
  /** Place of the last item; null: there is none. */
  readonly end: string | null;
}

/** Reads a page and links it to its neighbours, in the body and in the header Link (RFC 8288). */
export async function pageOf<T>(
  question: Question,
  read: (page: WantedPage) => Promise<Result<Page<T>>>,
): Promise<Found<LinkedPage<T>>> {
  const { query } = question;
  const problems: Problem[] = [];
  const [first, last] = [wholeNumber(query, "first", problems), wholeNumber(query, "last", problems)];
  if (problems.length > 0) return refused(badParameters(problems));
  const result = await read({ first, last, after: one(query, "after"), before: one(query, "before") });
  if (!result.ok) return refused(badParameters(result.problems.map(inFilter)));
  const { items, hasNext, hasPrevious } = result.value;
  const count = String(first ?? last ?? items.length);
  const [start, end] = [items[0]?.cursor ?? null, items.at(-1)?.cursor ?? null];
  const next = hasNext && end !== null ? neighbour(question, { first: count, after: end }) : null;
  const previous = hasPrevious && start !== null ? neighbour(question, { last: count, before: start }) : null;
  const links = [next && `<${next}>; rel="next"`, previous && `<${previous}>; rel="prev"`].filter(
    (link) => link !== null,
  );
  return found(
    { items: items.map(({ item }) => item), next, previous, end },
    links.length === 0 ? {} : { link: links.join(", ") },
  );
}

function neighbour({ address, query }: Question, place: Readonly<Record<string, string>>): string {
  const asked = new URLSearchParams();
  for (const [name, values] of query) {
    if (!pageParameters.some((parameter) => parameter.name === name))
      values.forEach((value) => asked.append(name, value));
  }
  for (const [name, value] of Object.entries(place)) asked.set(name, value);
  return `${address.split("?")[0]}?${asked}`;
}

/** A problem of a filter, with the name of the parameter. */
function inFilter(problem: Problem): Problem {
  const [first, name, ...rest] = problem.path;
  return first === "filter" && name !== undefined
    ? { ...problem, path: [parameterOf(String(name)), ...rest] }
    : problem;
}
