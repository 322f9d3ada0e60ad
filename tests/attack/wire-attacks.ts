import { listOf, times } from "./attack-request.js";

/** Bytes for one connection, whatever they mean. */
export interface WireAttack {
  readonly name: string;
  /** Written one after another, a turn between them. */
  readonly pieces: readonly Buffer[];
  /** What the client does then: it waits, closes its half, or resets the connection. */
  readonly then: "WAIT" | "HALF_CLOSE" | "RESET";
  /** How many answers must come, where that is known. Left out: any number. */
  readonly answers?: number;
}

const crlf = "\r\n";
const end = `${crlf}${crlf}`;
const head = (request: string, ...fields: readonly string[]): string => [request, "host: a", ...fields].join(crlf);
const last = "connection: close";

const attack = (
  name: string,
  bytes: string | Buffer | readonly (string | Buffer)[],
  more: Partial<WireAttack> = {},
): WireAttack => ({
  name,
  // Signs up to U+00FF stand for bytes.
  pieces: (typeof bytes === "string" || Buffer.isBuffer(bytes) ? [bytes] : bytes).map((piece) =>
    typeof piece === "string" ? Buffer.from(piece, "latin1") : piece,
  ),
  then: "WAIT",
  ...more,
});

/** Percent signs with nothing, with half a sign, with bytes that are no UTF-8 (RFC 3629, sections 3 and 10): overlong, surrogates, beyond U+10FFFF. */
const wrongSigns = [
  ...["%", "%z", "%zz", "%0", "%u0041", "%00", "%0d%0a", "%2e%2e%2f", "%25%30%30", "%c0%af", "%c1%bf"],
  ...["%e0%80%af", "%f0%80%80%af", "%ed%a0%80", "%ed%bf%bf", "%f4%90%80%80", "%f8%88%80%80%80", "%ff", "%fe%ff", "%80"],
  ...["\xc0\xaf", "\xff", "\x01", "\x7f", "é", "[", "|", "{}", "^", "`", "\\", "..", "//", ";a=b", "@", ":0"],
];

const methods = ["GET", "HEAD", "OPTIONS", "POST", "PUT", "PATCH", "DELETE", "TRACE", "PROPFIND", "PURGE", "M-SEARCH"];

/** Every method on every route, one after another on one connection, none of them waited for. @param paths with every parameter filled in */
export const methodAttacks = (paths: readonly string[]): readonly WireAttack[] =>
  paths.map((path) =>
    attack(
      `every method at ${path}`,
      methods
        .map((method, at) => {
          const isLast = at === methods.length - 1 ? [last] : [];
          return head(`${method} ${path} HTTP/1.1`, "content-length: 0", ...isLast) + end;
        })
        .join(""),
      { answers: methods.length },
    ),
  );

/** Wrong signs in the last part and in the query of every route, one after another on one connection. */
export const addressAttacks = (paths: readonly string[]): readonly WireAttack[] =>
  paths.flatMap((path) => [
    ...wrongSigns.map((sign) => attack(`${JSON.stringify(sign)} in ${path}`, ask(`${path}${sign}`))),
    attack(`one key 900 times at ${path}`, ask(`${path}?${times(900, (at) => `servings=${String(at)}`, "&")}`)),
    attack(`2,000 keys at ${path}`, ask(`${path}?${times(2_000, (at) => `a${String(at)}`, "&")}`)),
    attack(`10,000 keys at ${path}`, ask(`${path}?${times(10_000, (at) => `a${String(at)}=`, "&")}`)),
    attack(
      `wrong signs in the query of ${path}`,
      ask(`${path}?${wrongSigns.map((sign, at) => `a${String(at)}=${sign}&${sign}=1`).join("&")}`),
    ),
  ]);

const ask = (path: string): string => head(`GET ${path} HTTP/1.1`, last) + end;

const json = "content-type: application/json";
const asked = '{"query":"{ __typename }"}';
const posted = (fields: readonly string[], body: string): string =>
  head("POST /graphql HTTP/1.1", json, ...fields) + end + body;

