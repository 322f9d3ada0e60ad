import { diceFrom } from "./arbitrary/dice.js";

/** A household that is wrong in one way or in several, and the places of what is wrong, as `household.diets.1`. */
export interface WrongHousehold {
  readonly household: Readonly<Record<string, unknown>>;
  readonly at: readonly string[];
}

interface Fault {
  readonly part: Readonly<Record<string, unknown>>;
  readonly at: readonly string[];
}

/** Ways to be wrong that do not stand in one another's way: each is of its own part of a household. */
const ways: readonly ((of: ReturnType<typeof diceFrom>) => Fault)[] = [
  (of) => ({ part: { region: of.pick(["Atlantis", "QQQ", "G", "EUR"]) }, at: ["household.region"] }),
  (of) => ({ part: { currency: of.pick(["gold", "EURO", "€"]) }, at: ["household.currency"] }),
  (of) => ({ part: { locale: of.pick(["!", "x", "en_"]) }, at: ["household.locale"] }),
  (of) => ({ part: { diets: ["vegan", of.pick(["vegn", "glutenfree!", "", "\0"])] }, at: ["household.diets.1"] }),
  (of) => ({
    part: { avoidAllergens: ["milk", of.pick(["milkk", "nuts", "lactose", "", "\0"])] },
    at: ["household.avoidAllergens.1"],
  }),
  (of) => ({
    part: { dislikes: ["carrot", of.pick(["carot", "xyzzy", "", "\0"])] },
    at: ["household.dislikes.1"],
  }),
  (of) => ({
    part: {
      eaters: [
        { count: 2, portion: "1" },
        { count: of.pick([0, -3]), portion: of.pick(["1", "1/2"]) },
      ],
    },
    at: ["household.eaters.1.count"],
  }),
  (of) => ({ part: { eaters: [{ count: of.pick([1, 3, 90]), portion: "1" }] }, at: ["household.eaters"] }),
  (of) => ({
    part: { eaters: [{ count: 2, portion: of.pick(["half", "1-2", "1 g"]) }] },
    at: ["household.eaters.0.portion"],
  }),
  (of) => ({
    part: { swaps: [{ from: of.pick(["carot", "xyzzy", ""]), to: "carrot" }] },
    at: ["household.swaps.0.from"],
  }),
  (of) => ({
    part: {
      onHand: [
        { food: "carrot", amount: "1", unit: "kg" },
        { food: "carrot", amount: "1", unit: of.pick(["gramz", "furlong", "kgg"]) },
      ],
    },
    at: ["household.onHand.1.unit"],
  }),
  (of) => ({
    part: { onHand: [{ food: "carrot", amount: of.pick(["-1", "lots", "1/0", "1e9"]), unit: "g" }] },
    at: ["household.onHand.0.amount"],
  }),
  (of) => ({
    part: { onHand: [{ food: of.pick(["carot", "xyzzy"]), amount: "1", unit: "g" }] },
    at: ["household.onHand.0.food"],
  }),
  (of) => ({
    part: { onHand: [{ food: "carrot", amount: of.pick(["lots", "a bottle", "500", "1/0 bags"]) }] },
    at: ["household.onHand.0.amount"],
  }),
  () => ({ part: { onHand: [{ amount: "1", unit: "g" }] }, at: ["household.onHand.0"] }),
  (of) => ({ part: { kitchen: { cooks: of.pick([0, 21, -1]) } }, at: ["household.kitchen.cooks"] }),
  (of) => ({
    part: { kitchen: { appliances: [{ appliance: "oven-shelf", count: of.pick([-1, 101]) }] } },
    at: ["household.kitchen.appliances.0.count"],
  }),
  (of) => ({
    part: { kitchen: { appliances: [{ appliance: of.pick(["ovenshelf", "forge", ""]), count: 1 }] } },
    at: ["household.kitchen.appliances.0.appliance"],
  }),
  (of) => ({
    part: { sessionStart: { local: of.pick(["noon", "2026-02-30T10:00"]), zone: "Europe/Berlin" } },
    at: ["household.sessionStart.local"],
  }),
  (of) => ({
    part: { sessionStart: { local: "2026-03-01T10:00", zone: of.pick(["Nowhere", "Berlin", ""]) } },
    at: ["household.sessionStart.zone"],
  }),
];

/** So many of them, each way alone before any are wrong together. They are asked for two servings. */
export function wrongHouseholds(count: number): readonly WrongHousehold[] {
  const of = diceFrom(18);
  return Array.from({ length: count }, (_, at) => {
    const first = ways[at % ways.length];
    const faults = [first, ...(at < ways.length ? [] : ways.filter((way) => way !== first && of.chance(0.3)))].flatMap(
      (way) => way?.(of) ?? [],
    );
    // Of two that are wrong in the same part, the first is.
    const kept = faults.filter(
      ({ part }, index) =>
        !faults.slice(0, index).some((before) => Object.keys(before.part)[0] === Object.keys(part)[0]),
    );
    return {
      household: Object.assign({}, ...kept.map(({ part }) => part)) as WrongHousehold["household"],
      at: kept.flatMap((fault) => fault.at).toSorted(),
    };
  });
}
