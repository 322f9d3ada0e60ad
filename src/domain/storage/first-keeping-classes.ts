import type { KeepingClass } from "../model/keeping.js";

const table: Readonly<Record<string, readonly [what: string, within: string | null, kind?: "ANALOGY" | "STABLE"]>> = {
  "chilled-ready-to-eat": ["ready-to-eat food that must stay cold", null],
  thawed: ["food that was frozen and has thawed in the refrigerator", null],

  leftovers: ["cooked food of any kind", "chilled-ready-to-eat"],
  "plant-leftovers": ["cooked food without meat, fish, poultry or egg", "leftovers"],
  "meat-leftovers": ["cooked food with meat, fish, poultry or egg", "leftovers"],
  "cooked-grain": ["boiled or soaked grain", "plant-leftovers"],
  "cooked-rice": ["boiled rice", "cooked-grain"],
  "cooked-quinoa": ["boiled quinoa", "cooked-grain"],
  "cooked-pasta": ["boiled pasta", "plant-leftovers"],
  "cooked-legume": ["boiled beans, peas or lentils, also out of a tin once opened", "plant-leftovers"],
  "cooked-vegetable": ["boiled, roasted, braised or fried vegetables", "plant-leftovers"],
  "cooked-poultry": ["cooked poultry dishes", "meat-leftovers"],
  "egg-dish": ["cooked dishes of egg: omelette, quiche", "meat-leftovers"],
  casserole: ["casseroles, bakes", "leftovers"],
  soup: ["soups and stews", "leftovers"],
  broth: ["broth", "leftovers"],
  "rehydrated-soy": ["textured soy protein after soaking", "plant-leftovers"],
  "vacuum-packed": ["cooked food packed without air at home", "leftovers"],

  "cooked-egg": ["eggs boiled hard, in the shell", "chilled-ready-to-eat"],
  "raw-egg-part": ["raw whites or yolks", "chilled-ready-to-eat"],
  "raw-egg-sauce": ["sauces with raw egg", "chilled-ready-to-eat"],
  "protein-salad": ["salads of egg, chicken, ham, fish", "chilled-ready-to-eat"],
  "pasta-salad": ["pasta salad", "chilled-ready-to-eat"],
  "potato-salad": ["potato salad", "chilled-ready-to-eat"],
  "dressed-raw-salad": ["dressed shredded raw vegetables: coleslaw", "chilled-ready-to-eat"],

  "dairy-sauce": ["sauces and dips of yoghurt, cream or milk", "leftovers", "ANALOGY"],
  "nut-cream": ["creams and milks of soaked nuts", "leftovers", "ANALOGY"],
  "soaked-nuts": ["nuts soaked in water", "leftovers", "ANALOGY"],
  "raw-herb-sauce": ["uncooked sauces of fresh herbs and oil: pesto", "herbs-in-oil"],
  "herbs-in-oil": ["fresh herbs in oil", "chilled-ready-to-eat"],
  "garlic-in-oil": ["raw garlic in oil", "chilled-ready-to-eat"],
  "vegetables-in-oil": ["vegetables under oil", "chilled-ready-to-eat"],
  "oil-dressing": ["oil and vinegar without fresh garlic or herbs", "salad-dressing"],
  "salad-dressing": ["salad dressings made at home", null, "STABLE"],
  "fresh-salsa": ["uncooked salsa", "chilled-ready-to-eat"],
  guacamole: ["guacamole", "chilled-ready-to-eat"],
  hummus: ["hummus made at home", "chilled-ready-to-eat"],

  "opened-hummus": ["bought hummus, once opened", "chilled-ready-to-eat"],
  "opened-pesto": ["pesto from a jar, once opened", "chilled-ready-to-eat"],
  "opened-tomato-sauce": ["tomato sauce from a jar, once opened", "chilled-ready-to-eat"],
  "opened-refried-beans": ["refried beans from a tin, once opened", "cooked-legume"],
  "opened-coconut-milk": ["coconut milk from a tin, once opened", "chilled-ready-to-eat"],
  "opened-tahini": ["tahini, once opened", null, "STABLE"],
  "opened-bagged-greens": ["salad leaves from a bag, once opened", "cut-leaves"],
  "lemon-juice": ["fresh lemon juice", null],

  "cut-leaves": ["leafy greens, cut or torn", "chilled-ready-to-eat"],
  "cut-fruit": ["fruit, cut", "chilled-ready-to-eat"],
  "cut-melon": ["melons, cut", "cut-fruit"],
  "cut-squash": ["raw squash, cut", "chilled-ready-to-eat"],
  sprouts: ["raw sprouted seeds and beans", "chilled-ready-to-eat"],
  tofu: ["tofu", "chilled-ready-to-eat"],

  "leafy-greens": ["whole leafy greens", null, "STABLE"],
  kale: ["whole kale", null, "STABLE"],
  broccoli: ["whole broccoli", null, "STABLE"],
  "fresh-basil": ["basil in a bunch", null, "STABLE"],
  "fresh-parsley": ["parsley in a bunch", null, "STABLE"],
  "raw-cashews": ["shelled raw cashews, dry", null, "STABLE"],
  "cashew-butter": ["cashew butter", null, "STABLE"],
  "dry-crumb": ["dry, salted crumbs and toppings of nuts, seeds or bread", null, "STABLE"],
};

/**
 * The classes of release 0.1.0, where they were no part of the rules. A set without classes of its own was written for these; no other
 * set is read with them, and none is added here.
 */
export const firstKeepingClasses: readonly KeepingClass[] = Object.entries(table).map(
  ([code, [what, within, kind]]): KeepingClass => ({
    code,
    what,
    within,
    byAnalogy: kind === "ANALOGY",
    perishable: kind !== "STABLE",
  }),
);
