import { around, get, listOf, post, times, type AttackRequest, type Target } from "./attack-request.js";
import { households } from "./graphql-attacks.js";

const forms = ["", ".json", ".md", ".html", ".csv", ".ics", ".txt"];

/** Long runs that a pattern that tries again and again would be lost in. */
const runs: readonly string[] = [
  `${"a".repeat(5_000)}!`,
  `${" ".repeat(5_000)}x`,
  `${"1/".repeat(3_000)}2`,
  `${"1 ".repeat(3_000)}g`,
  `${"a-".repeat(3_000)}`,
  `${"(".repeat(3_000)}${")".repeat(3_000)}`,
  `${"½".repeat(3_000)}`,
  `${"\t ".repeat(3_000)}|`,
  `${"0".repeat(6_000)}.`,
  `${"x@".repeat(3_000)}`,
];

const readsOf = ({ publisher, plans }: Target, at: number): string => `/v1/plans/${publisher}/${around(plans, at)}`;

/** Pictures that are none, that say they are huge, and names that lead elsewhere. */
function imageAttacks(publisher: string): readonly AttackRequest[] {
  const at = `/v1/publishers/${publisher}/images`;
  const hand = (name: string, body: Buffer, query = ""): AttackRequest => ({
    ...{ name, method: "POST", path: at + query, headers: { "content-type": "image/png" }, body, authorised: true },
  });
  const mark = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const head = Buffer.from("0000000d49484452" + "7fffffff7fffffff" + "0806000000" + "00000000", "hex");
  const hash = "ab".repeat(32);
  return [
    hand("a picture of 15 MiB of nothing", Buffer.alloc(15 * 1024 * 1024)),
    hand("a picture that says it has 4 billion billion pixels", Buffer.concat([mark, head])),
    hand("a picture that is 14 MiB of a mark", Buffer.concat([mark, Buffer.alloc(14 * 1024 * 1024, 0x49)])),
    hand("a picture that is XML in XML", Buffer.from(`<?xml version="1.0"?>${"<svg>".repeat(100_000)}`)),
    hand("a picture on the way to the root", mark, `?file=${"../".repeat(60)}etc/passwd`),
    hand("a picture of a long name", mark, `?file=${"a/".repeat(4_000)}a.png`),
    ...["bytes=0-", `bytes=${"0-0,".repeat(2_000)}0-0`, `bytes=${"9".repeat(4_000)}-`].map((range) =>
      get("a part of a picture", `/images/${publisher}/${hash}/640.jpg`, { range }),
    ),
    { ...get("a picture as it is kept, of nobody", `/images/${publisher}/${hash}/original.png`), authorised: true },
    get("a picture as it is kept, without a token", `/images/${publisher}/${hash}/original.png`),
    get("a picture of a long width", `/images/${publisher}/${hash}/${"9".repeat(190)}.jpg`),
  ];
}

