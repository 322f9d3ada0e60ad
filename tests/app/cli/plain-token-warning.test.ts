import { describe, expect, it } from "vitest";
import { plainTokenWarning } from "../../../src/app/cli/plain-token-warning.js";
import { newTokenParts, tokenText } from "../../../src/services/access/token-text.js";
import { runCli } from "./run-cli.js";

const token = tokenText(newTokenParts());

describe("the command line, given a token", () => {
  it.each([
    "http://plans.example",
    "HTTP://plans.example:4000/",
    "http://192.0.2.1",
    "http://10.0.0.2:4000",
    "http://[2001:db8::1]/",
    "http://localhost.example",
  ])("warns where it goes over plain http: %s", (server) => {
    const warning = plainTokenWarning({ server, token });
    expect(warning).toContain("over plain http");
    expect(warning).not.toContain(token.slice(19));
  });

  it.each([
    "https://plans.example",
    "http://127.0.0.1:4000",
    "http://127.8.9.1",
    "http://localhost:4000",
    "http://[::1]:4000",
    null,
  ])("says nothing where it does not: %s", (server) => {
    expect(plainTokenWarning({ server, token })).toBeNull();
    expect(plainTokenWarning({ server: "http://plans.example", token: null })).toBeNull();
  });

  it("warns beside the answer, before anything is sent", async () => {
    const { err, out } = await runCli(["token", "list", "--json"], {
      PREPWRIGHT_SERVER: "http://no-such-name.invalid",
      PREPWRIGHT_TOKEN: token,
    });
    expect(err).toContain("Warning: the access token goes to no-such-name.invalid over plain http");
    expect(JSON.parse(out)).toMatchObject({ ok: false });
  });
});
