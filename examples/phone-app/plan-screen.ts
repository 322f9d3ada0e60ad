// What a phone app shows of a plan: a model for its views, kept for the kitchen without a network. It uses fetch and no DOM, as React Native has it.
//   const screen = planScreen(connect({ address }), AsyncStorage);
//   show(await screen.open({ publisher, slug }, { servings: 4, locale: "de" }));
import type { Household, Plan, PlanName, Prepwright } from "prepwright-client";

/** What apps keep texts in; AsyncStorage of React Native fits. */
export interface Store {
  getItem(key: string): Promise<string | null>;
  setItem(key: string, value: string): Promise<unknown>;
}

export interface PlanView {
  readonly title: string;
  readonly servings: number;
  readonly toBuy: readonly { readonly key: string; readonly text: string }[];
  readonly toDo: readonly { readonly key: string; readonly at: string; readonly text: string }[];
  /** Allergens that are in it or may be, and those of which nobody knows: unknown is never "free from". */
  readonly allergens: readonly { readonly name: string; readonly presence: string }[];
  readonly warnings: readonly string[];
}

export type Screen =
  | { readonly kind: "PLAN"; readonly plan: PlanView; readonly isOffline: boolean }
  /** The household is wrong: one sentence for each field of the form. */
  | { readonly kind: "WRONG"; readonly fields: readonly { readonly where: string; readonly text: string }[] }
  | { readonly kind: "GONE"; readonly text: string }
  | { readonly kind: "TRY_LATER"; readonly seconds: number };

const clock = (minutes: number): string =>
  `${minutes < 0 ? "-" : ""}${Math.floor(Math.abs(minutes) / 60)}:${String(Math.round(Math.abs(minutes)) % 60).padStart(2, "0")}`;

function viewOf({ title, servings, shoppingList, session, allergens, warnings }: Plan): PlanView {
  return {
    title,
    servings,
    toBuy: shoppingList.lines.map(({ food, need, buy }) => ({
      key: food.slug,
      text: [food.name, need?.text, ...buy.map(({ count, pack }) => `${count} × ${pack.name}`)]
        .filter((part) => part !== undefined)
        .join(", "),
    })),
    toDo: (session?.tasks ?? []).map(({ code, startMinute, text }) => ({ key: code, at: clock(startMinute), text })),
    allergens: allergens.findings
      .filter(({ presence }) => presence !== "DOES_NOT_CONTAIN")
      .map(({ name, presence }) => ({ name, presence })),
    warnings: warnings.map(({ text }) => text),
  };
}

export function planScreen(prepwright: Prepwright, store: Store) {
  const keyOf = (name: PlanName, household: Household): string =>
    `plan ${name.publisher}/${name.slug} ${JSON.stringify(household)}`;

  return {
    async open(name: PlanName, household: Household): Promise<Screen> {
      const key = keyOf(name, household);
      const answer = await prepwright.plan(name, household).catch(() => null);
      if (answer === null) {
        const kept = await store.getItem(key);
        return kept === null
          ? { kind: "TRY_LATER", seconds: 30 }
          : { kind: "PLAN", plan: JSON.parse(kept) as PlanView, isOffline: true };
      }
      if (answer.ok) {
        const plan = viewOf(answer.data);
        await store.setItem(key, JSON.stringify(plan));
        return { kind: "PLAN", plan, isOffline: false };
      }
      const { problem, retryAfter } = answer;
      if (problem.status === 400 || problem.status === 422)
        return { kind: "WRONG", fields: problem.problems.map(({ where, text }) => ({ where, text })) };
      if (problem.status === 404 || problem.status === 410) return { kind: "GONE", text: problem.detail };
      return { kind: "TRY_LATER", seconds: retryAfter ?? 30 };
    },
  };
}
