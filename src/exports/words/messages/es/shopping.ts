import type { Translation } from "../../message.js";
import type { shopping as english } from "../en/shopping.js";

export const shopping: Translation<typeof english> = {
  shoppingList: "Lista de la compra",
  shoppingListFor: "Lista de la compra para {plans}",
  packOf: "{count} × {pack} ({content})",
  buy: "Comprar:",
  inTheHouse: "Ya en casa",
  uses: "Para",
  partsOver: "Sobra: {parts}",
  cost: "Coste",
  atTill: "En caja: {price}",
  perServing: "{price} por persona para {servings}",
  withoutPrice: "No incluido en el total: {foods}.",
  noPrice: "No se conoce ningún precio.",
  csv: {
    aisle: "sección",
    food: "alimento",
    need: "necesario",
    unit: "unidad",
    onHand: "en casa",
    toBuy: "por comprar",
    packs: "paquetes",
    price: "precio",
    currency: "moneda",
    uses: "para",
    optional: "opcional",
  },
};
