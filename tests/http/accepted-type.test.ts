import { describe, expect, it } from "vitest";
import { acceptedType } from "../../src/http/accepted-type.js";

describe("the media type that a client likes best", () => {
  // The example of RFC 9110, 12.5.1: text/x-dvi if nothing of higher weight can be had, text/plain last.
  const example = "text/plain; q=0.5, text/html, text/x-dvi; q=0.8, text/x-c";

  it.each([
    [example, ["text/plain", "text/x-dvi", "text/x-c", "text/html"], "text/html"],
    [example, ["text/plain", "text/x-dvi"], "text/x-dvi"],
    [example, ["application/json"], undefined],
    // The second example there: the most precise range counts for a type.
    ["text/*;q=0.3, text/html;q=0.7, */*;q=0.5", ["text/plain", "text/html", "image/jpeg"], "text/html"],
    ["text/*;q=0.3, text/html;q=0.7, */*;q=0.5", ["text/plain", "image/jpeg"], "image/jpeg"],
    ["application/json;q=0", ["application/json"], undefined],
    ["*/*", ["text/html", "application/json"], "text/html"],
    ["no type at all", ["text/html"], undefined],
  ])("of %s among %j is %s", (accept, types, best) => {
    expect(acceptedType({ accept }, types)).toBe(best);
  });

  it("is the first where it says nothing, or as good as nothing", () => {
    expect(acceptedType({}, ["text/html", "text/plain"])).toBe("text/html");
    expect(acceptedType({ accept: "" }, ["text/html", "text/plain"])).toBe("text/html");
  });
});
