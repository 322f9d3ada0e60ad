import type { Translation } from "../../message.js";
import type { general as english } from "../en/general.js";

export const general: Translation<typeof english> = {
  forServings: "Para {count, plural, one {# ración} many {# raciones} other {# raciones}}",
  servings: "{count, plural, one {# ración} many {# raciones} other {# raciones}}",
  days: "{count, plural, one {# día} many {# días} other {# días}}",
  hours: "{count, plural, one {# hora} many {# horas} other {# horas}}",
  foods: "{count, plural, one {# alimento} many {# alimentos} other {# alimentos}}",
  roughly: "aprox. {amount}",
  dayOfPlan:
    "{day, plural, =0 {Día de cocina} one {# día después del día de cocina} many {# días después del día de cocina} other {# días después del día de cocina}}",
  by: "De",
  revision: "Versión {number}, publicada el {date}",
  withdrawn: "Esta versión fue retirada por su editor.",
  changed: "Qué ha cambiado",
  thisRevision: "Esta versión",
  newestRevision: "La versión más reciente",
  calendar: "Como calendario",
  listAddress: "Solo la lista de la compra",
  warnings: "Conviene saber",
  source: "Fuente: {titles}",
  restsOn: "Se basa en: {titles}",
  about: "Se refiere a: {things}.",
  cautions: "Precauciones en la cocina",
  regionUnknown:
    "No se indica ningún país para este plan: se aplican las normas más estrictas de todas las regiones y se tienen en cuenta todas las listas de alérgenos. Indique su país para ver sus normas.",
  regionNamed:
    "Las normas y la lista de alérgenos son las de {region}, según indica {by, select, PLAN {el plan} other {el editor}}. Indique su país para ver sus normas.",
  regionStandsIn:
    "Para una parte no se conoce aquí ninguna norma de {region}; en su lugar se aplican las de {others}. Consulte a su autoridad local.",
};
