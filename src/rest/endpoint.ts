import { countWritten, runInSlices } from "../services/time-slices.js";
import { z } from "zod";
import { boundedJsonInSlices } from "../http/bounded-json.js";
import type { Json } from "../exports/json/named-schema.js";
import type { Caller, Scope } from "../services/access/actor.js";
import type { Deps } from "../services/deps.js";
import { formats, type Format, type FormatName } from "./format.js";
import type { Parameter, Query } from "./parameter.js";
import type { StreamedFile } from "./streamed-file.js";
import type { ProblemKind } from "./problem-kinds.js";
import { badParameters, type Refusal } from "./refusal.js";
import { inAddress } from "./household-query.js";
import type { Result } from "../domain/problem.js";
import type { InSlices } from "../domain/counted-work.js";

/** What was asked of one address. */
export interface Question {
  readonly deps: Deps;
  /** Values of the path's parameters, decoded. */
  readonly path: Readonly<Record<string, string>>;
  readonly query: Query;
  /** Read, or of an upload the stream itself. */
  readonly body: unknown;
  /** What the caller says its length is, in bytes; null: it does not say. */
  readonly bodyLength: number | null;
  readonly caller: Caller;
  /** `https://plans.example`, without a slash at the end. */
  readonly origin: string;
  /** The same where the operator said it; null: `origin` is what the request says it was sent to. */
  readonly publicUrl: string | null;
  /** Path and query as they were asked, without the ending for a form. */
  readonly address: string;
}

export type Found<T> =
  | { readonly ok: true; readonly value: T; readonly headers?: Readonly<Record<string, string>> }
  | { readonly ok: false; readonly refusal: Refusal };

export const found = <T>(value: T, headers: Readonly<Record<string, string>> = {}): Found<T> => ({
  ok: true,
  value,
  headers,
});
export const refused = (refusal: Refusal): Found<never> => ({ ok: false, refusal });

/**
 * LIVE: computed with the rules, prices and names of today. CHANGES: tells of what is new, so that it is asked for each time. FROZEN: can never
 * change. NEVER: not to be kept.
 */
export type Caching = "LIVE" | "CHANGES" | "FROZEN" | "NEVER";

interface Description {
  readonly method: "GET" | "POST";
  /** As OpenAPI writes it: `/v1/plans/{publisher}`. */
  readonly path: string;
  readonly operationId: string;
  readonly tag: "plans" | "shopping" | "catalogue" | "publishers" | "imports" | "service";
  readonly summary: string;
  readonly description?: string;
  readonly parameters: readonly Parameter[];
  readonly body?: z.ZodType;
  /** The body is a file, in any media type, and is read by whoever answers. */
  readonly upload?: true;
  /** 200 unless told. */
  readonly status?: 202;
  /** Asks for an access token with this scope; left out: anybody may. */
  readonly scope?: Scope;
  /** Beside those that every address has. */
  readonly refusals: readonly ProblemKind[];
  readonly caching: Caching;
  /** Points beyond `pointsOfAnswer`, before anything is looked at. Left out: none. */
  readonly points?: (asked: Pick<Question, "query" | "body">) => number;
  /** Parameters that ask for the form `brief` where JSON is asked for; left out: none. */
  readonly selection?: readonly string[];
  /** Where the page for people is, if there is one. */
  readonly page?: (question: Question) => string;
  /** What it links to in the header Link; left out: nothing. */
  readonly links?: string;
}

/** How a value is written in one form. */
export interface Writing {
  readonly format: Format;
  /** Of JSON; null for text. */
  readonly schema: z.ZodType | null;
  readonly description: string;
}

/** Events that one reader is told of as they happen. */
export interface FollowedEvents {
  /** Where it begins: a reader that was told of nothing yet comes back there. */
  readonly position: string;
  /** What is sent, as events are written, in pieces. Each costs `pointsOfAnswer`. */
  follow(over: AbortSignal): AsyncIterable<Buffer>;
}

interface FollowQuestion {
  readonly question: Question;
  /** The header `Last-Event-ID`; null: there is none. */
  readonly lastEventId: string | null;
  /** Milliseconds that a read may take. */
  readonly queryTime: number;
}

