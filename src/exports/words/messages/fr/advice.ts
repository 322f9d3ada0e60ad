import type { Translation } from "../../message.js";
import type { advice as english } from "../en/advice.js";

export const advice: Translation<typeof english> = {
  quoted: "« {name} »",
  advice: {
    share: "{amount} pour « {meal} » (jour {day})",
    shareUnknown: "la part pour « {meal} » (jour {day})",
    FREEZE:
      "{way, select, first {} other {Ou : }}Congeler le jour de la préparation : {portions}. Pour décongeler, mettre au réfrigérateur {before} avant le repas. Une fois décongelé, se conserve {after}.",
    laterMeal: "« {meal} » (jour {day}) pas avant le jour {notBefore}",
    MAKE_LATER: "{way, select, first {} other {Ou : }}Préparer plus tard la part de « {component} » pour {meals}.",
    SWAP_DAYS: "{way, select, first {} other {Ou : }}Échanger les jours de « {meal} » et de « {with} ».",
    EAT_EARLIER: "{way, select, first {} other {Ou : }}Manger « {meal} » au plus tard le jour {day}.",
    EAT_IT_EARLIER: "{way, select, first {} other {Ou : }}À manger au plus tard le jour {day}.",
    SHOP_TWICE:
      "{way, select, first {} other {Ou : }}Acheter plus tard, pas avant le jour {day} : {food} pour {meals}.",
    EAT_BEFORE:
      "Ici, on compte en heures : se conserve {hours, plural, one {# heure} many {# heures} other {# heures}} après la préparation ; ce délai prend fin le jour {day}{until, select, none {} other { à {until}}}.",
    NO_PUBLISHED_RULE:
      "Aucune règle publiée ne couvre ce cas ; la durée est celle du plan. Suivez les conseils locaux de sécurité des aliments.",
    WRITER_EXCEEDS_RULE: "Le plan donne {writer}, une règle publiée {rule} ; la durée la plus courte s’applique.",
    REGION_WITHOUT_RULE:
      "Aucune règle n’est connue ici pour {asked} ; celles de {used} ont été utilisées. Renseignez-vous auprès de votre autorité locale.",
    tooLate: "Trop tard pour {meals} : {thing} se conserve {keeps}. {advice}",
  },
};
