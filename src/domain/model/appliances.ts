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

/** Names of one device: who has no oven has no shelf in it. */
const oneDevice: readonly (readonly string[])[] = [["oven", "oven-shelf"]];

/** An appliance by all its names. */
export const namesOfAppliance = (code: string): readonly string[] =>
  oneDevice.find((names) => names.includes(code)) ?? [code];
