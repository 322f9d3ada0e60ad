import {
  getNamedType,
  isEnumType,
  isInputObjectType,
  isLeafType,
  isListType,
  isNonNullType,
  type GraphQLArgument,
  type GraphQLInputType,
  type GraphQLNamedType,
  type GraphQLSchema,
  isCompositeType,
  isAbstractType,
  isObjectType,
  isInterfaceType,
} from "graphql";
import type { Dice } from "../kit/arbitrary/dice.js";
import { hostileText, hostileValue } from "./hostile.js";
import type { FuzzedRequest } from "./fuzzed-request.js";

/** Values that exist in the demo, so that a question often finds something. */
export interface Known {
  readonly publishers: readonly string[];
  readonly plans: readonly string[];
  readonly foods: readonly string[];
}

/** A document that is valid by the schema, with hostile values in its arguments: what gets past the validation. */
export function validDocument(schema: GraphQLSchema, known: Known, dice: Dice): string {
  const mutation = dice.chance(0.3);
  const root = mutation ? schema.getMutationType() : schema.getQueryType();
  if (!root) throw new Error("the schema has no such root");
  const fields = Array.from({ length: 1 + dice.roll(3) }, (_, at) => {
    const field = dice.pick(Object.values(root.getFields()));
    const inner = selection(schema, getNamedType(field.type), known, dice, 1 + dice.roll(4));
    return `f${at}: ${field.name}${argumentsOf(field.args, known, dice)} ${inner}`;
  });
  return `${mutation ? "mutation" : "query"} { ${fields.join(" ")} }`;
}

function selection(schema: GraphQLSchema, type: GraphQLNamedType, known: Known, dice: Dice, depth: number): string {
  if (isLeafType(type)) return "";
  const chosen: string[] = ["__typename"];
  if (isObjectType(type) || isInterfaceType(type)) {
    for (const field of Object.values(type.getFields())) {
      const named = getNamedType(field.type);
      if (!dice.chance(isLeafType(named) ? 0.5 : 0.3)) continue;
      if (!isLeafType(named) && depth <= 0) continue;
      const inner = selection(schema, named, known, dice, depth - 1);
      chosen.push(`a${chosen.length}: ${field.name}${argumentsOf(field.args, known, dice)} ${inner}`);
    }
  }
  if (isAbstractType(type) && isCompositeType(type))
    for (const possible of dice.some(schema.getPossibleTypes(type), 0.5))
      chosen.push(`... on ${possible.name} ${selection(schema, possible, known, dice, depth - 1)}`);
  return `{ ${chosen.join(" ")} }`;
}

function argumentsOf(args: readonly GraphQLArgument[], known: Known, dice: Dice): string {
  const given = args.filter(({ type }) => isNonNullType(type) || dice.chance(0.4));
  if (given.length === 0) return "";
  return `(${given.map(({ name, type }) => `${name}: ${literal(name, type, known, dice, 4)}`).join(", ")})`;
}

function literal(name: string, type: GraphQLInputType, known: Known, dice: Dice, depth: number): string {
  if (isNonNullType(type)) return literal(name, type.ofType, known, dice, depth);
  if (dice.chance(0.03)) return "null";
  if (isListType(type)) {
    const length = dice.chance(0.02) ? 300 : dice.roll(4);
    return `[${Array.from({ length }, () => literal(name, type.ofType, known, dice, depth - 1)).join(", ")}]`;
  }
  if (isEnumType(type)) return dice.pick(type.getValues()).name;
  if (isInputObjectType(type)) {
    const fields = Object.values(type.getFields());
    const chosen = type.isOneOf
      ? [dice.pick(fields)]
      : fields.filter((field) => isNonNullType(field.type) || (depth > 0 && dice.chance(0.4)));
    return `{${chosen.map((field) => `${field.name}: ${literal(field.name, field.type, known, dice, depth - 1)}`).join(", ")}}`;
  }
  return scalar(name, type.name, known, dice);
}

function scalar(name: string, type: string, known: Known, dice: Dice): string {
  if (type === "Int") return String(dice.pick([0, 1, 2, 4, 7, 12, 100, -1, 101, 2147483647, -2147483648]));
  if (type === "Float") return dice.pick(["0", "1.5", "-0.0", "1e308", "1e-308", "24", "-3"]);
  if (type === "Boolean") return dice.pick(["true", "false"]);
  if (dice.chance(0.6)) {
    const words = /publisher/i.test(name) ? known.publishers : /food|ndb/i.test(name) ? known.foods : known.plans;
    return JSON.stringify(dice.pick(words));
  }
  if (dice.chance(0.4))
    return JSON.stringify(
      dice.pick(["2026-03-01", "2026-03-01T09:00:00Z", "1 1/2", "500 g", "XTS", "XA", "en", "UTC"]),
    );
  return JSON.stringify(hostileText(dice));
}

/** Words and marks of documents, cut out and put in anywhere. */
const scraps = [
  ...'{}()[]:$@!|&="#,'.split(""),
  ...["...", "on", "query", "mutation", "subscription", "fragment x on Plan", "@skip(if: true)", "@include(if: $x)"],
  ...[
    "__schema",
    '__type(name: "Plan")',
    "__typename",
    "$servings",
    "null",
    "true",
    "-0",
    "1e999",
    '"""',
    "@defer",
    "extend type Query",
  ],
];

