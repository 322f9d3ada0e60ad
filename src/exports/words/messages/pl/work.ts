import type { Translation } from "../../message.js";
import type { work as english } from "../en/work.js";

export const work: Translation<typeof english> = {
  noSession: {
    STEPS_IN_A_CIRCLE: "Te kroki czekają na siebie nawzajem: {steps}.",
    WAITS_CANNOT_BE_KEPT:
      "Żadna kolejność nie zachowuje wszystkich czasów oczekiwania tych kroków: {steps}. Przygotuj mniej porcji naraz, zrób coś z tego innego dnia albo gotuj z dodatkowym poziomem piekarnika, palnikiem lub osobą.",
    KITCHEN_WITHOUT:
      "W tej kuchni brakuje: {appliance}. Potrzebują tego kroki: {steps}. Miej gotowe to, co z nich powstaje, wybierz inny sposób, jeśli jest podany, albo podaj co najmniej 1.",
    TOO_LARGE:
      "{size} ({what}) to za dużo, by ułożyć jedną kolejność. Przygotuj mniej porcji naraz albo zrób coś z tego innego dnia.",
  },
  critical: {
    something: "coś",
    washing: "mycie: {machine}",
    BEGINNING: "Na początku: {task}.",
    PRECEDENCE: "{task} następuje po: {others}.",
    HANDS: "{task} czeka, aż ręce będą wolne po: {others}.",
    APPLIANCE: "{task} czeka ({appliance}) na koniec: {others}.",
    TEMPERATURE: "{task} czeka, aż piekarnik będzie mógł zmienić temperaturę po: {others}.",
    GREATEST_WAIT: "{task} jest przesunięte, żeby na czas mogło nastąpić: {others}.",
    CHOICE: "{task} mogłoby zacząć się wcześniej; nic by to nie dało.",
  },
};
