import type { Translation } from "../../message.js";
import type { work as english } from "../en/work.js";

export const work: Translation<typeof english> = {
  noSession: {
    STEPS_IN_A_CIRCLE: "Estos pasos se esperan unos a otros en círculo: {steps}.",
    WAITS_CANNOT_BE_KEPT:
      "Ningún orden respeta todas las esperas de estos pasos: {steps}. Prepare menos raciones de una vez, haga alguno de los elementos otro día o cocine con otro nivel de horno, otro fuego u otra persona.",
    KITCHEN_WITHOUT:
      "En esta cocina falta: {appliance}. Estos pasos lo necesitan: {steps}. Tenga ya lo que producen, elija otra vía si la hay o indique al menos 1.",
    TOO_LARGE:
      "{size} ({what}) son demasiados para un solo orden. Prepare menos raciones de una vez o haga alguno de los elementos otro día.",
  },
  critical: {
    something: "algo",
    washing: "lavar: {machine}",
    BEGINNING: "Se empieza con {task}.",
    PRECEDENCE: "{task} va después de {others}.",
    HANDS: "{task} espera a que las manos terminen {others}.",
    APPLIANCE: "{task} espera ({appliance}) a que termine {others}.",
    TEMPERATURE: "{task} espera a que el horno pueda dejar la temperatura de {others}.",
    GREATEST_WAIT: "{task} se retrasa para que {others} pueda seguir a tiempo.",
    CHOICE: "{task} podría empezar antes; no se ganaría nada.",
  },
};
