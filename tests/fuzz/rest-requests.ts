import type { Dice } from "../kit/arbitrary/dice.js";
import { endpoints } from "../../src/rest/endpoints.js";
import type { FuzzedRequest } from "./fuzzed-request.js";
import type { Known } from "./graphql-requests.js";
import { hostileText, hostileValue } from "./hostile.js";

const escapes = [
  "%",
  "%zz",
  "%00",
  "%0d%0a",
  "%c0%ae",
  "%ff",
  "%2f",
  "%2e%2e",
  "//",
  "/./",
  "/../",
  ";",
  "?",
  "#",
  "\\",
  "~",
  "+",
];
const endings = ["", "", "", ".json", ".md", ".html", ".csv", ".ics", ".txt", ".mail", ".x", ".", ".json.json"];

/** Addresses of pages and of what else the service answers at. */
const others = [
  "/",
  "/p",
  "/p/x",
  "/healthz",
  "/readyz",
  "/schemas",
  "/openapi.json",
  "/schema.graphql",
  "/favicon.ico",
  "/robots.txt",
  "/assets/x",
  "/embed.js",
  "/metrics",
  "/graphql/explorer/x",
];

/** Half of a surrogate pair becomes the mark for what is no character. */
const wellFormed = (text: string): string => Buffer.from(text).toString("utf8");

const encoded = (text: string, dice: Dice): string => {
  if (dice.chance(0.2)) return dice.pick(escapes);
  return encodeURIComponent(wellFormed(text)) + (dice.chance(0.05) ? dice.pick(escapes) : "");
};

function valueOf(name: string, known: Known, dice: Dice): string {
  if (dice.chance(0.3)) return hostileText(dice);
  if (name === "publisher") return dice.pick(known.publishers);
  if (/^(slug|plan)$/.test(name)) return dice.pick([...known.plans, ...known.foods]);
  if (name === "food") return dice.pick(known.foods);
  if (/servings|hours|first|last|revision/.test(name))
    return dice.pick(["1", "2", "4", "7", "100", "0", "-1", "1.5", "1e9", "1/2"]);
  if (/date|day|start|seen/.test(name)) return dice.pick(["2026-03-01", "2026-03-01T09:00", "tomorrow"]);
  return dice.pick(["yes", "no", "en", "XA", "XTS", "METRIC", "milk", "1", "500 g flour", "oven=1"]);
}

/** A request to an address of the REST interface or of the pages, with parts of it replaced. */
export function restRequest(known: Known, dice: Dice): FuzzedRequest {
  const { path, parameters, method, body } = dice.pick(endpoints);
  const place = dice.chance(0.12)
    ? dice.pick(others) + (dice.chance(0.3) ? `/${encoded(hostileText(dice), dice)}` : "")
    : path.replaceAll(/\{(\w+)\}/g, (_, name: string) => encoded(valueOf(name, known, dice), dice));
  const named = parameters.filter((parameter) => parameter.in === "query");
  const query = Array.from({ length: dice.roll(6) }, () => {
    const name = named.length > 0 && dice.chance(0.85) ? dice.pick(named).name : hostileText(dice);
    return `${encoded(name, dice)}=${encoded(valueOf(name, known, dice), dice)}`;
  });
  const verb = dice.chance(0.8) ? method : dice.pick(["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"]);
  const sends = verb === "POST" || verb === "PUT" || verb === "PATCH" || dice.chance(0.03);
  const json =
    body !== undefined && dice.chance(0.7)
      ? {
          plans: [
            {
              publisher: dice.pick(known.publishers),
              slug: dice.pick(known.plans),
              servings: 2,
              ...(dice.chance(0.5) ? { x: hostileValue(dice) } : {}),
            },
          ],
          ...(dice.chance(0.5) ? { household: hostileValue(dice) } : {}),
        }
      : hostileValue(dice);
  const text = JSON.stringify(json) ?? "";
  return {
    method: verb,
    path: place + dice.pick(endings) + (query.length > 0 ? `?${query.join("&")}` : ""),
    headers: sends
      ? {
          "content-type": dice.pick([
            "application/json",
            "application/json",
            "text/csv",
            "multipart/form-data; boundary=x",
            "x",
          ]),
        }
      : {},
    body: sends ? Buffer.from(text) : null,
  };
}

/** Headers that clients, proxies and people who mean harm send. */
export function hostileHeaders(token: string | null, dice: Dice): Readonly<Record<string, string>> {
  const headers: Record<string, string> = {};
  const set = (share: number, name: string, values: readonly string[]): void => {
    if (dice.chance(share)) headers[name] = dice.pick(values);
  };
  set(0.4, "accept", [
    "*/*",
    "application/json",
    "text/html",
    "text/markdown;q=0.5, */*;q=0.1",
    "application/graphql-response+json",
    "x",
    "a/b;q=9",
    "*/*;q=0",
    ",,,",
    "text/*;;;",
  ]);
  set(0.1, "accept-language", ["en", "de-AT,de;q=0.9", "*", "x".repeat(500)]);
  set(0.1, "accept-encoding", ["gzip", "br", "identity;q=0", "*;q=0"]);
  set(0.15, "if-none-match", ["*", '"x"', 'W/"x"', "x", '"'.repeat(200)]);
  set(0.05, "if-match", ["*", '"x"']);
  set(0.05, "range", ["bytes=0-1", "bytes=9-1", "x"]);
  set(0.1, "x-request-id", ["abc", "x".repeat(5000), "a b", "'\"<>"]);
  set(0.05, "traceparent", ["00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01", "00-x", "ff-"]);
  set(0.1, "x-forwarded-for", ["10.0.0.1", "x", "::1, 127.0.0.1"]);
  set(0.05, "x-forwarded-proto", ["https", "javascript"]);
  set(0.05, "x-forwarded-host", ["evil.example", "x y"]);
  set(0.1, "origin", ["https://blog.example", "null", "x"]);
  set(0.05, "access-control-request-method", ["POST", "x"]);
  set(0.05, "host", ["evil.example", "", "a b", "[::1]:99999"]);
  set(0.05, "content-type", [
    "application/json; charset=utf-7",
    "application/json;charset=UTF-8",
    "text/plain",
    "application/x-www-form-urlencoded",
    "",
  ]);
  set(0.03, "content-encoding", ["gzip", "x"]);
  set(0.03, "expect", ["100-continue"]);
  set(0.03, "te", ["trailers"]);
  set(0.2, "authorization", [
    "Bearer ",
    "Bearer x",
    "Basic eDp5",
    "Bearer pw_live_aaaaaaaa_x",
    "x".repeat(4000),
    ...(token === null ? [] : Array.from({ length: 12 }, () => `Bearer ${token}`)),
  ]);
  return headers;
}
