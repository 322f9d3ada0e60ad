import type { Translation } from "../../message.js";
import type { warnings as english } from "../en/warnings.js";

export const warnings: Translation<typeof english> = {
  missing: {
    DENSITY: "el peso de un mililitro",
    GRAMS_OF_ONE_PIECE: "el peso de una pieza",
    MILLILITRES_OF_ONE_PIECE: "el volumen de una pieza",
    YIELD_OF_ONE_BATCH: "el rendimiento de una preparación",
    OWN_MEASURE: "el tamaño de una unidad",
    UNIT: "la unidad",
  },
  warning: {
    NOT_COMBINED: "Las cantidades de «{food}» quedan en líneas aparte, porque no se conoce {missing}.",
    PART_NOT_COUNTED:
      "No se puede calcular cuánto de «{food}» hace falta para «{part}», porque no se conoce {missing}. Compre suficiente.",
    EDIBLE_PORTION_UNKNOWN:
      "No se sabe cuánto de «{food}»{form, select, none {} other { ({form})}} se pierde al limpiarlo. La lista da la cantidad limpia; compre un poco más.",
    PRICE_UNKNOWN: "No se conoce el precio de «{food}», así que no está en ninguna suma.",
    PACK_NOT_COMPARABLE: "El paquete «{pack}» de «{food}» no se tuvo en cuenta, porque no se conoce {missing}.",
    ON_HAND_NOT_COMPARABLE: "Lo que tiene de «{item}» no se ha descontado, porque no se conoce {missing}.",
    ON_HAND_IN_OTHER_FORM:
      "Con lo que tiene de «{from}» saldrían unos {gives} de «{item}»; para todo lo necesario harían falta unos {wouldTake}. No se ha contado; indíquelo si debe contarse.",
    ON_HAND_NOT_NEEDED: "Lo que tiene de «{item}» no hace falta aquí.",
    ON_HAND_TOO_OLD: "Lo que tiene de «{item}» ha pasado su fecha ({date}), así que no se ha contado nada.",
    ON_HAND_NOT_IN_TIME:
      "Lo que tiene de «{item}» habrá pasado su fecha ({date}) {count, plural, one {en esta comida} many {en estas comidas} other {en estas comidas}} y no se ha contado ahí: {meals}.",
    DIET_NOT_MET:
      "{how, select, unknown {No se sabe si «{item}» es apto para la dieta «{diet}». Lea la etiqueta.} none {«{item}» no es apto para la dieta «{diet}», y no se ofrece ningún sustituto.} other {«{item}» no es apto para la dieta «{diet}», y no se ha elegido ninguno de los sustitutos que se ofrecen ({offered}).}}",
    ALLERGEN_NOT_AVOIDED:
      "{how, select, unknown {No se sabe si «{item}» lo contiene: {allergen}. Lea la etiqueta.} may {«{item}» puede contener trazas: {allergen}.} none {«{item}» contiene: {allergen}. No se ofrece ningún sustituto.} other {«{item}» contiene: {allergen}. No se ha elegido ninguno de los sustitutos que se ofrecen ({offered}).}}",
    DISLIKE_NOT_AVOIDED: "«{item}» sigue en {meals}: no se ofrece ningún sustituto que le convenga.",
    DISLIKE_LEFT_OUT: "«{item}» es opcional en {meals} y se ha dejado fuera. Puede que los pasos aún lo mencionen.",
    SWAP_NOT_OFFERED: "Ninguna línea ofrece «{to}» en lugar de «{from}», así que no se ha cambiado nada.",
    SWAP_NOT_CONVERTIBLE:
      "«{to}» no ha podido sustituir a «{from}», porque no se conoce {missing}. La línea queda como está.",
    MADE_IN_TWO_PLANS: "«{component}» se prepara en más de un plan ({plans}), por separado en cada uno.",
    LEFT_OVER: "Sobra algo de «{component}».",
    LEFT_OVER_FOR:
      "Sobra algo de «{component}»: suficiente para {count, plural, one {# ración} many {# raciones} other {# raciones}} más.",
    PART_TOO_OLD:
      "«{part}» de «{food}» se conserva {keeps} una vez cortada la pieza, así que «{meal}», el día {day}, no puede tomarlo de una cortada el día {cutOn}. Corte una nueva; la lista la cuenta.",
    BUY_LATER: "«{food}» se conserva {keeps}: compre la parte para {meals} más tarde, no antes del día {day}.",
    MEAL_BEFORE_SESSION:
      "«{meal}» se come a las {at} el día de cocina, que empieza a las {start}. Empiece antes, cómalo más tarde o prepare el día anterior lo que lleva, y tenga en cuenta cuánto se conserva.",
    KEEPING_UNKNOWN:
      "No hay tiempo de conservación para «{item}». Siga las recomendaciones locales de seguridad alimentaria.",
    KEEPING_CLASS_UNKNOWN:
      "«{item}» se conserva como «{keepsAs}», que no es ninguna clase conocida por las normas publicadas. Por eso se da el tiempo más corto de todas: sígalo, o siga las recomendaciones locales de seguridad alimentaria.",
    REGION_NOT_GIVEN: "No se indicó ninguna región, así que se tomó la norma más estricta: la de {used}.",
  },
  gathered: {
    NOT_COMBINED: "En líneas aparte, porque no se conoce {missing}: {things}.",
    EDIBLE_PORTION_UNKNOWN:
      "No se sabe cuánto se pierde al limpiar: {things}. La lista da la cantidad limpia; compre un poco más.",
    PACK_NOT_COMPARABLE: "Paquetes no tenidos en cuenta, porque no se conoce {missing}: {things}.",
    ON_HAND_NOT_COMPARABLE: "Ya en casa y no descontado, porque no se conoce {missing}: {things}.",
    ON_HAND_TOO_OLD: "Ya en casa, fuera de fecha y no contado: {things}.",
    ON_HAND_NOT_NEEDED: "Ya en casa y no necesario aquí: {things}.",
    DIET_NOT_MET:
      "{how, select, unknown {No se sabe si es apto para la dieta «{diet}»: {things}. Lea las etiquetas.} none {No apto para la dieta «{diet}», y no se ofrece ningún sustituto: {things}.} other {No apto para la dieta «{diet}», y no se ha elegido ningún sustituto de los que se ofrecen: {things}.}}",
    ALLERGEN_NOT_AVOIDED:
      "{how, select, unknown {No se sabe si lo contiene ({allergen}): {things}. Lea las etiquetas.} may {Puede contener trazas ({allergen}): {things}.} none {Contiene el alérgeno ({allergen}), y no se ofrece ningún sustituto: {things}.} other {Contiene el alérgeno ({allergen}), y no se ha elegido ningún sustituto de los que se ofrecen: {things}.}}",
    SWAP_NOT_OFFERED: "No cambiado, porque ninguna línea lo ofrece: {things}.",
    MADE_IN_TWO_PLANS: "Se prepara en más de un plan, por separado en cada uno: {things}.",
    LEFT_OVER: "Sobra: {things}.",
    enoughFor: "{component} (suficiente para {count, plural, one {# ración} many {# raciones} other {# raciones}} más)",
    BUY_LATER: "Compre más tarde, no antes del día {day}: {things}.",
    shareToBuy: "{food} para {meals} (se conserva {keeps})",
    KEEPING_UNKNOWN: "Sin tiempo de conservación: {things}. Siga las recomendaciones locales de seguridad alimentaria.",
  },
};
