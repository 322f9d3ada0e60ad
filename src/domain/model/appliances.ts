/** The closed list of what a step may take up in a kitchen besides hands. Each is counted: two oven shelves, four rings. */
export const appliances = [
  "hob-ring",
  "oven",
  "oven-shelf",
  "grill",
  "griddle",
  "microwave",
  "kettle",
  "toaster",
  "steamer",
  "slow-cooker",
  "pressure-cooker",
  "rice-cooker",
  "deep-fryer",
  "air-fryer",
  "water-bath",
  "barbecue",
  "smoker",
  "waffle-iron",
  "bread-machine",
  "dehydrator",
  "blender",
  "hand-blender",
  "food-processor",
  "stand-mixer",
  "hand-mixer",
  "grinder",
  "mincer",
  "juicer",
  "pasta-machine",
  "ice-cream-machine",
  "vacuum-sealer",
  "blast-chiller",
  "sink",
  "stock-pot",
  "baking-tray",
] as const;

const ovens: readonly string[] = ["oven", "oven-shelf"];

/** Whether it has to be hot before something goes in. */
export const isOven = (appliance: string | null): boolean => appliance !== null && ovens.includes(appliance);

/** An appliance by all its names: who has no oven has no shelf in it. */
export const namesOfAppliance = (code: string): readonly string[] => (isOven(code) ? ovens : [code]);
