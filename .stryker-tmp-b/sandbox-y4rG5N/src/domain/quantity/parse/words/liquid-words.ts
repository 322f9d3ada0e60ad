/** Last words of foods that are poured: their ounces may be fluid, their pints are liquid pints. English only. */
// @ts-nocheck

const LIQUIDS: ReadonlySet<string> = new Set(
  (
    "milk buttermilk cream creme half-and-half water stock broth juice wine beer cider vinegar oil coffee tea cola soda " +
    "yogurt yoghurt kefir lemonade rum brandy vodka bouillon passata"
  ).split(" "),
);

/** Foods the US sells by the dry pint: small whole produce. */
const DRY: ReadonlySet<string> = new Set(
  "tomato tomatoes berry berries cherry cherries fig figs grape grapes mushroom mushrooms okra potatoes plums apricots peas beans sprouts".split(
    " ",
  ),
);

/** "liquid", "dry", or null where the words do not tell. */
export const pourForm = (food: string): "liquid" | "dry" | null => {
  const last = food.slice(food.lastIndexOf(" ") + 1).toLowerCase();
  if (LIQUIDS.has(last)) return "liquid";
  return DRY.has(last) || /berr(?:y|ies)$/.test(last) ? "dry" : null;
};