export function restAttacks(target: Target): readonly AttackRequest[] {
  const { publisher, plans, foods } = target;
  const lists = Object.entries(households(target)).flatMap(([name, of]) =>
    [1, 50].map((count) =>
      post(`a list of ${String(count)} plans over REST with ${name}`, "/v1/shopping-list", {
        plans: listOf(count, (at) => ({ publisher, slug: around(plans, at), servings: at + 1 })),
        household: of(200),
      }),
    ),
  );
  const asked = { locale: "en", measures: "US_CUSTOMARY" };
  const written = runs.map((run) =>
    post("200 lines of a long run", "/v1/read-lines", { ...asked, texts: listOf(200, () => run.slice(0, 500)) }),
  );
  const misspelt = post("200 lines that nothing is known of", "/v1/read-lines", {
    ...asked,
    texts: listOf(200, (at) =>
      `${String(at)} cups of juice and zest of nothing-${String(at)} `.repeat(12).slice(0, 500),
    ),
  });
  const searched = runs.map((run) =>
    get(
      "foods and rows of a long run",
      `/v1/foods?first=100&search=${encodeURIComponent(run.slice(0, 200)).replace(/%[^%]?$/, "")}`,
    ),
  );
  const parts = ["", "/list", "/session", "/storage", "/mail"].flatMap((part) =>
    [1, 37, 1_000_000].map((servings) =>
      get(`${part} for ${String(servings)}`, `${readsOf(target, servings)}${part}?servings=${String(servings)}`),
    ),
  );
  const ways = forms.flatMap((form) => [
    get(`a plan as ${form}`, `${readsOf(target, 0)}${form}?servings=40&cooks=20`),
    get(
      `a table as ${form}`,
      `${readsOf(target, 1)}/servings-table${form}?from=1&to=200&${times(50, (at) => `on-hand=${String(at)}%20g%20${around(foods, at)}`, "&")}`,
    ),
  ]);
  const inShort = [
    `include=${["components", "meals", "shoppingList", "session", "storage", "allergens", "diets", "nutrition", "cautions"].join(",")}`,
    `include=${times(300, (at) => `part${String(at)}`, ",")}`,
    `fields=${"components.".repeat(150)}x`,
    times(200, () => "fields=shoppingList.lines.toTake", "&"),
  ].map((query) => get("parts of a plan", `${readsOf(target, 0)}?servings=40&${query}`));
  const queries = runs.flatMap((run) => {
    const value = encodeURIComponent(run)
      .slice(0, 6_000)
      .replace(/%[^%]?$/, "");
    return ["on-hand", "avoid-allergen", "dislike", "eaters", "swap", "appliance", "start", "locale", "region"].map(
      (name) => get(`${name} of a long run`, `${readsOf(target, 0)}/list?servings=2&${name}=${value}`),
    );
  });
  const many = ["diet", "avoid-allergen", "dislike", "swap", "on-hand", "appliance", "route", "eaters"].map((name) =>
    get(`${name} 400 times`, `${readsOf(target, 0)}?servings=2&${times(400, (at) => `${name}=a${String(at)}`, "&")}`),
  );
  const headers = runs.flatMap((run) => {
    // What a header may hold.
    const value = run.replace(/[^\x20-\x7e]/g, "x");
    return ["accept", "accept-language", "if-none-match", "range", "x-request-id", "authorization", "content-type"].map(
      (name) => get(`${name} of a long run`, `${readsOf(target, 1)}?servings=2`, { [name]: value }),
    );
  });
  const accepts = [",", ";", "*/*,", "a/b;q=0.1,", "text/html;".repeat(2)].map((part) =>
    get("types that are accepted", readsOf(target, 0), { accept: part.repeat(2_000).slice(0, 14_000) }),
  );
  const pages = plans.flatMap((slug) =>
    ["", `?servings=200&${times(200, (at) => `onHand=${String(at)}`, "&")}`, `?diets=${"x".repeat(4_000)}`].map(
      (query) => get("a page", `/p/${publisher}/${slug}${query}`, { accept: "text/html" }),
    ),
  );
  const publishers = runs.flatMap((run) => {
    const value = encodeURIComponent(run.slice(0, 900)).replace(/%[^%]?$/, "");
    return [`first=100&after=${value}`, `last=100&before=${value}`].map((query) =>
      get("publishers after a long run", `/v1/publishers?${query}`),
    );
  });
  const vocabularies = [...runs.map((run) => run.slice(0, 190)), "de-u-nu-arab", "x-a", "en-".repeat(60)].map(
    (locale) => get("the vocabulary in a language that is none", `/v1/vocabulary?locale=${encodeURIComponent(locale)}`),
  );
  return [
    ...publishers,
    ...vocabularies,
    ...written,
    ...searched,
    misspelt,
    ...lists,
    ...parts,
    ...inShort,
    ...ways,
    ...queries,
    ...many,
    ...headers,
    ...accepts,
    ...pages,
    ...imageAttacks(publisher),
    ...bodies(target),
  ];
}

/** Bodies that are not what they say. */
function bodies({ publisher }: Target): readonly AttackRequest[] {
  const broken = [
    "[".repeat(500_000),
    `{"plans":${"[".repeat(100_000)}`,
    `{${times(90_000, (at) => `"k${String(at)}":1`, ",")}}`,
    `{"plans":[${times(20_000, () => "{}", ",")}]}`,
    `"${"\\u0000".repeat(50_000)}"`,
    `{"plans":[],"household":{"diets":["${"a".repeat(500_000)}"]}}`,
    "1".repeat(500_000),
    "",
  ];
  const types = [
    "application/json",
    "application/json; charset=utf-16",
    "text/plain",
    "multipart/form-data; boundary=a",
  ];
  const sent = broken.flatMap((body) =>
    ["/v1/shopping-list", "/graphql"].flatMap((path) =>
      types
        .slice(0, body.length > 100_000 ? 1 : 4)
        .map((type) => post("a broken body", path, body, { "content-type": type })),
    ),
  );
  const bytes = [Buffer.from([0xff, 0xfe, 0xfd]), Buffer.alloc(200_000, 0x80), Buffer.alloc(2_000_000, 0x20)].flatMap(
    (body) =>
      ["/v1/shopping-list", "/graphql"].map((path): AttackRequest => ({
        ...{
          name: "bytes that are no text",
          method: "POST",
          path,
          headers: { "content-type": "application/json" },
          body,
        },
      })),
  );
  const packed = ["gzip", "br", "deflate, gzip", "x"].map((encoding) =>
    post("a packed body", "/graphql", { query: "{ __typename }" }, {
      "content-type": "application/json",
      "content-encoding": encoding,
    } as never),
  );
  const addresses = [
    `/v1/plans/${"a/".repeat(3_000)}`,
    `/p/${"%2e%2e%2f".repeat(1_000)}`,
    `/v1/plans/${publisher}/${"x".repeat(7_000)}`,
    `/${"?".repeat(7_000)}`,
  ].map((path) => get("a long address", path));
  return [...sent, ...bytes, ...packed, ...addresses];
}
