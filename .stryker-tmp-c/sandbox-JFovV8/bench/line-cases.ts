/** A line as writers write it, and the amount a reader understands; null where it gives none. */
// @ts-nocheck

export interface LineCase {
  readonly line: string;
  readonly amount: readonly [low: string, high: string, unit: string] | null;
}

const one = (line: string, value: string, unit: string): LineCase => ({ line, amount: [value, value, unit] });

/** Invented lines in the shapes that newsletters use, in the measures of a US kitchen. */
export const lineCases: readonly LineCase[] = [
  one("2 cups rolled oats", "2", "us-cup"),
  one("250 g red lentils, rinsed", "250", "g"),
  one("1 1/2 cups cooked barley", "3/2", "us-cup"),
  one("1½ cups cooked barley", "3/2", "us-cup"),
  one("1 ½ cups cooked barley", "3/2", "us-cup"),
  one("½ tsp ground turmeric", "1/2", "us-tsp"),
  one("1⁄2 tsp ground turmeric", "1/2", "us-tsp"),
  one("3/4 tsp fine salt", "3/4", "us-tsp"),
  one("4 carrots, peeled", "4", "piece"),
  one("half a cup of walnuts", "1/2", "us-cup"),
  one("2 tablespoons olive oil, plus more for serving", "2", "us-tbsp"),
  one("1 heaping tablespoon of flaxseed", "1", "us-tbsp"),
  one("1.5 kg potatoes", "3/2", "kg"),
  one("☐ 6 ounces dried beans", "6", "oz"),
  one("1 lb kale (about 2 bunches)", "1", "lb"),
  one("350g/12oz leeks, finely sliced", "350", "g"),
  one("300 ml milk", "300", "ml"),
  { line: "1-2 tbsp cider vinegar", amount: ["1", "2", "us-tbsp"] },
  { line: "½–1 tsp smoked paprika, or to taste", amount: ["1/2", "1", "us-tsp"] },
  { line: "3 to 3 ½ pounds squash", amount: ["3", "7/2", "lb"] },
  { line: "2 to 3 cups water", amount: ["2", "3", "us-cup"] },
  { line: "salt, to taste", amount: null },
  { line: "a pinch of nutmeg", amount: null },
  { line: "black pepper", amount: null },
];