/** A document with tokens missing, doubled, swapped or put in. */
export function mangledDocument(document: string, dice: Dice): string {
  const tokens = document.split(/(\s+|[{}()[\]:,$@!])/).filter((token) => token !== "");
  for (let turn = 0; turn <= dice.roll(5); turn += 1) {
    const at = dice.roll(tokens.length);
    dice.pick([
      () => tokens.splice(at, 1 + dice.roll(4)),
      () => tokens.splice(at, 0, dice.pick(scraps)),
      () => tokens.splice(at, 1, dice.pick(tokens)),
      () => tokens.splice(at, 0, ...tokens.slice(at, at + 1 + dice.roll(20))),
      () => tokens.splice(at, 0, hostileText(dice)),
    ])();
    if (tokens.length === 0) tokens.push("{");
  }
  return tokens.join("");
}

/** Documents that are small and ask for much. */
export const bombs: readonly ((dice: Dice) => string)[] = [
  (dice) => `{ ${"plans(first: 1) { edges { node { meals { ".repeat(1 + dice.roll(60))}`,
  (dice) => `{ ${Array.from({ length: dice.roll(400) }, (_, at) => `a${at}: viewer { __typename }`).join(" ")} }`,
  (dice) => {
    const levels = 2 + dice.roll(20);
    const parts = Array.from({ length: levels }, (_, at) =>
      at + 1 === levels
        ? `fragment f${at} on Query { viewer { __typename } }`
        : `fragment f${at} on Query { ...f${at + 1} ...f${at + 1} }`,
    );
    return `query { ...f0 } ${parts.join(" ")}`;
  },
  () => "query { ...a } fragment a on Query { ...b } fragment b on Query { ...a }",
  (dice) => `query { viewer { __typename ${"@skip(if: false) ".repeat(dice.roll(600))} } }`,
  (dice) => Array.from({ length: dice.roll(150) }, (_, at) => `query q${at} { viewer { __typename } }`).join(" "),
  (dice) =>
    `query (${Array.from({ length: dice.roll(300) }, (_, at) => `$v${at}: Int`).join(", ")}) { viewer { __typename } }`,
  (dice) =>
    `{ __schema { types { fields { type ${"{ ofType ".repeat(1 + dice.roll(12))}{ name }${"}".repeat(12)} } } }`,
  (dice) => {
    const names = (inside: string, of: string): string =>
      Array.from(
        { length: 1 + dice.roll(20) },
        (_, at) => `${of.replaceAll("_", "")[0] ?? "x"}${at}: ${of} ${inside}`,
      ).join(" ");
    return `{ ${names("{ ...S }", "__schema")} } fragment S on __Schema { ${names("{ ...T }", "types")} }
      fragment T on __Type { ${names("{ name description }", "fields")} }`;
  },
  (dice) =>
    `{ foods(first: 100, filter: { search: ${JSON.stringify("a ".repeat(dice.roll(2000)))} }) { edges { node { slug } } } }`,
  (dice) => `query ($x: [[[[String]]]] = ${"[".repeat(dice.roll(3000))}) { viewer { __typename } }`,
  (dice) => "{".repeat(dice.roll(5000)),
  () => "",
];

/** What a request to the endpoint may look like, given a document. */
export function graphqlRequest(document: string, dice: Dice): FuzzedRequest {
  const body: Record<string, unknown> = { query: document };
  if (dice.chance(0.4))
    body["variables"] = dice.chance(0.8) ? { servings: hostileValue(dice), x: hostileValue(dice) } : hostileValue(dice);
  if (dice.chance(0.15)) body["operationName"] = dice.chance(0.5) ? "q1" : hostileValue(dice);
  if (dice.chance(0.15)) {
    body["extensions"] = dice.chance(0.5)
      ? hostileValue(dice)
      : {
          persistedQuery: {
            version: dice.pick([1, 2, "1"]),
            sha256Hash: dice.pick(["a".repeat(64), "", "x", hostileText(dice)]),
          },
        };
  }
  if (dice.chance(0.05)) body["documentId"] = dice.pick([`sha256:${"0".repeat(64)}`, "x", 7, hostileText(dice)]);
  if (dice.chance(0.03)) delete body["query"];
  if (dice.chance(0.15)) {
    const search = new URLSearchParams(
      Object.entries(body).map(([name, value]): [string, string] => [
        name,
        typeof value === "string" ? value : (JSON.stringify(value) ?? ""),
      ]),
    );
    return {
      method: dice.pick(["GET", "GET", "HEAD", "PUT", "DELETE"]),
      path: `/graphql?${search.toString()}`,
      headers: {},
      body: null,
    };
  }
  const list = dice.chance(0.04);
  const text = JSON.stringify(list ? Array.from({ length: dice.roll(60) }, () => body) : body);
  return { method: "POST", path: "/graphql", headers: { "content-type": "application/json" }, body: Buffer.from(text) };
}
