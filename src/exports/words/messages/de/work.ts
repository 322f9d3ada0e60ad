import type { Translation } from "../../message.js";
import type { work as english } from "../en/work.js";

export const work: Translation<typeof english> = {
  noSession: {
    STEPS_IN_A_CIRCLE: "Diese Schritte warten im Kreis aufeinander: {steps}.",
    WAITS_CANNOT_BE_KEPT:
      "Keine Reihenfolge hält alle Wartezeiten dieser Schritte ein: {steps}. Weniger Portionen auf einmal kochen, etwas davon an einem anderen Tag machen oder mit einem weiteren Einschub, einer weiteren Kochplatte oder einer weiteren Person kochen.",
    KITCHEN_WITHOUT:
      "In dieser Küche fehlt: {appliance}. Diese Schritte brauchen es: {steps}. Nehmen Sie das Ergebnis fertig aus dem Vorrat, wählen Sie einen anderen Weg, wo einer angegeben ist, oder geben Sie mindestens 1 an.",
    TOO_LARGE:
      "{size} ({what}) sind zu viele für eine Reihenfolge. Weniger Portionen auf einmal kochen oder etwas davon an einem anderen Tag machen.",
  },
  critical: {
    something: "etwas",
    washing: "Abspülen ({machine})",
    BEGINNING: "Es beginnt mit {task}.",
    PRECEDENCE: "{task} folgt auf {others}.",
    HANDS: "{task} wartet, bis die Hände frei sind von {others}.",
    APPLIANCE: "{task} wartet ({appliance}) auf {others}.",
    TEMPERATURE: "{task} wartet, bis der Backofen die Temperatur von {others} verlassen darf.",
    GREATEST_WAIT: "{task} wird zurückgestellt, damit {others} rechtzeitig folgen kann.",
    CHOICE: "{task} könnte früher beginnen; gewonnen wäre nichts.",
  },
};
