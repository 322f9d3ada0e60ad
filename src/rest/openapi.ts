import { mostAnswerBytes } from "../http/answer-size.js";
import { z } from "zod";
import { namedSchemas } from "../exports/json/named-schema.js";
import type { Endpoint, Writing } from "./endpoint.js";
import { bareType, formats } from "./format.js";
import { pointsOfAnswer } from "./endpoint-cost.js";
import type { Parameter } from "./parameter.js";
import answerExamples from "./answer-examples.json" with { type: "json" };
import { problemKinds, type ProblemKind } from "./problem-kinds.js";
import { problemSchema } from "./problem-shape.js";

type Node = Readonly<Record<string, unknown>>;

const header = (name: string): Node => ({ $ref: `#/components/headers/${name}` });

const onEveryAnswer: Node = {
  "X-Request-Id": header("X-Request-Id"),
  RateLimit: header("RateLimit"),
  "RateLimit-Policy": header("RateLimit-Policy"),
};

const textHeader = (description: string): Node => ({ description, schema: { type: "string", maxLength: 4_000 } });

const inDocument = (id: string): string => `#/components/schemas/${id}`;

const withoutHeading = ({ $schema: _schema, $id: _id, ...schema }: z.core.JSONSchema.BaseSchema): Node => schema;

const largestInt32 = 2 ** 31 - 1;

/** What a client needs to hold a whole number. */
function sizeIntegers({ jsonSchema }: { jsonSchema: z.core.JSONSchema.BaseSchema }): void {
  if (jsonSchema.type !== "integer") return;
  const { minimum = Number.MIN_SAFE_INTEGER, maximum = Number.MAX_SAFE_INTEGER } = jsonSchema;
  const isSmall = minimum >= -largestInt32 && maximum <= largestInt32;
  Object.assign(jsonSchema, { minimum, maximum, format: isSmall ? "int32" : "int64" });
}

/** Named shapes are pointed at, others stand where they are used. */
function schemaOf(schema: z.ZodType): Node {
  const id = namedSchemas.get(schema)?.id;
  if (id !== undefined) return { $ref: inDocument(id) };
  return withoutHeading(z.toJSONSchema(schema, { io: "input", override: sizeIntegers }));
}

const parameterOf = ({ name, in: place, description, schema, required, repeats, example }: Parameter): Node => ({
  name,
  in: place,
  description,
  required,
  schema: repeats ? { type: "array", items: schemaOf(schema), maxItems: 200 } : schemaOf(schema),
  ...(repeats ? { style: "form", explode: true } : {}),
  ...(example === undefined ? {} : { example: repeats ? [example] : example }),
});

/**
 * Parameters that addresses with an ending point at, by the name they have in the document: of the same name there may be several, which
 * say different things. Addresses without one hold theirs, as they were released.
 */
function namedParameters(endpoints: readonly Endpoint[]): ReadonlyMap<string, Node> {
  const found = new Map<string, Node>();
  const texts = new Map<string, string>();
  for (const parameter of endpoints.filter(hasForms).flatMap(({ parameters }) => parameters)) {
    const node = parameterOf(parameter);
    const text = JSON.stringify(node);
    if (texts.has(text)) continue;
    const same = [...found.values()].filter(({ name }) => name === parameter.name).length;
    const id = same === 0 ? parameter.name : `${parameter.name}-${String(same + 1)}`;
    texts.set(text, id);
    found.set(id, node);
  }
  return found;
}

const hasForms = ({ writings }: Endpoint): boolean => writings.length > 1;

type Refer = (parameter: Parameter) => Node;

function referTo(named: ReadonlyMap<string, Node>): Refer {
  const ids = new Map([...named].map(([id, node]) => [JSON.stringify(node), id]));
  return (parameter) => ({ $ref: `#/components/parameters/${ids.get(JSON.stringify(parameterOf(parameter))) ?? ""}` });
}

const hasExample = (name: string): boolean => Object.hasOwn(answerExamples, name);

const exampleOf = (name: string): Node => ({ examples: { demo: { $ref: `#/components/examples/${name}` } } });

/** What the demo answers, cut short; of JSON, for what anybody may ask. */
const contentOf = (operationId: string, writings: readonly Writing[]): Node =>
  Object.fromEntries(
    writings.map(({ format, schema }) => [
      bareType(format.type),
      {
        schema: schema === null ? { type: "string", maxLength: mostAnswerBytes } : schemaOf(schema),
        ...(format.suffix === formats.json.suffix && hasExample(operationId) ? exampleOf(operationId) : {}),
      },
    ]),
  );

