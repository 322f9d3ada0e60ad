import type { Translation } from "../../message.js";
import type { mistakes as english } from "../en/mistakes.js";

export const mistakes: Translation<typeof english> = {
  mistake: {
    BAD_AMOUNT: "«{written}» no se puede leer como una cantidad. Escriba un número y una unidad, por ejemplo 500 g.",
    UNKNOWN_UNIT: "No existe la unidad «{unit}».{nearest, select, none {} other { Parecidas: {nearest}.}}",
    AMBIGUOUS_UNIT: "«{unit}» tiene aquí más de un tamaño. Escriba uno de estos: {candidates}.",
    UNKNOWN_FOOD:
      "Aquí no existe el alimento «{food}».{nearest, select, none { Compruebe cómo está escrito.} other { ¿Quería decir {nearest}?}}",
    AMBIGUOUS_FOOD: "«{food}» puede ser aquí más de un alimento. Escriba uno de estos: {candidates}.",
    UNKNOWN_CODE: "«{written}» no se conoce aquí.{nearest, select, none {} other { ¿Quería decir {nearest}?}}",
    UNKNOWN_COMPONENT: "En este plan no se prepara «{component}».",
    UNKNOWN_ROUTE: "No hay otra vía «{route}» para esto.{known, select, none {} other { Hay: {known}.}}",
    OUT_OF_RANGE: "{value} está fuera del intervalo. Indique un número de {min} a {max}.",
    SERVINGS_OUT_OF_RANGE: "No se puede calcular para {value} raciones. Indique un número entero de {min} a {max}.",
    NOT_READ: "«{value}» no se puede leer aquí.",
    TOO_LARGE: "{size} son demasiados. El límite es {limit}.",
    DUPLICATE: "«{value}» aparece dos veces. Deje solo uno.",
    NOT_CONVERTIBLE: "La cantidad de «{item}» no se puede convertir: no se conoce {missing}. Escríbala en {to}.",
    MORE_PROBLEMS:
      "{count, plural, one {# error más no se muestra.} many {# errores más no se muestran.} other {# errores más no se muestran.}}",
  },
};
