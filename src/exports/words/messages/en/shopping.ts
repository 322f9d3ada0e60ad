import { message } from "../../message.js";

/** The shopping list and its cost. */
export const shopping = {
  shoppingList: "Shopping list",
  shoppingListFor: message("Shopping list for {plans}", { plans: "Roots and barley, Bean night" }),
  packOf: message("{count} × {pack} of {content}", { count: 2, pack: "bag", content: "400 g" }),
  /** Names of packs in English; what else a pack is called stays as it is written. */
  packNames: {
    piece: "piece",
    bag: "bag",
    bunch: "bunch",
    jar: "jar",
    bottle: "bottle",
    net: "net",
    head: "head",
    tray: "tray",
    tin: "tin",
    pot: "pot",
    loaf: "loaf",
    box: "box",
    block: "block",
    tube: "tube",
  },
  buy: "Buy",
  /** Title over what need not be bought. */
  inTheHouse: "In the house already",
  uses: "For",
  partsOver: message("Left of it: {parts}", { parts: "juice 90 ml" }),
  cost: "Cost",
  atTill: message("At the till: {price}", { price: "24.75 XTS" }),
  perServing: message("{price} for each of {servings}", { price: "2.10 XTS", servings: 7 }),
  withoutPrice: message("Not in the total: {foods}.", { foods: "salt, water" }),
  noPrice: "No price is known.",
  csv: {
    aisle: "aisle",
    food: "food",
    need: "need",
    unit: "unit",
    onHand: "on hand",
    toBuy: "to buy",
    packs: "packs",
    price: "price",
    currency: "currency",
    uses: "uses",
    optional: "optional",
  },
};