/** Heads and bodies that are not what they say (RFC 9112, sections 2.2, 3, 6 and 7). */
export const framingAttacks: readonly WireAttack[] = [
  ...["-1", "+26", "0x1a", "26, 26", "2 6", "", "1e1", "99999999999999999999", "26.0", "NaN"].map((length) =>
    attack(`a length of ${JSON.stringify(length)}`, posted([`content-length: ${length}`, last], asked)),
  ),
  attack("two lengths", posted(["content-length: 26", "content-length: 5", last], asked)),
  attack("a length that is too small", posted(["content-length: 5"], asked)),
  attack("a length that is too great", posted(["content-length: 5000", last], asked), { then: "HALF_CLOSE" }),
  attack("a length beyond what is read", posted(["content-length: 900000000", last], asked)),
  attack("a length and chunks", posted(["content-length: 26", "transfer-encoding: chunked", last], asked)),
  ...["chunked, identity", "gzip, chunked", "xchunked", "chunked, chunked", " \tchunked", "identity"].map((coding) =>
    attack(`transfer coding ${JSON.stringify(coding)}`, posted([`transfer-encoding: ${coding}`, last], `0${end}`)),
  ),
  ...[
    "fffffffffffffffff\r\n",
    "-1\r\nab\r\n",
    "g\r\n",
    "2\r\nabc\r\n0\r\n\r\n",
    `1a;${"x".repeat(20_000)}\r\n${asked}\r\n0\r\n\r\n`,
    `${"1;a\r\nx\r\n".repeat(3_000)}0\r\n\r\n`,
    `1a\r\n${asked}\r\n0\r\n${"t: 1\r\n".repeat(5_000)}\r\n`,
    "1a\n",
  ].map((body) =>
    attack(`chunks ${JSON.stringify(body.slice(0, 12))}`, posted(["transfer-encoding: chunked", last], body)),
  ),
  attack("chunks of a byte each", [
    posted(["transfer-encoding: chunked", last], ""),
    ...Array.from(asked, (sign) => `1\r\n${sign}\r\n`),
    `0${end}`,
  ]),
  ...["100-continue", "200-ok", ""].map((expected) =>
    attack(`expects ${JSON.stringify(expected)}`, posted([`expect: ${expected}`, "content-length: 26", last], asked)),
  ),
  ...["websocket", "h2c", "TLS/1.3", "x".repeat(2_000)].map((protocol) =>
    attack(
      `upgrade to ${protocol.slice(0, 12)}`,
      head("GET / HTTP/1.1", "connection: upgrade", `upgrade: ${protocol}`) + end,
      { then: "HALF_CLOSE" },
    ),
  ),
  ...[
    "GET / HTTP/1.0\r\n\r\n",
    "GET /\r\n",
    "GET / HTTP/1.1\r\nconnection: close\r\n\r\n",
    "GET / HTTP/1.1\r\nhost: a\r\nhost: b\r\nconnection: close\r\n\r\n",
    "GET / HTTP/1.1\nhost: a\n\n",
    "GET / HTTP/1.1\r\n host: a\r\n\r\n",
    "GET / HTTP/1.1\r\nhost : a\r\n\r\n",
    "GET / HTTP/1.1\r\nhost: a\r\nx: a\r\n b\r\n\r\n",
    "GET / HTTP/1.1\r\nhost: a\0b\r\n\r\n",
    "GET /\0 HTTP/1.1\r\nhost: a\r\n\r\n",
    "GET /a b HTTP/1.1\r\nhost: a\r\n\r\n",
    `${crlf.repeat(2_000)}GET / HTTP/1.1\r\nhost: a\r\nconnection: close\r\n\r\n`,
    `${"X".repeat(5_000)} / HTTP/1.1\r\nhost: a\r\n\r\n`,
    "get / HTTP/1.1\r\nhost: a\r\n\r\n",
    "CONNECT a:443 HTTP/1.1\r\nhost: a:443\r\n\r\n",
    "OPTIONS * HTTP/1.1\r\nhost: a\r\nconnection: close\r\n\r\n",
    "GET http://other.example/healthz HTTP/1.1\r\nhost: a\r\nconnection: close\r\n\r\n",
    "GET ftp://other.example/ HTTP/1.1\r\nhost: a\r\nconnection: close\r\n\r\n",
    "GET healthz HTTP/1.1\r\nhost: a\r\nconnection: close\r\n\r\n",
    "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
    "\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03",
    "\0".repeat(5_000),
    "\xff\xfe".repeat(5_000),
    `GET / HTTP/1.1\r\nhost: ${"a.".repeat(4_000)}\r\nconnection: close\r\n\r\n`,
    "GET / HTTP/1.1\r\nhost: a/../b?c#d\r\nconnection: close\r\n\r\n",
  ].map((bytes) => attack(`a head ${JSON.stringify(bytes.slice(0, 40))}`, bytes, { then: "HALF_CLOSE" })),
  attack("1,500 fields", head("GET / HTTP/1.1", ...listOf(1_500, (at) => `x${String(at)}: 1`), last) + end),
  attack("one field 1,500 times", head("GET / HTTP/1.1", ...listOf(1_500, () => "accept: a/b"), last) + end),
  attack("a field of 15,000 letters", head("GET / HTTP/1.1", `cookie: ${"a=b;".repeat(3_750)}`, last) + end),
  attack("a field of 100,000 letters", head("GET / HTTP/1.1", `x: ${"a".repeat(100_000)}`, last) + end),
  attack("overlong signs in a field", head("GET / HTTP/1.1", "accept: \xc0\xaf\xed\xa0\x80", last) + end),
  attack("overlong signs in JSON", posted(["content-length: 8", last], '{"\xc0\xaf":1}')),
  attack("NUL in JSON", posted(["content-length: 10", last], '{"\0":"\0"}')),
  attack("a head of a byte at a time", Array.from(head("GET /healthz HTTP/1.1", last) + end), { answers: 1 }),
  attack("a body of a byte at a time", [posted(["content-length: 26", last], ""), ...Array.from(asked)], {
    answers: 1,
  }),
  attack("half a head", head("GET /healthz HTTP/1.1", "accept: te"), { then: "HALF_CLOSE" }),
  attack("half a head, cut", head("GET /healthz HTTP/1.1", "accept: te"), { then: "RESET" }),
  attack("half a body, cut", posted(["content-length: 26"], asked.slice(0, 9)), { then: "RESET" }),
  attack("an answer that nobody waits for", ask("/v1/plans?first=100"), { then: "RESET" }),
  attack("nothing", "", { then: "HALF_CLOSE" }),
  attack("200 questions at once", (head("GET /v1/plans?first=1 HTTP/1.1") + end).repeat(199) + ask("/healthz"), {
    answers: 200,
  }),
  attack(
    "50 bodies at once",
    posted(["content-length: 26"], asked).repeat(49) + posted(["content-length: 26", last], asked),
    { answers: 50 },
  ),
  attack("200 questions at once, cut", (head("GET /v1/plans?first=5 HTTP/1.1") + end).repeat(200), { then: "RESET" }),
];
