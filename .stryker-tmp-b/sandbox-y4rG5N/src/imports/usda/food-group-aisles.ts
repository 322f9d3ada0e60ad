/** Where a shopper looks for the food groups of the table. Groups that are not listed go to "other". */
// @ts-nocheck

const aisles: Readonly<Record<string, string>> = {
  "Dairy and Egg Products": "dairy-and-eggs",
  "Spices and Herbs": "spices",
  "Fats and Oils": "oils-and-vinegars",
  "Poultry Products": "meat-and-fish",
  "Pork Products": "meat-and-fish",
  "Beef Products": "meat-and-fish",
  "Lamb, Veal, and Game Products": "meat-and-fish",
  "Finfish and Shellfish Products": "meat-and-fish",
  "Vegetables and Vegetable Products": "vegetables",
  "Fruits and Fruit Juices": "fruit",
  "Nut and Seed Products": "nuts-and-seeds",
  "Legumes and Legume Products": "dry-goods",
  "Cereal Grains and Pasta": "dry-goods",
  "Baked Products": "bread",
  "Soups, Sauces, and Gravies": "tins",
  Sweets: "baking",
  Beverages: "drinks",
};

export const aisleOf = (foodGroup: string): string => aisles[foodGroup] ?? "other";
