import { describe, expect, it } from "vitest";
import { lineSchema, stepSchema } from "../../../src/imports/documents/schemas/line-schema.js";

const line = (facts: object) => lineSchema.safeParse({ food: "salt", amount: "8 g", ...facts });

describe("what of a line is eaten", () => {
  it.each([
    ["40 %", "2/5"],
    ["40%", "2/5"],
    ["12.5 %", "1/8"],
    ["0 %", "0"],
    ["100 %", "1"],
  ])("is a share written in percent: %s", (written, share) => {
    expect(line({ eaten: written }).data?.eaten).toBe(share);
  });

  it.each(["40", "0.4", "140 %", "-5 %", "half", "", "4e1 %", 40])("is nothing else: %s", (written) => {
    expect(line({ eaten: written }).success).toBe(false);
  });

  it("is either a share or thrown away, and a misspelt word is refused with the right ones", () => {
    expect(line({ "thrown-away": "yes" }).success).toBe(true);
    expect(line({ "thrown-away": "yes", eaten: "40 %" }).error?.issues[0]).toMatchObject({
      params: { expected: "eaten or thrown-away, one of the two", got: "both" },
    });
    expect(JSON.stringify(line({ "thrown-away": "si" }).error?.issues)).toContain("yes | no");
  });
});

describe("whether a step drains", () => {
  it("is said or not said", () => {
    const drains = (facts: object) => stepSchema.safeParse({ do: "Drain.", time: "3 min", ...facts });
    expect(drains({}).data?.drains).toBeNull();
    expect(drains({ drains: "no" }).data?.drains).toBe(false);
    expect(drains({ drains: "yes" }).data?.drains).toBe(true);
    expect(drains({ drains: "sometimes" }).success).toBe(false);
  });
});
