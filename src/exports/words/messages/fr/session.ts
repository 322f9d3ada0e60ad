import type { Translation } from "../../message.js";
import type { session as english } from "../en/session.js";

export const session: Translation<typeof english> = {
  session: "Séance de cuisine",
  sessionOf: "Séance de cuisine : {title}",
  eveningBefore: "la veille au soir",
  eveningTaskOf: "La veille au soir : {title}",
  sessionTakes: "Durée : {all}, dont {hands} de travail actif.",
  longerThanPromised: "C’est plus long que la durée annoncée pour le plan tel qu’il est écrit ({promised}).",
  moreThanADay:
    "C’est plus de travail qu’une journée n’en permet à si peu de mains. Cuisinez à plusieurs (à {cooks}, chacun a six heures au plus), préparez moins de portions à la fois, ou préparez un autre jour ce qui se mange plus tard.",
  overDays:
    "Réparti sur {sessions} jours, ce qui se mange plus tard se prépare plus tard. La durée de conservation reste comptée à partir du premier jour.",
  sessionOfDay:
    "{day, plural, =0 {Le premier jour} one {Un jour plus tard} many {# jours plus tard} other {# jours plus tard}}",
  madeThen: "Préparé ce jour-là : {things}.",
  buyRawThen: "Garder au froid ce qu’il faut pour ce jour, et rien au-delà de la date indiquée sur l’emballage.",
  stillMoreThanADay:
    "C’est encore plus de travail qu’une journée n’en permet à si peu de mains : cela se mange ce jour-là, ou ne tient dans aucun jour suivant. Cuisinez à plusieurs (à {cooks}, chacun a six heures au plus), préparez moins de portions, ou ayez l’un des éléments déjà prêt.",
  lateMeal:
    "« {meal} » est prévu à {at} et n’est prêt {ready, select, none {qu’après minuit} other {qu’à {ready} au plus tôt}}. Commencez plus tôt, ou mangez plus tard.",
  clearingUp: "Il faut ensuite ranger : environ {minutes}.",
  noOrder: "Les étapes de ce plan ne peuvent être mises dans aucun ordre : il n’y a donc pas d’horaire.",
  noOneSession: "Tout cela ne peut pas se faire en une seule séance.",
  time: "Heure",
  what: "Quoi",
  work: {
    HANDS_ON: "travail actif",
    UNATTENDED: "se fait seul",
  },
  how: "Comment",
  cook: "personne {numbers}",
  load: "{several, select, no {fournée {first} sur {of}} other {fournées {first} à {last} sur {of}}}",
  wash: "Laver : {machine}",
  machine: "appareil",
};
