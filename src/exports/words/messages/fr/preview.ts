import type { Translation } from "../../message.js";
import type { preview as english } from "../en/preview.js";

export const preview: Translation<typeof english> = {
  label: "Aperçu",
  shown:
    "Un aperçu du brouillon, version {version}, pour ceux qui ont cette adresse. Personne d’autre ne le voit avant sa publication.",
  works: "L’adresse fonctionne jusqu’au {until} et montre toujours la version la plus récente.",
  missing: "Il ne peut pas encore être publié :",
  notReady: "Pas encore prêt à être montré",
  notReadyWhy:
    "Le brouillon ne peut pas être calculé tant que ce qui est indiqué ci-dessus n’est pas corrigé. Les lecteurs n’en voient rien.",
  ended: "Cet aperçu a pris fin",
  endedWhy: "Il était visible jusqu’au {when}. Demandez une nouvelle adresse à l’auteur.",
  takenBack: "Cet aperçu a été retiré",
  takenBackWhy: "L’auteur l’a retiré le {when}. Demandez-lui une nouvelle adresse.",
  gone: "Ce brouillon n’existe plus",
  goneWhy: "L’auteur l’a supprimé. Demandez-lui s’il y en a un autre.",
  unknown: "Aucun aperçu n’a cette adresse",
  unknownWhy:
    "Elle est peut-être mal écrite ou coupée : copiez-la en entier, jusqu’au dernier caractère, ou demandez-en une nouvelle à l’auteur.",
};
