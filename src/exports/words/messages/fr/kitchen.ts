import type { Translation } from "../../message.js";
import type { kitchen as english } from "../en/kitchen.js";

export const kitchen: Translation<typeof english> = {
  cookTitle: "En cuisine : {plan}",
  backToPlan: "Retour au plan",
  beforeYouStart: "Avant de commencer",
  readyLines:
    "Avoir sous la main tout ce qui est sur la liste de courses, et des boîtes propres avec couvercle pour ce que vous rangez.",
  youNeed: "Il faut : {appliances}.",
  wholeTime: "Cela prend {time}, dont {busy} de travail.",
  stepOf: "Étape {step} sur {all}",
  timeLeft: "encore {time}",
  forAllParts: "quantités pour toutes les parties ensemble",
  shareOfRecipe: "aujourd’hui {times} sur {all} × la recette",
  meanwhile: "Pendant ce temps : {things}.",
  runsUntil: "{what} (jusqu’à : {when})",
  done: "Fait",
  back: "Retour",
  start: "Commencer",
  startTimer: "Lancer le minuteur : {time}",
  timerDone: "C’est l’heure",
  stopTimer: "Arrêter le minuteur",
  putAway: "Ranger",
  putAwayLine:
    "Mettre en boîte ce qui reste pour les jours suivants, écrire sur chaque boîte ce que c’est et jusqu’à quand cela se conserve, et ranger maintenant.",
  allSteps: "Toutes les étapes",
  oneStep: "Une étape à la fois",
  cannotCook: "Cela n’a pas pu être calculé",
  fridgeTitle: "Durées de conservation : {plan}",
  labelsTitle: "Étiquettes de boîtes : {plan}",
  printHint: "Imprimez cette page avec votre navigateur.",
  forMeal: "pour {meal}",
  freezeOnCookingDay: "congeler le jour de cuisine",
  spareBox: "en plus",
  madeOn: "préparé : {day}",
  howLong: "Jusqu’à quand",
};
