import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";
import type { FastifyInstance } from "fastify";
import request, { type Response, type Test } from "supertest";
import { expect } from "vitest";
import { endpoints } from "../../src/rest/endpoints.js";
import { formats } from "../../src/rest/format.js";
import { openapiDocument } from "../../src/rest/openapi.js";

type Node = { readonly [name: string]: Node };

/** The document with every described object closed, so that a member nobody described is noticed here. */
function closed(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(closed);
  if (typeof node !== "object" || node === null) return node;
  const entries = Object.entries(node).map(([key, value]) => [key, closed(value)] as const);
  const isObject = "properties" in node && !("additionalProperties" in node);
  return Object.fromEntries(isObject ? [...entries, ["additionalProperties", false]] : entries);
}

const document = closed(openapiDocument(endpoints)) as Node;
const ajv = new Ajv2020({ strict: false, allErrors: true });
addFormats.default(ajv);
ajv.addSchema(document, "openapi");

const validators = new Map<string, ValidateFunction>();

const pointer = (parts: readonly string[]): string =>
  parts.map((part) => `/${part.replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");

const at = (parts: readonly string[]): Node | undefined =>
  parts.reduce<Node | undefined>((node, part) => node?.[part], document);

/**
 * The path of the document that an address belongs to; undefined for addresses it does not hold. An ending may be a path of its own, and a
 * plan's own address answers parts of it as its ending `.brief` does.
 */
function pathOf(url: string, type: string): string | undefined {
  const asked = url.split("?")[0]!;
  const plain = asked.replace(/\.[a-z]+$/, "");
  const candidates = [...(type === formats.brief.type ? [`${plain}.brief`] : []), asked, plain];
  const paths = Object.keys(document["paths"]!);
  return candidates.flatMap((each) => paths.find((path) => matches(path, each)) ?? [])[0];
}

const matches = (path: string, asked: string): boolean =>
  new RegExp(`^${path.replaceAll(".", "\\.").replace(/\{[a-z]+\}/gi, "[^/.]+")}$`).test(asked);

/** Holds one answer to the document: the status is declared, the media type too, and the body is of its shape. */
export function expectDescribed(method: string, url: string, response: Response): void {
  const type = (response.headers["content-type"] ?? "").split(";")[0]!;
  const path = pathOf(url, type);
  if (path === undefined) {
    expect(response.status, `${url} is not in the document`).toBe(404);
    expectValid(["components", "responses", "404", "content", type, "schema"], response);
    return;
  }
  const status = String(response.status);
  if (method === "OPTIONS" || (status === "405" && method !== "HEAD")) {
    if (status === "405") expectValid(["components", "responses", "405", "content", type, "schema"], response);
    return;
  }
  const operation = ["paths", path, method === "HEAD" ? "get" : method.toLowerCase()];
  const given = at([...operation, "responses", status]);
  const reference = given?.["$ref"] as string | undefined;
  const place = reference === undefined ? [...operation, "responses", status] : reference.slice(2).split("/");
  const declared = at(place);
  expect(declared, `${method} ${path} does not declare ${status}: ${response.text}`).toBeDefined();
  for (const name of ["ETag", "Link"]) {
    if (response.headers[name.toLowerCase()] !== undefined) expect(declared?.["headers"]).toHaveProperty(name);
  }
  if (status === "303" || status === "304" || method === "HEAD") return;
  expectValid([...place, "content", type, "schema"], response);
}

function expectValid(parts: readonly string[], response: Response): void {
  const key = pointer(parts);
  expect(at(parts), `${key} is not in the document; the body is ${response.text.slice(0, 300)}`).toBeDefined();
  const known = validators.get(key) ?? ajv.compile({ $ref: `openapi#${encodeURI(key).replaceAll("#", "%23")}` });
  validators.set(key, known);
  const json = (response.headers["content-type"] ?? "").includes("json");
  const valid = known(json ? JSON.parse(response.text) : response.text);
  expect(known.errors ?? [], `${key} does not describe ${response.text.slice(0, 300)}`).toEqual([]);
  expect(valid).toBe(true);
}

export type Method = "GET" | "HEAD" | "POST" | "PUT" | "PATCH" | "DELETE" | "OPTIONS";

export interface Asking {
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string | object;
}

/** Asks the application, and holds whatever comes back to the OpenAPI document. No answer of a REST test escapes this. */
export async function askRest(
  app: FastifyInstance,
  method: Method,
  url: string,
  { headers = {}, body }: Asking = {},
): Promise<Response> {
  const agent = request(app.server);
  const verbs: Record<Method, (url: string) => Test> = {
    GET: (to) => agent.get(to),
    HEAD: (to) => agent.head(to),
    POST: (to) => agent.post(to),
    PUT: (to) => agent.put(to),
    PATCH: (to) => agent.patch(to),
    DELETE: (to) => agent.delete(to),
    OPTIONS: (to) => agent.options(to),
  };
  const asking = verbs[method](url)
    .set({ host: "plans.example", ...headers })
    .buffer(true)
    .parse(asText);
  const response = await (body === undefined ? asking : asking.send(body));
  const text = typeof response.body === "string" ? response.body : "";
  const read = Object.assign(response, {
    text,
    body: text.startsWith("{") || text.startsWith("[") ? JSON.parse(text) : {},
  });
  expectDescribed(method, url, read);
  return read;
}

/** Every answer is kept as text, whatever its media type, so that the text itself can be looked at. */
function asText(response: Response, done: (error: Error | null, body: string) => void): void {
  const chunks: Buffer[] = [];
  response.on("data", (chunk: Buffer) => chunks.push(chunk));
  response.on("end", () => done(null, Buffer.concat(chunks).toString("utf8")));
}
