import { z } from "zod";
import { problemSchema as oneProblem } from "../exports/json/problem.js";
import { list, named, text } from "../exports/json/named-schema.js";

/** RFC 9457, with members of our own. */
export const problemSchema = named(
  "Problem",
  "Why there is no answer: a problem document (RFC 9457).",
  z.object({
    type: text("Which kind of problem it is: the address of a page about it, or the registered name."),
    title: text("The kind in words."),
    status: z.number().int().min(400).max(599).describe("The HTTP status."),
    detail: text("What is wrong with this request."),
    instance: text("Path of the request.", 20_000),
    requestId: text("Quote this when you report it. Also in the header `X-Request-Id`.", 100),
    problems: list(oneProblem, "Everything that is wrong with the request."),
    available: z.array(z.string().max(200)).max(20).optional().describe("Of a 406: the media types there are."),
    "violated-policies": z
      .array(z.string().max(100))
      .max(10)
      .optional()
      .describe("Of a 429: the budgets that are spent, as `RateLimit-Policy` names them."),
  }),
);
