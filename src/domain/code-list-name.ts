/** The closed lists that fields take their codes from. */
export type CodeListName =
  | "aisle"
  | "allergen"
  | "appliance"
  | "caution"
  | "currency"
  | "diet"
  | "keeping-class"
  | "language"
  | "region"
  | "usda-number";
