import type { Translation } from "../../message.js";
import type { shopping as english } from "../en/shopping.js";

export const shopping: Translation<typeof english> = {
  shoppingList: "Lista zakupów",
  shoppingListFor: "Lista zakupów: {plans}",
  packOf: "{count} × {pack} ({content})",
  buy: "Kup:",
  inTheHouse: "Już w domu",
  uses: "Do",
  partsOver: "Zostaje z tego: {parts}",
  cost: "Koszt",
  atTill: "Przy kasie: {price}",
  perServing: "{price} na osobę przy {servings}",
  withoutPrice: "Nie wliczono: {foods}.",
  noPrice: "Ceny nie są znane.",
  csv: {
    aisle: "dział",
    food: "produkt",
    need: "potrzeba",
    unit: "jednostka",
    onHand: "w domu",
    toBuy: "do kupienia",
    packs: "opakowania",
    price: "cena",
    currency: "waluta",
    uses: "do czego",
    optional: "opcjonalne",
  },
};
