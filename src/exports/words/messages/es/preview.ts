import type { Translation } from "../../message.js";
import type { preview as english } from "../en/preview.js";

export const preview: Translation<typeof english> = {
  label: "Vista previa",
  shown:
    "Una vista previa del borrador, versión {version}, para quienes tienen esta dirección. Nadie más lo ve antes de que se publique.",
  works: "La dirección funciona hasta el {until} y muestra siempre la versión más reciente.",
  missing: "Todavía no se puede publicar:",
  notReady: "Todavía no se puede mostrar",
  notReadyWhy:
    "El borrador no se puede calcular hasta que se corrija lo que figura arriba. Los lectores no ven nada de él.",
  ended: "Esta vista previa ha terminado",
  endedWhy: "Se pudo ver hasta el {when}. Pida al autor una dirección nueva.",
  takenBack: "Esta vista previa fue retirada",
  takenBackWhy: "El autor la retiró el {when}. Pídale una dirección nueva.",
  gone: "Este borrador ya no existe",
  goneWhy: "El autor lo eliminó. Pregúntele si hay otro.",
  unknown: "Ninguna vista previa tiene esta dirección",
  unknownWhy: "Puede estar mal escrita o cortada: cópiela entera, hasta el último carácter, o pida una nueva al autor.",
};
