import { describe, expect, it } from "vitest";
import { readPageRequest } from "../../../src/services/answers/page-request.js";

describe("a page request", () => {
  it("is the first 20 if nothing is said", () => {
    expect(readPageRequest({})).toEqual({ ok: true, value: { first: 20, after: null, last: null, before: null } });
  });

  it("goes backwards with last alone", () => {
    expect(readPageRequest({ last: 5, before: "c" })).toEqual({
      ok: true,
      value: { first: null, after: null, last: 5, before: "c" },
    });
  });

  it.each([1, 100])("takes the size %d", (first) => expect(readPageRequest({ first }).ok).toBe(true));

  it.each([0, -1, 101])("refuses the size %d both ways", (size) => {
    expect(readPageRequest({ first: size })).toMatchObject({ ok: false, problems: [{ path: ["first"] }] });
    expect(readPageRequest({ last: size })).toMatchObject({ ok: false, problems: [{ path: ["last"] }] });
  });

  it("refuses both ways at once", () => {
    expect(readPageRequest({ first: 1, last: 1 })).toMatchObject({ ok: false, problems: [{ code: "BAD_SHAPE" }] });
  });
});
