// @ts-nocheck
import { describe, expect, it } from "vitest";
import { dateScalar, dateTimeScalar, quantityScalar } from "../../src/graphql/resolvers/scalars.js";

describe("DateTime", () => {
  it("reads an instant of any offset and writes it in UTC", () => {
    expect(dateTimeScalar.parseValue("2026-03-01T10:30:00+01:00")).toBe("2026-03-01T09:30:00.000Z");
    expect(dateTimeScalar.serialize(new Date(0))).toBe("1970-01-01T00:00:00.000Z");
  });

  it.each(["2026-03-01", "2026-02-30T00:00:00Z", "2026-03-01T25:00:00Z", "yesterday", "2026-03-01T10:00", 0, null])(
    "refuses %j",
    (value) => expect(() => dateTimeScalar.parseValue(value)).toThrow("Expected an instant"),
  );
});

describe("Date", () => {
  it("keeps a day as it is", () => {
    expect(dateScalar.parseValue("2024-02-29")).toBe("2024-02-29");
  });

  it.each(["2026-02-29", "2026-13-01", "2026-1-1", "", 20260101])("refuses %j", (value) =>
    expect(() => dateScalar.parseValue(value)).toThrow("Expected a day"),
  );
});

describe("Quantity", () => {
  it("takes numbers and texts, and keeps a third a third", () => {
    expect(quantityScalar.parseValue("1/3")).toBe("1/3");
    expect(quantityScalar.parseValue(500)).toBe("500");
    expect(quantityScalar.parseValue(1 / 3)).toBe("0.333333");
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, true, null, {}, "9".repeat(41)])("refuses %j", (value) =>
    expect(() => quantityScalar.parseValue(value)).toThrow("Expected an amount"),
  );
});
