import type { Translation } from "../../message.js";
import type { shopping as english } from "../en/shopping.js";

export const shopping: Translation<typeof english> = {
  shoppingList: "Liste de courses",
  shoppingListFor: "Liste de courses pour {plans}",
  packOf: "{count} × {pack} ({content})",
  buy: "Acheter :",
  inTheHouse: "Déjà à la maison",
  uses: "Pour",
  partsOver: "Il en reste : {parts}",
  cost: "Coût",
  atTill: "En caisse : {price}",
  perServing: "{price} par personne pour {servings}",
  withoutPrice: "Non compris dans le total : {foods}.",
  noPrice: "Aucun prix n’est connu.",
  csv: {
    aisle: "rayon",
    food: "aliment",
    need: "besoin",
    unit: "unité",
    onHand: "déjà là",
    toBuy: "à acheter",
    packs: "paquets",
    price: "prix",
    currency: "devise",
    uses: "pour",
    optional: "facultatif",
  },
};
