import type { Translation } from "../../message.js";
import type { warnings as english } from "../en/warnings.js";

export const warnings: Translation<typeof english> = {
  missing: {
    DENSITY: "le poids d’un millilitre",
    GRAMS_OF_ONE_PIECE: "le poids d’une pièce",
    MILLILITRES_OF_ONE_PIECE: "le volume d’une pièce",
    YIELD_OF_ONE_BATCH: "le rendement d’une préparation",
    OWN_MEASURE: "la taille d’une unité",
    UNIT: "l’unité",
  },
  warning: {
    NOT_COMBINED: "Les quantités de « {food} » restent sur des lignes séparées, car on ne connaît pas {missing}.",
    PART_NOT_COUNTED:
      "On ne peut pas calculer combien de « {food} » donnent « {part} », car on ne connaît pas {missing}. En acheter assez.",
    EDIBLE_PORTION_UNKNOWN:
      "On ne sait pas combien de « {food} »{form, select, none {} other { ({form})}} se perd à l’épluchage. La liste donne la quantité épluchée ; en acheter un peu plus.",
    PRICE_UNKNOWN: "Aucun prix n’est connu pour « {food} », qui ne figure donc dans aucun total.",
    PACK_NOT_COMPARABLE:
      "Le paquet « {pack} » de « {food} » n’a pas été pris en compte, car on ne connaît pas {missing}.",
    ON_HAND_NOT_COMPARABLE: "Ce que vous avez de « {item} » n’a pas été déduit, car on ne connaît pas {missing}.",
    ON_HAND_IN_OTHER_FORM:
      "Ce que vous avez de « {from} » donnerait environ {gives} de « {item} » ; il en faudrait environ {wouldTake} pour tout le besoin. Cela n’a pas été compté ; indiquez-le si cela doit l’être.",
    ON_HAND_NOT_NEEDED: "Ce que vous avez de « {item} » n’est pas nécessaire ici.",
    ON_HAND_TOO_OLD: "Ce que vous avez de « {item} » a dépassé sa date ({date}) : rien n’en a été compté.",
    ON_HAND_NOT_IN_TIME:
      "Ce que vous avez de « {item} » aura dépassé sa date ({date}) {count, plural, one {au moment de ce repas} many {au moment de ces repas} other {au moment de ces repas}} et n’y a pas été compté : {meals}.",
    DIET_NOT_MET:
      "{how, select, unknown {On ne sait pas si « {item} » convient au régime « {diet} ». Lire l’étiquette.} none {« {item} » ne convient pas au régime « {diet} », et aucun remplacement n’est proposé.} other {« {item} » ne convient pas au régime « {diet} », et aucun des remplacements proposés ({offered}) n’a été pris.}}",
    ALLERGEN_NOT_AVOIDED:
      "{how, select, unknown {On ne sait pas si « {item} » en contient : {allergen}. Lire l’étiquette.} may {« {item} » peut contenir des traces : {allergen}.} none {« {item} » contient : {allergen}. Aucun remplacement n’est proposé.} other {« {item} » contient : {allergen}. Aucun des remplacements proposés ({offered}) n’a été pris.}}",
    DISLIKE_NOT_AVOIDED: "« {item} » reste dans {meals} : aucun remplacement qui vous convienne n’est proposé.",
    DISLIKE_LEFT_OUT:
      "« {item} » est facultatif dans {meals} et a été retiré. Les étapes le mentionnent peut-être encore.",
    SWAP_NOT_OFFERED: "Aucune ligne ne propose « {to} » à la place de « {from} » : rien n’a été remplacé.",
    SWAP_NOT_CONVERTIBLE:
      "« {to} » n’a pas pu remplacer « {from} », car on ne connaît pas {missing}. La ligne reste telle quelle.",
    MADE_IN_TWO_PLANS: "« {component} » se prépare dans plusieurs plans ({plans}), séparément dans chacun.",
    LEFT_OVER: "Il reste un peu de « {component} ».",
    LEFT_OVER_FOR:
      "Il reste un peu de « {component} » : assez pour {count, plural, one {# portion} many {# portions} other {# portions}} de plus.",
    PART_TOO_OLD:
      "« {part} » de « {food} » se conserve {keeps} une fois la pièce entamée : « {meal} », le jour {day}, ne peut pas le prendre sur une pièce entamée le jour {cutOn}. En entamer une nouvelle ; la liste la compte.",
    BUY_LATER: "« {food} » se conserve {keeps} : acheter la part pour {meals} plus tard, pas avant le jour {day}.",
    MEAL_BEFORE_SESSION:
      "« {meal} » se mange à {at} le jour de cuisine, qui commence à {start}. Commencer plus tôt, manger plus tard, ou préparer la veille ce qu’il faut, en tenant compte de sa conservation.",
    KEEPING_UNKNOWN:
      "Il n’y a pas de durée de conservation pour « {item} ». Suivez les conseils locaux de sécurité des aliments.",
    KEEPING_CLASS_UNKNOWN:
      "« {item} » est classé comme « {keepsAs} », que les règles publiées ne connaissent pas. La durée la plus courte de toutes les catégories est donc donnée : suivez-la, ou les conseils locaux de sécurité des aliments.",
    REGION_NOT_GIVEN: "Aucune région n’a été donnée : la règle la plus stricte a été prise, celle de {used}.",
  },
  gathered: {
    NOT_COMBINED: "Sur des lignes séparées, car on ne connaît pas {missing} : {things}.",
    EDIBLE_PORTION_UNKNOWN:
      "On ne sait pas ce qui se perd à l’épluchage : {things}. La liste donne la quantité épluchée ; en acheter un peu plus.",
    PACK_NOT_COMPARABLE: "Paquets laissés de côté, car on ne connaît pas {missing} : {things}.",
    ON_HAND_NOT_COMPARABLE: "Déjà à la maison mais non déduit, car on ne connaît pas {missing} : {things}.",
    ON_HAND_TOO_OLD: "Déjà à la maison, date dépassée, non compté : {things}.",
    ON_HAND_NOT_NEEDED: "Déjà à la maison, pas nécessaire ici : {things}.",
    DIET_NOT_MET:
      "{how, select, unknown {On ne sait pas si cela convient au régime « {diet} » : {things}. Lire les étiquettes.} none {Ne convient pas au régime « {diet} », aucun remplacement proposé : {things}.} other {Ne convient pas au régime « {diet} », aucun remplacement proposé n’a été pris : {things}.}}",
    ALLERGEN_NOT_AVOIDED:
      "{how, select, unknown {On ne sait pas s’il y en a ({allergen}) : {things}. Lire les étiquettes.} may {Traces possibles ({allergen}) : {things}.} none {Allergène présent ({allergen}), aucun remplacement proposé : {things}.} other {Allergène présent ({allergen}), aucun remplacement proposé n’a été pris : {things}.}}",
    SWAP_NOT_OFFERED: "Non remplacé, car aucune ligne ne le propose : {things}.",
    MADE_IN_TWO_PLANS: "Préparé dans plusieurs plans, séparément dans chacun : {things}.",
    LEFT_OVER: "Restes : {things}.",
    enoughFor: "{component} (assez pour {count, plural, one {# portion} many {# portions} other {# portions}} de plus)",
    BUY_LATER: "À acheter plus tard, pas avant le jour {day} : {things}.",
    shareToBuy: "{food} pour {meals} (se conserve {keeps})",
    KEEPING_UNKNOWN: "Durée de conservation inconnue : {things}. Suivez les conseils locaux de sécurité des aliments.",
  },
};
