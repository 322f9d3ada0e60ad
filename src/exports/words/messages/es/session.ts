import type { Translation } from "../../message.js";
import type { session as english } from "../en/session.js";

export const session: Translation<typeof english> = {
  session: "Sesión de cocina",
  sessionOf: "Sesión de cocina: {title}",
  eveningBefore: "la noche anterior",
  eveningTaskOf: "La noche anterior: {title}",
  sessionTakes: "Se tarda {all}, de los que {hands} son de trabajo activo.",
  longerThanPromised: "Es más de lo que se anuncia para el plan tal como está escrito ({promised}).",
  moreThanADay:
    "Es más trabajo del que cabe en un día para tan pocas manos. Cocine con más personas (entre {cooks}, cada una tiene seis horas como máximo), prepare menos raciones de una vez o prepare otro día lo que se come más tarde.",
  overDays:
    "Repartido en {sessions} días, lo que se come más tarde se prepara más tarde. El tiempo de conservación se sigue contando desde el primer día.",
  sessionOfDay: "{day, plural, =0 {El primer día} one {Un día después} many {# días después} other {# días después}}",
  madeThen: "Se prepara entonces: {things}.",
  buyRawThen: "Conserve en frío lo que necesite ese día, y nada después de la fecha indicada en el envase.",
  stillMoreThanADay:
    "Sigue siendo más trabajo del que cabe en un día para tan pocas manos: se come ese día o no cabe en ningún otro posterior. Cocine con más personas (entre {cooks}, cada una tiene seis horas como máximo), prepare menos raciones o tenga ya listo alguno de los elementos.",
  lateMeal:
    "«{meal}» está previsto para las {at} y no está listo {ready, select, none {hasta después de medianoche} other {antes de las {ready}}}. Empiece antes o coma más tarde.",
  clearingUp: "Después hay que recoger: aprox. {minutes}.",
  noOrder: "Los pasos de este plan no encajan en ningún orden, así que no hay horario.",
  noOneSession: "No se puede hacer todo en una sola sesión.",
  time: "Hora",
  what: "Qué",
  work: {
    HANDS_ON: "trabajo activo",
    UNATTENDED: "se hace solo",
  },
  how: "Cómo",
  cook: "persona {numbers}",
  load: "{several, select, no {tanda {first} de {of}} other {tandas {first} a {last} de {of}}}",
  wash: "Lavar: {machine}",
  machine: "aparato",
};
