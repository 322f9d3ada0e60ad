import type { Translation } from "../../message.js";
import type { general as english } from "../en/general.js";

export const general: Translation<typeof english> = {
  forServings: "Pour {count, plural, one {# portion} many {# portions} other {# portions}}",
  servings: "{count, plural, one {# portion} many {# portions} other {# portions}}",
  days: "{count, plural, one {# jour} many {# jours} other {# jours}}",
  hours: "{count, plural, one {# heure} many {# heures} other {# heures}}",
  foods: "{count, plural, one {# aliment} many {# aliments} other {# aliments}}",
  roughly: "environ {amount}",
  dayOfPlan:
    "{day, plural, =0 {Jour de cuisine} one {# jour après le jour de cuisine} many {# jours après le jour de cuisine} other {# jours après le jour de cuisine}}",
  by: "Par",
  revision: "Version {number}, publiée le {date}",
  withdrawn: "Cette version a été retirée par son éditeur.",
  changed: "Ce qui a changé",
  thisRevision: "Cette version",
  newestRevision: "La version la plus récente",
  calendar: "Au format calendrier",
  listAddress: "La liste de courses seule",
  warnings: "Bon à savoir",
  source: "Source : {titles}",
  restsOn: "S’appuie sur : {titles}",
  about: "Concerne : {things}.",
  cautions: "Précautions en cuisine",
  regionUnknown:
    "Aucun pays n’est indiqué pour ce plan : les règles les plus strictes de toutes les régions s’appliquent et toutes les listes d’allergènes sont prises en compte. Indiquez votre pays pour voir ses propres règles.",
  regionNamed:
    "Les règles et la liste d’allergènes sont celles de {region}, {by, select, PLAN {indiquées par le plan} other {indiquées par l’éditeur}}. Indiquez votre pays pour voir ses propres règles.",
  regionStandsIn:
    "Pour une partie de ces données, aucune règle de {region} n’est connue ici ; celles de {others} les remplacent. Renseignez-vous auprès de votre autorité locale.",
};
