import { connect } from "node:net";
import { afterAll, beforeAll, expect, it } from "vitest";
import { faultOf, type FuzzedAnswer } from "../../fuzz/request-sender.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded } from "../../kit/databases.js";

describeOnEmbedded("what is no request, or none that a route could have,", (open) => {
  let app: TestApp;
  let port: number;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    port = Number(new URL(await app.app.listen({ port: 0, host: "127.0.0.1" })).port);
  });
  afterAll(() => app.close());

  /** Everything that comes back until the service closes. */
  const send = (bytes: string): Promise<string> =>
    new Promise((settled, failed) => {
      const socket = connect(port, "127.0.0.1", () => socket.write(bytes));
      let text = "";
      socket.setEncoding("utf8").on("data", (piece: string) => void (text += piece));
      socket.on("error", failed).on("close", () => settled(text));
    });

  it.each([
    [400, "NONSENSE\r\n\r\n"],
    [400, "GET / HTTP/1.1\r\nhost: x\r\nbad header\r\n\r\n"],
    [400, "GET / HTTP/9.9\r\n\r\n"],
    [400, "POST /graphql HTTP/1.1\r\nhost: x\r\ncontent-length: 1\r\ncontent-length: 2\r\n\r\n"],
    [431, `GET / HTTP/1.1\r\nhost: x\r\nx: ${"x".repeat(20_000)}\r\n\r\n`],
    [414, `GET /v1/foods/${"x".repeat(300)} HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n`],
    [400, "GET /v1/foods/%zz HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n"],
  ])("is answered %i by a problem document (RFC 9457)", async (status, bytes) => {
    const answer = await send(bytes);
    expect(answer).toMatch(new RegExp(`^HTTP/1\\.1 ${String(status)} `));
    expect(answer.toLowerCase()).toContain("content-type: application/problem+json");
    const body = JSON.parse(answer.slice(answer.indexOf("\r\n\r\n"))) as { status: number; type: string };
    expect(body).toMatchObject({ status, type: expect.stringMatching(/^\/problems\//) as string });
    const page = await app.app.inject({ url: body.type });
    expect(page.statusCode).toBe(200);
  });
});

const answer = (status: number, text: string, type = "application/json"): FuzzedAnswer => ({
  kind: "ANSWER",
  status,
  type,
  text,
});
const asked = { method: "POST", path: "/graphql", headers: {}, body: Buffer.from("{}") };

it.each<[string, FuzzedAnswer]>([
  ["a fault", answer(500, "{}")],
  ["no answer", { kind: "NO_ANSWER" }],
  ["a connection that was cut", { kind: "CUT", why: "ECONNRESET" }],
  ["JSON that is none", answer(200, '{"data":')],
  ["neither data nor errors", answer(200, "{}")],
  ["a masked fault", answer(200, '{"errors":[{"extensions":{"code":"INTERNAL_SERVER_ERROR"}}]}')],
  ["a stack", answer(400, '{"errors":[{"message":"x at f (/srv/node_modules/x.js:1:1)"}]}')],
  ["an inside of the database", answer(400, '{"errors":[{"message":"SELECT id FROM plans"}]}')],
])("the judge of fuzzed requests finds %s", (_, given) => {
  expect(faultOf(asked, given)).not.toBeNull();
});

it("the judge of fuzzed requests finds a refusal that is no problem document, and nothing in right answers", () => {
  expect(faultOf({ ...asked, path: "/v1/plans" }, answer(404, "{}"))).not.toBeNull();
  expect(faultOf({ ...asked, path: "/v1/plans" }, answer(404, "{}", "application/problem+json"))).toBeNull();
  expect(faultOf(asked, answer(400, '{"errors":[]}'))).toBeNull();
});
