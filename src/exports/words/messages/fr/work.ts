import type { Translation } from "../../message.js";
import type { work as english } from "../en/work.js";

export const work: Translation<typeof english> = {
  noSession: {
    STEPS_IN_A_CIRCLE: "Ces étapes s’attendent les unes les autres en boucle : {steps}.",
    WAITS_CANNOT_BE_KEPT:
      "Aucun ordre ne respecte toutes les attentes de ces étapes : {steps}. Préparer moins de portions à la fois, faire l’un des éléments un autre jour, ou cuisiner avec un niveau de four, un feu ou une personne de plus.",
    KITCHEN_WITHOUT:
      "Il manque dans cette cuisine : {appliance}. Ces étapes en ont besoin : {steps}. Ayez déjà ce qu’elles donnent, choisissez une autre voie s’il y en a une, ou indiquez-en au moins 1.",
    TOO_LARGE:
      "{size} ({what}), c’est trop pour un seul ordre. Préparer moins de portions à la fois, ou faire l’un des éléments un autre jour.",
  },
  critical: {
    something: "quelque chose",
    washing: "laver : {machine}",
    BEGINNING: "On commence par {task}.",
    PRECEDENCE: "{task} vient après {others}.",
    HANDS: "{task} attend que les mains aient fini {others}.",
    APPLIANCE: "{task} attend ({appliance}) la fin de {others}.",
    TEMPERATURE: "{task} attend que le four puisse quitter la température de {others}.",
    GREATEST_WAIT: "{task} est retardé pour que {others} puisse suivre à temps.",
    CHOICE: "{task} pourrait commencer plus tôt ; on n’y gagnerait rien.",
  },
};
