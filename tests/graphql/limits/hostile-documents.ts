/** A document made to be costly, and the code it is refused with. */
export interface HostileDocument {
  readonly name: string;
  readonly query: string;
  readonly variables?: Readonly<Record<string, unknown>>;
  readonly code: string;
}

const times = (count: number, text: (index: number) => string): string =>
  Array.from({ length: count }, (_, n) => text(n)).join(" ");
const deep = (levels: number, open: string, inside: string): string =>
  open.repeat(levels) + inside + " }".repeat(levels * open.split("{").length - levels);
/** Names for the schema, in each of them for its types, in each of them for their fields. */
const wideSchema = (schemas: number, types: number, fields: number): string =>
  `{ ${times(schemas, (n) => `a${n}: __schema { ...S }`)} } fragment S on __Schema { ${times(types, (n) => `b${n}: types { ...T }`)} } ` +
  `fragment T on __Type { ${times(fields, (n) => `c${n}: fields { ...F }`)} } fragment F on __Field { name description type { name kind } }`;
const plan = 'plan(publisher: "p", slug: "s")';
const bomb = (levels: number, last: string): string =>
  `{ ...F0 } ${times(levels, (n) => `fragment F${n} on Query { ...F${n + 1} ... on Query { ...F${n + 1} } }`)} fragment F${levels} on Query { ${last} }`;