/** Refusals that any address may give. */
const always: readonly ProblemKind[] = [
  "unauthenticated",
  "bad-parameters",
  "not-acceptable",
  "method-not-allowed",
  "quota-exceeded",
  "overloaded",
  "unavailable",
  "timed-out",
  "answer-too-large",
  "fault",
];
const withToken: readonly ProblemKind[] = ["forbidden"];
const withBody: readonly ProblemKind[] = [
  "bad-request",
  "not-processable",
  "too-slow",
  "too-large",
  "unsupported-media-type",
];

function refusalsOf({ refusals, body, scope }: Endpoint): Node {
  const kinds = new Set([
    ...refusals,
    ...always,
    ...(scope === undefined ? [] : withToken),
    ...(body === undefined ? [] : withBody),
  ]);
  const statuses = [...new Set([...kinds].map((kind) => problemKinds[kind].status))].toSorted((a, b) => a - b);
  return Object.fromEntries(statuses.map((status) => [String(status), { $ref: `#/components/responses/${status}` }]));
}

const fileBody: Node = {
  required: true,
  description: "The file itself.",
  content: { "*/*": { schema: { type: "string", format: "binary" } } },
};

const isBrief = ({ format }: Writing): boolean => format === formats.brief;

/** What an address takes: parameters that choose parts belong to the brief form alone, so that every other answer has one shape. */
const parametersOf = ({ parameters, selection = [] }: Endpoint, form: Writing | null): readonly Parameter[] =>
  form !== null && isBrief(form) ? parameters : parameters.filter(({ name }) => !selection.includes(name));

const inTitleCase = (suffix: string): string => suffix.charAt(0).toUpperCase() + suffix.slice(1);

/** @param form the one that the ending of the address asks for; null: `Accept` chooses among them */
function operationOf(endpoint: Endpoint, form: Writing | null, refer: Refer): Node {
  const { tag, summary, description, body, caching, method, links, scope, upload } = endpoint;
  const validated = caching !== "NEVER" && method === "GET";
  const writings = form === null ? endpoint.writings.filter((each) => !isBrief(each)) : [form];
  const suffix = form?.format.suffix;
  return {
    operationId: suffix === undefined ? endpoint.operationId : `${endpoint.operationId}As${inTitleCase(suffix)}`,
    tags: [tag],
    summary: suffix === undefined ? summary : `${summary} (.${suffix})`,
    ...(form === null
      ? description === undefined
        ? {}
        : { description }
      : { description: `${form.description} Always in this form, whatever \`Accept\` says.` }),
    security: scope === undefined ? [] : [{ token: [] }],
    parameters: [
      ...parametersOf(endpoint, form).map(form === null ? parameterOf : refer),
      ...(validated ? [{ $ref: "#/components/parameters/If-None-Match" }] : []),
    ],
    ...(body === undefined
      ? {}
      : { requestBody: { required: true, content: { "application/json": { schema: schemaOf(body) } } } }),
    ...(upload === undefined ? {} : { requestBody: fileBody }),
    responses: {
      [String(endpoint.status ?? 200)]: {
        description: writings.map((writing) => writing.description).join(" "),
        headers: {
          ...onEveryAnswer,
          "Cache-Control": header("Cache-Control"),
          ...(validated ? { ETag: header("ETag") } : {}),
          ...(links === undefined ? {} : { Link: textHeader(`${links} (RFC 8288).`) }),
        },
        content: contentOf(endpoint.operationId, writings),
      },
      ...(endpoint.page === undefined || form !== null ? {} : { "303": { $ref: "#/components/responses/303" } }),
      ...(validated ? { "304": { $ref: "#/components/responses/304" } } : {}),
      ...refusalsOf(endpoint),
    },
  };
}

/** Those that some address gives. */
const responsesOf = (endpoints: readonly Endpoint[]): Node => ({
  "303": {
    description: "For callers that prefer HTML: the page is at another address.",
    headers: { Location: header("Location") },
  },
  "304": { description: "Your copy is still current.", headers: { ETag: header("ETag") } },
  ...Object.fromEntries(
    [...new Set(endpoints.flatMap((endpoint) => Object.keys(refusalsOf(endpoint))))].toSorted().map((status) => [
      status,
      {
        description: Object.values(problemKinds)
          .filter((kind) => String(kind.status) === status)
          .map(({ title }) => `${title}.`)
          .join(" "),
        headers: {
          ...onEveryAnswer,
          ...(status === "405" ? { Allow: header("Allow") } : {}),
          ...(status === "429" || status === "503" ? { "Retry-After": header("Retry-After") } : {}),
        },
        content: {
          "application/problem+json": {
            schema: { $ref: inDocument("Problem") },
            ...(status === "400" ? exampleOf("problem") : {}),
          },
        },
      },
    ]),
  ),
});

