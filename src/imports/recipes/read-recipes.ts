import { TextDecoder } from "node:util";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { Path, Problem } from "../../domain/problem.js";
import { findRecipeNodes } from "./find-recipe-nodes.js";
import { htmlJsonLd, type JsonLdBlock } from "./html-json-ld.js";
import { jsonExcess, jsonLimits } from "./json-size.js";
import { readRecipeNode } from "./read-recipe-node.js";
import type { WebRecipe } from "./web-recipe.js";

export interface RecipeProblem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly path: Path;
  readonly problem: Problem;
}

/** One recipe of a file: read, or the reasons why not. `raw` is its own JSON, to mend and try again. */
export interface RecipeRecord {
  readonly file: string;
  readonly line: number;
  readonly raw: string;
  readonly recipe: WebRecipe | null;
  readonly problems: readonly RecipeProblem[];
}

interface RecipesRead {
  readonly records: readonly RecipeRecord[];
  /** About the file or a block of it, where no recipe could be told apart. */
  readonly problems: readonly RecipeProblem[];
  /** Recipes found, good and bad, and blocks that could not be read. */
  readonly count: number;
}

/** The largest file that is read, in bytes. */
export const largestFile = 20_000_000;

/**
 * Reads the schema.org recipes of a JSON-LD file or of a saved HTML page. Pure: nothing is fetched and no script is run.
 * A file in another encoding than UTF-8 is refused, since half-read words would look like a writer's own.
 */
export const readRecipes = (bytes: Uint8Array, file: string): RecipesRead => runToEnd(readRecipesInSlices(bytes, file));

/** The same turn by turn: a page in pieces, then one recipe at a time. */
export function* readRecipesInSlices(bytes: Uint8Array, file: string): InSlices<RecipesRead> {
  const about = (line: number, problem: Problem): RecipeProblem => ({
    file,
    line,
    column: 1,
    path: problem.path,
    problem,
  });
  if (bytes.length > largestFile) {
    const problem: Problem = { code: "TOO_LARGE", path: [], what: "bytes", size: bytes.length, limit: largestFile };
    return { records: [], problems: [about(1, problem)], count: 1 };
  }
  const text = decoded(bytes);
  if (text === null) {
    const problem: Problem = { code: "BAD_SHAPE", path: [], expected: "text in UTF-8", got: "other bytes" };
    return { records: [], problems: [about(1, problem)], count: 1 };
  }
  const isPage = /^\s*</.test(text);
  const { blocks, tooLarge } = isPage ? yield* htmlJsonLd(text) : { blocks: [{ text, line: 1 }], tooLarge: false };
  const records: RecipeRecord[] = [];
  const problems: RecipeProblem[] = [];
  for (const block of blocks) {
    yield;
    const read = yield* readBlock(block, file);
    for (const record of read.records) records.push(record);
    for (const problem of read.problems) problems.push(problem);
  }
  if (tooLarge)
    problems.push(
      about(1, {
        code: "TOO_LARGE",
        path: [],
        what: "blocks of data in the page",
        size: blocks.length,
        limit: blocks.length,
      }),
    );
  if (records.length === 0 && problems.length === 0) {
    problems.push(about(1, { code: "BAD_SHAPE", path: [], expected: "a schema.org Recipe as JSON-LD", got: "none" }));
  }
  return { records, problems, count: records.length + problems.length };
}

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) return null;
    throw error;
  }
}

function* readBlock({ text, line }: JsonLdBlock, file: string): InSlices<Pick<RecipesRead, "records" | "problems">> {
  const about = (problem: Problem, at = line): RecipeProblem => ({
    file,
    line: at,
    column: 1,
    path: problem.path,
    problem,
  });
  const json = withoutWrapping(text);
  if (json.trim() === "") return { records: [], problems: [] };
  const excess = yield* jsonExcess(json);
  if (excess !== null) {
    const { what, lines } = excess;
    const limit = jsonLimits[what];
    const large: Problem = { code: "TOO_LARGE", path: [], what: `${what} of JSON`, size: limit + 1, limit };
    return { records: [], problems: [about(large, line + lines)] };
  }
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    const problem: Problem = { code: "BAD_SHAPE", path: [], expected: "JSON", got: error.message.slice(0, 120) };
    return { records: [], problems: [about(problem, line + lineOfFault(json, error.message))] };
  }
  const { found, tooLarge } = yield* findRecipeNodes(value);
  const records: RecipeRecord[] = [];
  for (const node of found) {
    yield;
    const { recipe, faults } = readRecipeNode(node);
    const problems = faults.map((fault) => about(fault));
    records.push({ file, line, raw: JSON.stringify(node.node), recipe, problems });
  }
  const problem: Problem = { code: "TOO_LARGE", path: [], what: "values", size: json.length, limit: json.length };
  return { records, problems: tooLarge ? [about(problem)] : [] };
}

/** Pages wrap their JSON in comments and CDATA, as old advice told them to. */
const withoutWrapping = (text: string): string =>
  text
    .replace(/^\s*(?:<!--|\/\*\s*<!\[CDATA\[\s*\*\/|\/\/\s*<!\[CDATA\[|<!\[CDATA\[)/, "")
    .replace(/(?:-->|\/\*\s*\]\]>\s*\*\/|\/\/\s*\]\]>|\]\]>)\s*$/, "");

/** Lines before the fault; the parser says where it stands as an offset, and sometimes as a line. */
function lineOfFault(json: string, message: string): number {
  const position = /position (\d+)/.exec(message)?.[1];
  return position === undefined ? 0 : json.slice(0, Number(position)).split("\n").length - 1;
}
