import { get, listOf, post, times, type AttackRequest, type Target } from "./attack-request.js";

const takesEvents = { accept: "text/event-stream", "content-type": "application/json" };

/** Streams that begin nowhere, that tell too much at once, and more of them than one caller may have. */
export function streamAttacks({ publisher, plans }: Target): readonly AttackRequest[] {
  const stream = "/v1/changes/stream";
  const cursor = (text: string): string => Buffer.from(text).toString("base64url");
  const positions: Readonly<Record<string, string>> = {
    "the first position": cursor('["0"]'),
    "the last position": cursor(`["${"9".repeat(18)}"]`),
    "a position beyond all": cursor(`["${"9".repeat(19)}"]`),
    "a position before all": cursor('["-1"]'),
    "a position that is SQL": cursor(`["1; DROP TABLE changes"]`),
    "a position of many keys": cursor(JSON.stringify(listOf(200, String))),
    "a position that nests": cursor("[".repeat(700)),
    "a position in no base64": "%%%",
    "a long position": "A".repeat(5_000),
  };
  const rest = [
    ...Object.entries(positions).flatMap(([name, position]) => [
      get(`${name} as Last-Event-ID`, stream, { "last-event-id": position }),
      get(`${name} as after`, `${stream}?after=${encodeURIComponent(position)}`),
    ]),
    get("a stream of an unknown publisher", `${stream}?publisher=${"x".repeat(200)}`),
    get("a stream in a language of marks", `${stream}?locale=${encodeURIComponent("\u0301".repeat(60))}`),
    get("a stream with thousands of keys", `${stream}?${times(2_000, (at) => `a${String(at)}`, "&")}`),
    get("a stream as something else", stream, { accept: "application/json" }),
    post("a stream that is written to", stream, {}),
    ...listOf(60, (at) => get(`one stream of many, ${String(at)}`, stream)),
  ];
  const watch = `subscription ($s: String!, $a: String) { planChanged(publisher: "${publisher}", slug: $s, after: $a) {
    cursor node { plan { slug revisions(first: 100) { edges { node { title } } } } } } }`;
  const subscribed = (name: string, query: unknown, variables: object = {}): AttackRequest =>
    post(name, "/graphql/stream", { query, variables }, takesEvents);
  const slug = plans[0] ?? "";
  const graphql = [
    subscribed("a subscription to all that there was", watch, { s: slug, a: positions["the first position"] }),
    ...Object.entries(positions).map(([name, a]) => subscribed(`${name} of a plan`, watch, { s: slug, a })),
    subscribed("a subscription to a plan that is not there", watch, { s: "\u0000" }),
    subscribed("an import that is not there", `subscription { importProgress(id: "x") { id } }`),
    subscribed("a query as a subscription", "{ plans(first: 100) { nodes { slug } } }"),
    subscribed(
      "a thousand aliases of a subscription",
      `subscription { ${times(1_000, (at) => `a${String(at)}: importProgress(id: "1") { id }`)} }`,
    ),
    subscribed(
      "a subscription in fragments that go round",
      "subscription { ...a } fragment a on Subscription { ...b } fragment b on Subscription { ...a }",
    ),
    subscribed(
      "a subscription that nests",
      `subscription { planChanged(publisher: "${publisher}", slug: "${slug}") { node { plan { ${"publisher { plans(first: 100) { nodes { ".repeat(60)}slug${" } } }".repeat(60)} } } } }`,
    ),
    subscribed("a document that is a number", 7),
    post("a subscription that is no JSON", "/graphql/stream", "{".repeat(3_000), takesEvents),
    post("a subscription of many values", "/graphql/stream", `[${"0,".repeat(100_000)}0]`, takesEvents),
    get(
      "a subscription in an address",
      `/graphql/stream?query=${encodeURIComponent(watch)}&variables=%7B`,
      takesEvents,
    ),
    ...listOf(60, (at) => subscribed(`one subscription of many, ${String(at)}`, watch, { s: slug })),
  ];
  return [...rest, ...graphql];
}
