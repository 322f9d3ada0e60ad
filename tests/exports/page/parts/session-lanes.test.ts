import { describe, expect, it } from "vitest";
import type { SessionTask } from "../../../../src/domain/prep-session/session.js";
import { wordsFor } from "../../../../src/exports/words/words-for.js";
import { lanesOf } from "../../../../src/exports/page/parts/session-lanes.js";

const task = (id: string, from: number, to: number, facts: Partial<SessionTask> = {}): SessionTask => ({
  id,
  kind: "STEP",
  of: { kind: "COMPONENT", slug: "stew", title: "Stew" },
  step: id,
  text: id,
  attention: "UNATTENDED",
  startMinute: from,
  endMinute: to,
  startsAt: null,
  endsAt: null,
  cooks: [],
  appliance: null,
  lanes: [],
  temperatureC: null,
  load: null,
  eveningBefore: false,
  ...facts,
});

const shown = (tasks: readonly SessionTask[]): readonly string[] =>
  lanesOf(tasks, wordsFor("en")).map(({ title, tasks: own }) => `${title}: ${own.map(({ id }) => id).join(" ")}`);

describe("the rows of a session's picture", () => {
  it("are hands, then each appliance, then what goes on by itself, side by side where it overlaps", () => {
    const tasks = [
      task("chop", 0, 10, { cooks: [1], attention: "HANDS_ON" }),
      task("fry", 10, 20, { cooks: [2], attention: "HANDS_ON", appliance: "hob-ring", lanes: [2] }),
      task("boil", 10, 40, { appliance: "hob-ring", lanes: [1] }),
      task("bake", 10, 60, { appliance: "oven-shelf", lanes: [1, 2] }),
      task("rest", 20, 40),
      task("cool", 30, 50),
      task("drain", 40, 45),
    ];
    expect(shown(tasks)).toEqual([
      "hands 1: chop",
      "hands 2: fry",
      "hob ring 1: boil",
      "hob ring 2: fry",
      "oven shelf 1: bake",
      "oven shelf 2: bake",
      "stands: rest drain",
      "stands: cool",
    ]);
  });

  it("have no number where there is one of a kind", () => {
    expect(
      shown([task("chop", 0, 5, { cooks: [1] }), task("blend", 5, 6, { appliance: "blender", lanes: [1] })]),
    ).toEqual(["hands: chop", "blender: blend"]);
  });
});