const headers: Node = {
  "X-Request-Id": textHeader(
    "Identifies this request in the service's log. An id that you send is used if it is well formed.",
  ),
  "Cache-Control": textHeader("How long the answer may be kept."),
  ETag: textHeader("Identifies this answer. Send it in If-None-Match."),
  Allow: textHeader("The methods this address takes."),
  Location: textHeader("Where the page is."),
  RateLimit: textHeader(
    "What is left of the budget (`r`, in points) for how many seconds (`t`): a structured field (draft-ietf-httpapi-ratelimit-headers). Absent where nothing is limited.",
  ),
  "RateLimit-Policy": textHeader("The budget: its name, its points (`q`) and its window in seconds (`w`)."),
  "Retry-After": textHeader("How many seconds to wait."),
};

const about = `Plans computed for any household, in the forms that browsers, feed readers, calendars and CDNs use.

Forms: every address answers in the media type that \`Accept\` prefers, or in the one its ending names: \`.json\`, \`.md\`, \`.csv\`
and so on, where that form exists. Generated clients use the addresses with an ending: each of them answers in one shape. \`HEAD\` is answered wherever \`GET\` is.

Errors are problem documents (RFC 9457). A parameter that is not known is refused, so that a spelling mistake is not taken
for an answer. More members may be added to any answer; none is taken away within a version.

Rate limits: an answer costs ${pointsOfAnswer} points of a budget by the minute, of the access token or else of the address that asks, a list 100 for each plan and a
table 20 for each row where that is more. What computing took beyond that is taken afterwards. What is left is
in the header \`RateLimit\`; when it is spent, the answer is 429 with \`Retry-After\`.

Food safety: cautions and keeping times are shown with their sources. Local food-safety codes and licensed practice come
first, and unknown is never "free from".`;

/** The OpenAPI 3.1 document of these addresses. */
export function openapiDocument(endpoints: readonly Endpoint[]): Node {
  const parameters = namedParameters(endpoints);
  const refer = referTo(parameters);
  const paths = new Map<string, Record<string, Node>>();
  const describe = (path: string, endpoint: Endpoint, form: Writing | null): void => {
    paths.set(path, { ...paths.get(path), [endpoint.method.toLowerCase()]: operationOf(endpoint, form, refer) });
  };
  for (const endpoint of endpoints) {
    describe(endpoint.path, endpoint, null);
    if (!hasForms(endpoint)) continue;
    for (const writing of endpoint.writings) describe(`${endpoint.path}.${writing.format.suffix}`, endpoint, writing);
  }
  // As they are sent: only what is sent in is closed, since more may be added to any answer.
  const { schemas } = z.toJSONSchema(namedSchemas, { uri: inDocument, io: "input", override: sizeIntegers });
  if (schemas[namedSchemas.get(problemSchema)?.id ?? ""] === undefined) throw new Error("problems are not described");
  return {
    openapi: "3.1.0",
    info: {
      title: "Prepwright",
      version: "1",
      summary: "Meal-prep plans, computed for every reader's household.",
      description: about,
      license: { name: "MIT", identifier: "MIT" },
      contact: { name: "Whoever runs this service" },
    },
    servers: [{ url: "/", description: "This service." }],
    tags: [
      { name: "plans", description: "Plans, and what is computed from them." },
      { name: "shopping", description: "Lists over several plans." },
      { name: "catalogue", description: "Foods and components." },
      { name: "publishers", description: "Publishers, and what is new." },
      {
        name: "imports",
        description: "Files for feeds, and the results of their imports. Feeds are created over GraphQL.",
      },
      { name: "service", description: "The service itself." },
    ],
    paths: Object.fromEntries(paths),
    components: {
      schemas: Object.fromEntries(
        Object.entries(schemas)
          .toSorted(([a], [b]) => (a < b ? -1 : 1))
          .map(([id, schema]) => [id, withoutHeading(schema)]),
      ),
      parameters: {
        ...Object.fromEntries([...parameters].toSorted(([a], [b]) => (a < b ? -1 : 1))),
        "If-None-Match": {
          name: "If-None-Match",
          in: "header",
          description: "ETags of the copies you have. The answer is 304 if one of them is current.",
          required: false,
          schema: { type: "string", maxLength: 4_000 },
        },
      },
      securitySchemes: {
        token: { type: "http", scheme: "bearer", description: "An access token of the publisher, or of the operator." },
      },
      headers,
      responses: responsesOf(endpoints),
      examples: Object.fromEntries(
        Object.entries(answerExamples).map(([name, value]) => [name, { summary: "Of the demo, cut short.", value }]),
      ),
    },
  };
}
