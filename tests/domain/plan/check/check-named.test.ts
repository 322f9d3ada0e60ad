import { describe, expect, it } from "vitest";
import { checkNamed } from "../../../../src/domain/plan/check/check-named.js";
import {
  bundle,
  component,
  density,
  edible,
  food,
  line,
  made,
  meal,
  of,
  plan,
  route,
  step,
} from "../../../kit/builders.js";

const carrot = food("carrot", { densities: [density(0.54, "chopped")], edible: [edible(0.8, "peeled")] });

const withLine = (...given: Parameters<typeof line>) => {
  const dish = component("dish", "1 kg", [line(...given)]);
  return checkNamed(bundle(plan([meal("supper", [line("1 kg", made("dish"))])]), [dish], [carrot]));
};

describe("an appliance that the plan's kitchen does not name", () => {
  const written = (kitchen: Record<string, number>) => {
    const dish = component("dish", "1 kg", [line("1 kg", of("carrot"))], {
      steps: [step("blend", 5, { appliance: "blender" }), step("again", 5, { appliance: "blender" })],
      routes: [{ ...route("quick", []), steps: [step("heat", 5, { appliance: "microwave" })] }],
    });
    const supper = {
      ...meal("supper", [line("1 kg", made("dish"))]),
      steps: [step("warm", 5, { appliance: "hob-ring" })],
    };
    return checkNamed(bundle({ ...plan([supper]), kitchen: { cooks: 1, appliances: kitchen } }, [dish], [carrot])).map(
      (each) => [each.code, each.severity, each.path.join(" "), "appliance" in each ? each.appliance : null],
    );
  };

  it("is named once, at the first step that takes it up, in meals, components and routes", () => {
    expect(written({ sink: 1 })).toEqual([
      ["APPLIANCE_NOT_IN_KITCHEN", "LOOK", "meals supper steps warm", "hob-ring"],
      ["APPLIANCE_NOT_IN_KITCHEN", "LOOK", "components dish steps blend", "blender"],
      ["APPLIANCE_NOT_IN_KITCHEN", "LOOK", "components dish routes quick steps heat", "microwave"],
    ]);
  });

  it("is not, where the kitchen has it, or where nothing is said of the kitchen", () => {
    expect(written({})).toEqual([]);
    expect(written({ blender: 1, microwave: 1, "hob-ring": 2 })).toEqual([]);
  });
});

describe("a form that the food has no fact of", () => {
  it("stops publishing where a volume hangs on it", () => {
    expect(withLine("2 us-cup", of("carrot"), { form: "choped" })).toMatchObject([
      {
        code: "FORM_UNKNOWN",
        severity: "STOPS",
        path: ["components", "dish", "lines", "l1", "form"],
        food: "carrot",
        form: "choped",
        known: ["chopped", "peeled"],
      },
    ]);
  });

  it("is to be looked at where nothing hangs on it", () => {
    expect(withLine("500 g", of("carrot"), { form: "choped" })).toMatchObject([
      { code: "FORM_UNKNOWN", severity: "LOOK" },
    ]);
  });

  it.each(["chopped", "peeled"])("is none that the food has a fact of: %s", (form) => {
    expect(withLine("2 us-cup", of("carrot"), { form })).toEqual([]);
  });
});