export interface Endpoint extends Description {
  /** Of a stream of events; left out: it is none. */
  readonly events?: (asked: FollowQuestion) => Promise<Found<FollowedEvents>>;
  /** Of a file that is sent while it is made; left out: the answer is text that is made first. */
  readonly stream?: (question: Question) => Promise<Found<StreamedFile>>;
  readonly writings: readonly Writing[];
  /** Finds the value and writes it in one of the forms. */
  answer(question: Question, writing: Writing): Promise<Found<string>>;
}

/** Problems: what this form needs beyond the others. */
type Written = string | Result<string> | Found<string>;

interface TextWriter<T> {
  readonly description: string;
  readonly write: (value: T, question: Question) => Written | InSlices<Written>;
}
interface JsonWriter<T, Schema extends z.ZodType> {
  readonly description: string;
  readonly schema: Schema;
  readonly write: (value: T, question: Question) => Json<Schema> | InSlices<Json<Schema>>;
}

const isInSlices = <Value>(made: Value | InSlices<Value>): made is InSlices<Value> =>
  typeof made === "object" && made !== null && Symbol.iterator in made && "next" in made;

/** What a writer makes, in one piece or in several. */
function* piecesOf<Value>(made: Value | InSlices<Value>): InSlices<Value> {
  yield;
  return isInSlices(made) ? yield* made : made;
}

/** A form in text; long ones are written in slices. */
export const asText = <T>(
  format: FormatName,
  description: string,
  write: TextWriter<T>["write"],
  schema: z.ZodType | null = null,
) => ({
  name: format,
  schema,
  description,
  write,
});

/** A form in JSON, of a described shape. */
export const asJson = <T, Schema extends z.ZodType>(
  schema: Schema,
  description: string,
  write: JsonWriter<T, Schema>["write"],
  name: FormatName = "json",
) => ({
  name,
  schema,
  description,
  *write(value: T, question: Question): InSlices<string> {
    const json = yield* piecesOf(write(value, question));
    yield;
    return yield* boundedJsonInSlices(json);
  },
});

interface NamedWriter<T> extends TextWriter<T> {
  readonly name: FormatName;
  readonly schema: z.ZodType | null;
}

/** A file that is sent while it is made, in one form. */
export const streamedEndpoint = (
  description: Description,
  format: FormatName,
  of: string,
  stream: (question: Question) => Promise<Found<StreamedFile>>,
): Endpoint => ({
  ...description,
  stream,
  writings: [
    {
      format: formats[format],
      schema: z
        .string()
        .max(2 ** 31)
        .meta({ format: "binary" }),
      description: of,
    },
  ],
  answer: () => Promise.reject(new Error(`${description.path} is streamed`)),
});

/** A stream of events. */
export const eventsEndpoint = (
  description: Description,
  of: string,
  events: NonNullable<Endpoint["events"]>,
): Endpoint => ({
  ...description,
  events,
  writings: [{ format: formats.events, schema: null, description: of }],
  answer: () => Promise.reject(new Error(`${description.path} is a stream of events`)),
});

/** Puts together how a thing is found and how it is written; the first form is the one given to who names none. */
export function endpoint<T>(
  description: Description,
  find: (question: Question) => Promise<Found<T>>,
  writers: readonly NamedWriter<T>[],
): Endpoint {
  const writings = writers.map(({ name, schema, description: of }) => ({
    format: formats[name],
    schema,
    description: of,
  }));
  return {
    ...description,
    writings,
    answer: async (question, writing) => {
      const writer = writers[writings.findIndex((each) => each === writing)];
      if (writer === undefined) throw new Error(`${description.path} has no such form`);
      const value = await find(question);
      if (!value.ok) return value;
      const written = await runInSlices(question.deps, function* () {
        yield;
        return yield* piecesOf(writer.write(value.value, question));
      });
      if (typeof written === "string") {
        countWritten(question.deps, written);
        return found(written, value.headers);
      }
      if ("refusal" in written) return written;
      return written.ok ? found(written.value, value.headers) : refused(badParameters(written.problems.map(inAddress)));
    },
  };
}