/** What strangers try, as conventions and OWASP's GraphQL cheat sheet name it. */
export const hostileDocuments: readonly HostileDocument[] = [
  { name: "200 aliases", query: `{ ${times(200, (n) => `a${n}: ruleSets { code }`)} }`, code: "TOO_LARGE" },
  { name: "40 levels", query: `{ ${plan} { ${deep(40, "meals { components { ", "title")} } }`, code: "TOO_LARGE" },
  { name: "a field 900 times", query: `{ ${plan} { ${times(900, () => "title")} } }`, code: "TOO_LARGE" },
  {
    name: "a field in 200 fragments",
    query: `{ ${plan} { ${times(200, (n) => `...R${n}`)} } } ${times(200, (n) => `fragment R${n} on Plan { title }`)}`,
    code: "TOO_LARGE",
  },
  {
    name: "400 directives",
    query: `{ ${plan} { title ${times(400, () => "@skip")} } }`,
    code: "TOO_LARGE",
  },
  { name: "unknown directives", query: `{ ${plan} { title ${times(400, (n) => `@d${n}`)} } }`, code: "TOO_LARGE" },
  {
    name: "2,000 tokens and more",
    query: `{ ${times(1500, () => `${plan} { title }`)} }`,
    code: "GRAPHQL_PARSE_FAILED",
  },
  { name: "open braces", query: "{ a ".repeat(20_000), code: "GRAPHQL_PARSE_FAILED" },
  {
    name: "a value in a thousand lists",
    query: `{ plan(publisher: ${"[".repeat(900)}${"]".repeat(900)}, slug: "s") { title } }`,
    code: "GRAPHQL_PARSE_FAILED",
  },
  { name: "fragments that double", query: bomb(20, `${plan} { title }`), code: "TOO_LARGE" },
  { name: "fragments that double around a name", query: bomb(20, "__typename"), code: "TOO_LARGE" },
  {
    name: "fragments that double around introspection",
    query: bomb(20, "__schema { types { name } }"),
    code: "TOO_LARGE",
  },
  {
    name: "a fragment in itself",
    query: `{ ...F } fragment F on Query { ${plan} { title } ...F }`,
    code: "GRAPHQL_VALIDATION_FAILED",
  },
  {
    name: "fragments in a circle",
    query: `{ ...F0 } ${times(100, (n) => `fragment F${n} on Query { ...F${(n + 1) % 100} }`)}`,
    code: "GRAPHQL_VALIDATION_FAILED",
  },
  { name: "100 operations", query: times(100, (n) => `query Q${n} { ${plan} { title } }`), code: "TOO_LARGE" },
  {
    name: "wide and deep pages",
    query: `{ plans(first: 100) { edges { node { revisions(first: 100) { edges { node { revisions(first: 100) { edges { cursor } } } } } } } } }`,
    code: "COST_TOO_HIGH",
  },
  {
    name: "the same by variables",
    query: `query ($n: Int) { plans(first: $n) { edges { node { revisions(first: $n) { edges { node { revisions(first: $n) { edges { cursor } } } } } } } } }`,
    variables: { n: 100 },
    code: "COST_TOO_HIGH",
  },
  {
    name: "fifty plans in thirty lists",
    query: `query ($p: [PlanPortionInput!]!) { ${times(30, (n) => `l${n}: shoppingList(plans: $p) { lines { uses { asWritten amount { text } } } }`)} }`,
    variables: { p: Array.from({ length: 50 }, () => ({ publisher: "p", slug: "s", servings: 1 })) },
    code: "COST_TOO_HIGH",
  },
  {
    name: "introspection in circles",
    query: `{ __schema { types { ${deep(12, "fields { type { ", "name")} } } }`,
    code: "GRAPHQL_VALIDATION_FAILED",
  },
  { name: "4 x 10 x 10 names for fields of the schema", query: wideSchema(4, 10, 10), code: "TOO_LARGE" },
  { name: "16 x 16 x 16 names for fields of the schema", query: wideSchema(16, 16, 16), code: "TOO_LARGE" },
  { name: "as many such names as a document may have", query: wideSchema(3, 3, 2), code: "TOO_LARGE" },
  {
    name: "the schema's types in as many names as a document may have",
    query: `{ __schema { ${times(30, (n) => `a${n}: types { fields { name type { name } } }`)} } }`,
    code: "TOO_LARGE",
  },
  {
    name: "a description in 660 names",
    query: `{ __schema { types { ${times(660, (n) => `a${n}: description`)} } } }`,
    code: "TOO_LARGE",
  },
  {
    name: "a name 1,900 times",
    query: `{ __schema { types { ${times(1900, () => "name")} } } }`,
    code: "TOO_LARGE",
  },
  {
    name: "types of types of types",
    query: `{ __schema { types { possibleTypes { interfaces { possibleTypes { fields { name } } } } } } }`,
    code: "GRAPHQL_VALIDATION_FAILED",
  },
  {
    name: "fields that fit no other",
    query: `{ ${plan} { ${times(90, (n) => `... on Plan { ${n < 25 ? "title: slug" : "title"} }`)} } }`,
    code: "GRAPHQL_VALIDATION_FAILED",
  },
  { name: "300 unknown fields", query: `{ ${times(300, (n) => `plam${n}`)} }`, code: "GRAPHQL_VALIDATION_FAILED" },
  {
    name: "300 unknown variables",
    query: `query (${times(300, (n) => `$v${n}: Int`)}) { __typename }`,
    code: "GRAPHQL_VALIDATION_FAILED",
  },
  {
    name: "a deep variable",
    query:
      'query ($h: HouseholdInput) { plan(publisher: "p", slug: "s") { scaled(servings: 1, household: $h) { servings } } }',
    variables: { h: Array.from({ length: 2000 }).reduce<object>((inner) => ({ swaps: [inner] }), {}) },
    code: "TOO_LARGE",
  },
  {
    name: "a hundred thousand wrong entries",
    query:
      'query ($h: HouseholdInput) { plan(publisher: "p", slug: "s") { scaled(servings: 1, household: $h) { servings } } }',
    variables: { h: { diets: Array.from({ length: 100_000 }, () => 1) } },
    code: "TOO_LARGE",
  },
  {
    name: "a variable as deep as may be",
    query:
      'query ($h: HouseholdInput) { plan(publisher: "p", slug: "s") { scaled(servings: 1, household: $h) { servings } } }',
    variables: { h: Array.from({ length: 45 }).reduce<object>((inner) => ({ swaps: [inner] }), {}) },
    code: "BAD_USER_INPUT",
  },
  {
    name: "as many wrong entries as may be",
    query:
      'query ($h: HouseholdInput) { plan(publisher: "p", slug: "s") { scaled(servings: 1, household: $h) { servings } } }',
    variables: { h: { diets: Array.from({ length: 19_000 }, () => 1) } },
    code: "BAD_USER_INPUT",
  },
];
