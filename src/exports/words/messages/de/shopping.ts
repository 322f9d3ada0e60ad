import type { Translation } from "../../message.js";
import type { shopping as english } from "../en/shopping.js";

export const shopping: Translation<typeof english> = {
  shoppingList: "Einkaufsliste",
  shoppingListFor: "Einkaufsliste für {plans}",
  packOf: "{count} × {pack} ({content})",
  buy: "Kaufen:",
  inTheHouse: "Schon im Haus",
  uses: "Für",
  partsOver: "Davon bleibt übrig: {parts}",
  cost: "Kosten",
  atTill: "An der Kasse: {price}",
  perServing: "{price} je Person bei {servings}",
  withoutPrice: "Nicht in der Summe enthalten: {foods}.",
  noPrice: "Es ist kein Preis bekannt.",
  csv: {
    aisle: "Abteilung",
    food: "Lebensmittel",
    need: "Bedarf",
    unit: "Einheit",
    onHand: "vorrätig",
    toBuy: "zu kaufen",
    packs: "Packungen",
    price: "Preis",
    currency: "Währung",
    uses: "für",
    optional: "nach Belieben",
  },
};
