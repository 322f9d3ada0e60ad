import { describe, expect, it } from "vitest";
import { groupCautions } from "../../../src/app/cli/group-cautions.js";
import type { ShownFinding } from "../../../src/app/cli/outcome.js";

const due = (slug: string, about: string, caution: string): ShownFinding => ({
  severity: "LOOK",
  code: "CAUTION_NOT_NAMED",
  message: "one of them",
  about,
  caution,
  path: ["components", slug],
  file: "plan.yaml",
  line: 2,
  column: 1,
});

describe("cautions that are due", () => {
  it("are one line a component, and what stands between them stays", () => {
    const late: ShownFinding = { ...due("rice", "Pot of rice", ""), code: "KEPT_TOO_LONG", caution: null };
    const told = groupCautions([
      due("rice", "Pot of rice", "cool-quickly"),
      due("eggs", "Boiled eggs", "cold"),
      late,
      due("rice", "Pot of rice", "reheat-once"),
    ]);
    expect(told.map(({ message }) => message)).toEqual([
      'Readers are shown 2 cautions for "Pot of rice": cool-quickly, reheat-once. Say so in your text too, or name them under `cautions`.',
      'Readers are shown the caution "cold" for "Boiled eggs". Say so in your text too, or name it under `cautions`.',
      "one of them",
    ]);
    expect(told[0]).toMatchObject({ file: "plan.yaml", line: 2, column: 1 });
  });
});
