import type { Translation } from "../../message.js";
import type { cautionTexts as english } from "../en/caution-texts.js";

export const cautionTexts: Translation<typeof english> = {
  cautionTexts: {
    "local-rules":
      "Ces durées viennent des sources citées et ne sont pas une promesse. La réglementation sanitaire locale et les professionnels agréés priment. En cas de doute, jeter.",
    "allergens-on-labels":
      "Lire l’étiquette de chaque emballage : les recettes changent, les mentions de traces sont facultatives, et ce qui n’est pas connu ici n’est pas absent pour autant.",
    "keep-cold":
      "Conserver à 4 °C (40 °F) ou moins. Ne pas laisser hors du froid plus de 2 heures au total, ou 1 heure au-dessus de 32 °C (90 °F).",
    "keep-cold US":
      "Conserver à 40 °F ou moins. Ne pas laisser hors du froid plus de 2 heures au total, ou 1 heure au-dessus de 90 °F.",
    "keep-cold GB": "Conserver à 5 °C ou moins. Ne pas laisser hors du froid plus de 4 heures au total.",
    "keep-cold CA": "Conserver à 4 °C ou moins. Ne pas laisser hors du froid plus de 2 heures au total.",
    "keep-cold ANZ":
      "Conserver à 5 °C ou moins. Ce qui est resté hors du froid moins de 2 heures au total peut retourner au réfrigérateur ; après 4 heures au total, jeter.",
    "keep-cold INT":
      "Conserver à 4 °C ou moins. Ne pas laisser hors du froid plus de 2 heures au total, ou 1 heure au-dessus de 32 °C.",
    "cool-quickly":
      "Refroidir vite les aliments cuits, dans des récipients plats de 5 cm (2 pouces) de profondeur au plus : à 21 °C (70 °F) en 2 heures au plus et à 5 °C (41 °F) en 6 heures au plus au total. Dans de grandes marmites profondes, le refroidissement est trop lent.",
    "cool-quickly US":
      "Refroidir vite les aliments cuits, dans des récipients plats de 2 pouces de profondeur au plus : à 70 °F en 2 heures au plus et à 41 °F en 6 heures au plus au total. Dans de grandes marmites profondes, le refroidissement est trop lent.",
    "cool-quickly GB":
      "Refroidir les aliments cuits en 1 à 2 heures au plus, dans des récipients plats, puis les mettre au réfrigérateur. Dans de grandes marmites profondes, le refroidissement est trop lent.",
    "cool-quickly INT":
      "Refroidir vite les aliments cuits, dans des récipients plats de 5 cm de profondeur au plus : à 21 °C en 2 heures au plus et à 5 °C en 6 heures au plus au total. Dans de grandes marmites profondes, le refroidissement est trop lent.",
    "reheat-until-steaming":
      "Réchauffer les restes à 74 °C (165 °F), fumants jusqu’à cœur, et une seule fois ; faire bouillir les soupes et les sauces à gros bouillons.",
    "reheat-until-steaming US":
      "Réchauffer les restes à 165 °F, fumants jusqu’à cœur ; faire bouillir les soupes et les sauces à gros bouillons.",
    "reheat-until-steaming GB": "Réchauffer les restes jusqu’à ce qu’ils soient fumants à cœur, et une seule fois.",
    "reheat-until-steaming INT":
      "Réchauffer les restes à 74 °C, fumants jusqu’à cœur, et une seule fois ; faire bouillir les soupes et les sauces à gros bouillons.",
    rice: "Refroidir le riz cuit en moins d’une heure et le garder au froid ; le conseil le plus strict est de le manger dans les 24 heures. Le réchauffer ne répare pas un refroidissement trop lent : la toxine résiste.",
    "rice US":
      "Refroidir vite le riz cuit et le garder au froid. Le réchauffer ne répare pas un refroidissement trop lent : la toxine résiste.",
    "rice GB":
      "Refroidir le riz cuit en moins d’une heure, le garder au froid et le manger dans les 24 heures. Le réchauffer ne répare pas un refroidissement trop lent : la toxine résiste.",
    "garlic-in-oil":
      "La toxine du botulisme peut se former dans l’ail cru sous l’huile sans aucun signe. Conserver au réfrigérateur, jamais à température ambiante, 4 jours au plus, ou congeler.",
    "herbs-in-oil":
      "La toxine du botulisme peut se former dans les herbes fraîches, l’ail et les légumes sous l’huile sans aucun signe. Conserver au réfrigérateur, jamais à température ambiante, 2 à 3 jours au plus, ou congeler.",
    "kidney-beans":
      "Les haricots rouges secs sont toxiques tant qu’ils n’ont pas bouilli. Les tremper au moins 5 heures, jeter l’eau et les faire bouillir 30 minutes dans une eau fraîche. Les haricots en conserve ont déjà été cuits.",
    "kidney-beans-slow-cooker":
      "Ne jamais cuire des haricots rouges crus dans une mijoteuse : elle ne chauffe pas assez pour détruire la toxine. Les faire d’abord bouillir, comme ci-dessus.",
    "soak-in-the-fridge": "Un trempage de plus de 4 heures se fait au réfrigérateur.",
    sprouts:
      "Les graines germées crues peuvent porter des bactéries dangereuses que le lavage n’élimine pas. Les garder au froid ; les personnes à risque les mangeront cuites ou pas du tout.",
    "cut-leaves": "Une fois coupés, les légumes-feuilles doivent rester au réfrigérateur.",
    "cut-fruit": "Une fois coupés, les melons, les tomates et les autres fruits doivent rester au réfrigérateur.",
    "raw-egg":
      "Contient de l’œuf cru. Garder au froid 3 à 4 jours au plus ; ne convient pas aux jeunes enfants, aux personnes âgées, aux femmes enceintes ni aux personnes immunodéprimées.",
    "soaked-nuts":
      "Personne ne publie la durée de conservation des fruits à coque trempés et des crèmes qu’on en fait. La règle des restes la remplace.",
    "packed-without-air":
      "Emballer sans air (sous vide) ne prolonge aucune durée à la maison et permet à la toxine du botulisme de se former. Compter les mêmes jours que dans une boîte.",
    "thaw-in-the-fridge":
      "Décongeler au réfrigérateur, dans de l’eau froide changée toutes les 30 minutes, ou au micro-ondes ; ce qui a été décongelé vite se cuit aussitôt. Ne jamais décongeler sur le plan de travail.",
    "cook-poultry":
      "Cuire la volaille, entière ou hachée, à 74 °C (165 °F) dans la partie la plus épaisse. Ne pas la laver crue.",
    "cook-poultry US":
      "Cuire la volaille, entière ou hachée, à 165 °F dans la partie la plus épaisse. Ne pas la laver crue.",
    "cook-poultry CA":
      "Cuire la volaille en morceaux ou hachée à 74 °C dans la partie la plus épaisse, les volailles entières à 82 °C. Ne pas la laver crue.",
    "cook-poultry GB":
      "Cuire la volaille jusqu’à ce que le cœur ait été à 70 °C pendant 2 minutes et que rien ne soit rosé. Ne pas la laver crue.",
    "cook-poultry INT":
      "Cuire la volaille, entière ou hachée, à 74 °C dans la partie la plus épaisse. Ne pas la laver crue.",
    "cook-mince":
      "Cuire la viande hachée, les steaks hachés et les saucisses à 71 °C (160 °F) à cœur : rien ne doit rester cru.",
    "cook-mince US":
      "Cuire la viande hachée, les steaks hachés et les saucisses à 160 °F à cœur : rien ne doit rester cru.",
    "cook-mince CA":
      "Cuire la viande hachée, les steaks hachés et les saucisses à 71 °C à cœur : rien ne doit rester cru.",
    "cook-mince GB":
      "Cuire la viande hachée, les steaks hachés et les saucisses jusqu’à ce que le cœur ait été à 70 °C pendant 2 minutes : rien ne doit rester cru.",
    "cook-mince INT":
      "Cuire la viande hachée, les steaks hachés et les saucisses à 71 °C à cœur : rien ne doit rester cru.",
    "cook-fish":
      "Cuire le poisson, les crustacés et les coquillages à 70 °C (158 °F) à cœur, jusqu’à ce que le poisson s’effeuille et que les coquilles soient ouvertes.",
    "cook-fish US":
      "Cuire le poisson, les crustacés et les coquillages à 145 °F à cœur, jusqu’à ce que le poisson s’effeuille et que les coquilles soient ouvertes.",
    "cook-fish CA":
      "Cuire à cœur le poisson à 70 °C, les crustacés et les coquillages à 74 °C, jusqu’à ce que le poisson s’effeuille et que les coquilles soient ouvertes.",
    "cook-fish GB":
      "Cuire le poisson, les crustacés et les coquillages jusqu’à ce que le cœur ait été à 70 °C pendant 2 minutes, que le poisson s’effeuille et que les coquilles soient ouvertes.",
    "cook-fish INT":
      "Cuire le poisson, les crustacés et les coquillages à 70 °C à cœur, jusqu’à ce que le poisson s’effeuille et que les coquilles soient ouvertes.",
    "cook-eggs":
      "Cuire les œufs jusqu’à ce que le blanc et le jaune soient fermes, et les plats aux œufs à 71 °C (160 °F).",
    "cook-eggs US": "Cuire les œufs jusqu’à ce que le blanc et le jaune soient fermes, et les plats aux œufs à 160 °F.",
    "cook-eggs CA": "Cuire les œufs jusqu’à ce que le blanc et le jaune soient fermes, et les plats aux œufs à 74 °C.",
    "cook-eggs GB":
      "Cuire les œufs jusqu’à ce que le blanc et le jaune soient fermes, et les plats aux œufs jusqu’à ce que le cœur ait été à 70 °C pendant 2 minutes.",
    "cook-eggs INT": "Cuire les œufs jusqu’à ce que le blanc et le jaune soient fermes, et les plats aux œufs à 71 °C.",
    "honey-under-one-year":
      "Le miel ne convient pas aux bébés de moins de 12 mois, ni cru ni cuit : il peut provoquer le botulisme infantile.",
  },
};
