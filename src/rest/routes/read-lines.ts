import { z } from "zod";
import { measureSystems } from "../../domain/model/amount.js";
import { named } from "../../exports/json/named-schema.js";
import { textLinesJson, textLinesSchema } from "../../exports/json/text-line.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import { parseWithSchema } from "../../services/drafts/parse-with-schema.js";
import { mostTextLines, readTextLines, type LineExplained } from "../../services/drafts/read-text-lines.js";
import { asJson, endpoint, found, refused } from "../endpoint.js";
import { notProcessable } from "../refusal.js";

const question = named(
  "TextLinesQuestion",
  "Ingredient lines, and how they are written.",
  z.strictObject({
    texts: z.array(z.string().max(500)).min(1).max(mostTextLines).describe("The lines."),
    locale: z
      .string()
      .max(40)
      .describe("BCP 47 tag of their language. It also decides what a comma in a number means."),
    measures: z
      .enum(measureSystems)
      .optional()
      .describe(
        "The measures that their cups and spoons are in. Default: those of the locale's country, metric where it names none.",
      ),
    publisher: z
      .string()
      .max(200)
      .optional()
      .describe(
        "Slug of a publisher: its own foods go first, as its newest published plan has them. With a token that has the scope READ_DRAFTS: its own foods and components, as they are saved.",
      ),
  }),
);

/** Characters that cost a point. */
const charactersOfPoint = 20;

const pointsOfLine = (line: unknown): number => 1 + Math.ceil(String(line).length / charactersOfPoint);

export const readLinesEndpoint = endpoint(
  {
    method: "POST",
    path: "/v1/read-lines",
    operationId: "readLines",
    tag: "catalogue",
    summary: "Read ingredient lines as people write them",
    description:
      "Made for editors: each line as a document would state it with keys, or what is unclear about it. Lines may name the foods that all publishers share. Nothing is stored.",
    parameters: [],
    body: question,
    refusals: [],
    caching: "NEVER",
    points: ({ body }) => {
      const { texts } = (body ?? {}) as { readonly texts?: unknown };
      if (!Array.isArray(texts)) return 0;
      return texts.slice(0, mostTextLines).reduce<number>((sum, line) => sum + pointsOfLine(line), 0);
    },
  },
  async ({ deps, caller, body }) => {
    const read = parseWithSchema(question, body);
    if (!read.ok) return refused(notProcessable(read.problems));
    const lines = await readTextLines(deps, caller.actor, read.value);
    return lines.ok ? found(lines.value) : refused(notProcessable(lines.problems));
  },
  [asJson(textLinesSchema, "The lines.", (lines: readonly LineExplained[]) => textLinesJson(lines.map(shown)))],
);

const shown = ({ written, takes, open }: LineExplained) => ({
  ...{ written, takes },
  problem: open && problemText({ code: "LINE_OPEN", path: [], written, ...open }),
  mayName: open?.named ?? [],
  mayTake: open?.amounts ?? [],
});
