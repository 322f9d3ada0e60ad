import type { Translation } from "../../message.js";
import type { cautionTexts as english } from "../en/caution-texts.js";

export const cautionTexts: Translation<typeof english> = {
  cautionTexts: {
    "local-rules":
      "Estos tiempos proceden de las fuentes citadas y no son una promesa. La normativa local de seguridad alimentaria y los profesionales autorizados tienen prioridad. En caso de duda, tírelo.",
    "allergens-on-labels":
      "Lea la etiqueta de cada envase: las recetas cambian, las advertencias sobre trazas son voluntarias y que algo no se sepa aquí no significa que no esté.",
    "keep-cold":
      "Consérvelo a 4 °C (40 °F) o menos. No lo deje fuera del frío más de 2 horas en total, o 1 hora por encima de 32 °C (90 °F).",
    "keep-cold US":
      "Consérvelo a 40 °F o menos. No lo deje fuera del frío más de 2 horas en total, o 1 hora por encima de 90 °F.",
    "keep-cold GB": "Consérvelo a 5 °C o menos. No lo deje fuera del frío más de 4 horas en total.",
    "keep-cold CA": "Consérvelo a 4 °C o menos. No lo deje fuera del frío más de 2 horas en total.",
    "keep-cold ANZ":
      "Consérvelo a 5 °C o menos. Lo que haya estado fuera del frío menos de 2 horas en total puede volver al frigorífico; después de 4 horas en total, tírelo.",
    "keep-cold INT":
      "Consérvelo a 4 °C o menos. No lo deje fuera del frío más de 2 horas en total, o 1 hora por encima de 32 °C.",
    "cool-quickly":
      "Enfríe deprisa la comida cocinada, en recipientes poco profundos, de 5 cm (2 pulgadas) de profundidad como máximo: hasta 21 °C (70 °F) en un máximo de 2 horas y hasta 5 °C (41 °F) en un máximo de 6 horas en total. En ollas grandes y hondas se enfría demasiado despacio.",
    "cool-quickly US":
      "Enfríe deprisa la comida cocinada, en recipientes poco profundos, de 2 pulgadas de profundidad como máximo: hasta 70 °F en un máximo de 2 horas y hasta 41 °F en un máximo de 6 horas en total. En ollas grandes y hondas se enfría demasiado despacio.",
    "cool-quickly GB":
      "Enfríe la comida cocinada en 1 o 2 horas como máximo, en recipientes poco profundos, y después métala en el frigorífico. En ollas grandes y hondas se enfría demasiado despacio.",
    "cool-quickly INT":
      "Enfríe deprisa la comida cocinada, en recipientes poco profundos, de 5 cm de profundidad como máximo: hasta 21 °C en un máximo de 2 horas y hasta 5 °C en un máximo de 6 horas en total. En ollas grandes y hondas se enfría demasiado despacio.",
    "reheat-until-steaming":
      "Recaliente las sobras a 74 °C (165 °F), hasta que humeen por dentro y por fuera, y solo una vez; lleve sopas y salsas a pleno hervor.",
    "reheat-until-steaming US":
      "Recaliente las sobras a 165 °F, hasta que humeen por dentro y por fuera; lleve sopas y salsas a pleno hervor.",
    "reheat-until-steaming GB": "Recaliente las sobras hasta que humeen por dentro y por fuera, y solo una vez.",
    "reheat-until-steaming INT":
      "Recaliente las sobras a 74 °C, hasta que humeen por dentro y por fuera, y solo una vez; lleve sopas y salsas a pleno hervor.",
    rice: "Enfríe el arroz cocido en menos de una hora y consérvelo en frío; el consejo más estricto es comerlo antes de que pasen 24 horas. Recalentarlo no corrige un enfriamiento lento: la toxina resiste.",
    "rice US":
      "Enfríe deprisa el arroz cocido y consérvelo en frío. Recalentarlo no corrige un enfriamiento lento: la toxina resiste.",
    "rice GB":
      "Enfríe el arroz cocido en menos de una hora, consérvelo en frío y cómalo antes de que pasen 24 horas. Recalentarlo no corrige un enfriamiento lento: la toxina resiste.",
    "garlic-in-oil":
      "En el ajo crudo en aceite puede formarse toxina botulínica sin que se note. Consérvelo en el frigorífico, nunca a temperatura ambiente, y no más de 4 días, o congélelo.",
    "herbs-in-oil":
      "En las hierbas frescas, el ajo y las verduras en aceite puede formarse toxina botulínica sin que se note. Consérvelos en el frigorífico, nunca a temperatura ambiente, no más de 2 o 3 días, o congélelos.",
    "kidney-beans":
      "Las alubias rojas secas son tóxicas hasta que se hierven. Póngalas en remojo al menos 5 horas, tire el agua y hiérvalas en agua nueva durante 30 minutos. Las de lata ya están cocidas.",
    "kidney-beans-slow-cooker":
      "No cocine nunca alubias rojas crudas en una olla de cocción lenta: no se calienta lo bastante para destruir la toxina. Hiérvalas antes, como se indica arriba.",
    "soak-in-the-fridge": "Un remojo de más de 4 horas se hace en el frigorífico.",
    sprouts:
      "Los brotes crudos pueden llevar bacterias peligrosas que no se eliminan al lavarlos. Consérvelos en frío; las personas de riesgo deben comerlos cocinados o no comerlos.",
    "cut-leaves": "Una vez cortadas, las verduras de hoja deben quedarse en el frigorífico.",
    "cut-fruit": "Una vez cortados, los melones, los tomates y las demás frutas deben quedarse en el frigorífico.",
    "raw-egg":
      "Lleva huevo crudo. Consérvelo en frío no más de 3 o 4 días; no es para niños pequeños, personas mayores, embarazadas ni personas con defensas bajas.",
    "soaked-nuts":
      "Nadie publica cuánto se conservan los frutos de cáscara remojados y las cremas hechas con ellos. En su lugar vale la norma para las sobras.",
    "packed-without-air":
      "Envasar sin aire (al vacío) no alarga en casa la conservación de nada y permite que se forme toxina botulínica. Cuente los mismos días que en un recipiente.",
    "thaw-in-the-fridge":
      "Descongele en el frigorífico, en agua fría cambiada cada 30 minutos o en el microondas; lo que se descongela deprisa se cocina en seguida. No descongele nunca sobre la encimera.",
    "cook-poultry": "Cocine las aves, enteras o picadas, a 74 °C (165 °F) en la parte más gruesa. No las lave crudas.",
    "cook-poultry US": "Cocine las aves, enteras o picadas, a 165 °F en la parte más gruesa. No las lave crudas.",
    "cook-poultry CA":
      "Cocine las aves en trozos o picadas a 74 °C en la parte más gruesa, y las enteras a 82 °C. No las lave crudas.",
    "cook-poultry GB":
      "Cocine las aves hasta que el centro haya estado a 70 °C durante 2 minutos y nada quede rosado. No las lave crudas.",
    "cook-poultry INT": "Cocine las aves, enteras o picadas, a 74 °C en la parte más gruesa. No las lave crudas.",
    "cook-mince":
      "Cocine la carne picada, las hamburguesas y las salchichas a 71 °C (160 °F) en el centro: nada debe quedar crudo.",
    "cook-mince US":
      "Cocine la carne picada, las hamburguesas y las salchichas a 160 °F en el centro: nada debe quedar crudo.",
    "cook-mince CA":
      "Cocine la carne picada, las hamburguesas y las salchichas a 71 °C en el centro: nada debe quedar crudo.",
    "cook-mince GB":
      "Cocine la carne picada, las hamburguesas y las salchichas hasta que el centro haya estado a 70 °C durante 2 minutos: nada debe quedar crudo.",
    "cook-mince INT":
      "Cocine la carne picada, las hamburguesas y las salchichas a 71 °C en el centro: nada debe quedar crudo.",
    "cook-fish":
      "Cocine el pescado y el marisco a 70 °C (158 °F) en el centro, hasta que el pescado se deshaga en láminas y las conchas se hayan abierto.",
    "cook-fish US":
      "Cocine el pescado y el marisco a 145 °F en el centro, hasta que el pescado se deshaga en láminas y las conchas se hayan abierto.",
    "cook-fish CA":
      "Cocine el pescado a 70 °C y el marisco a 74 °C en el centro, hasta que el pescado se deshaga en láminas y las conchas se hayan abierto.",
    "cook-fish GB":
      "Cocine el pescado y el marisco hasta que el centro haya estado a 70 °C durante 2 minutos, el pescado se deshaga en láminas y las conchas se hayan abierto.",
    "cook-fish INT":
      "Cocine el pescado y el marisco a 70 °C en el centro, hasta que el pescado se deshaga en láminas y las conchas se hayan abierto.",
    "cook-eggs": "Cocine los huevos hasta que la clara y la yema estén firmes, y los platos de huevo a 71 °C (160 °F).",
    "cook-eggs US": "Cocine los huevos hasta que la clara y la yema estén firmes, y los platos de huevo a 160 °F.",
    "cook-eggs CA": "Cocine los huevos hasta que la clara y la yema estén firmes, y los platos de huevo a 74 °C.",
    "cook-eggs GB":
      "Cocine los huevos hasta que la clara y la yema estén firmes, y los platos de huevo hasta que el centro haya estado a 70 °C durante 2 minutos.",
    "cook-eggs INT": "Cocine los huevos hasta que la clara y la yema estén firmes, y los platos de huevo a 71 °C.",
    "honey-under-one-year":
      "La miel no es para bebés de menos de 12 meses, ni cruda ni horneada: puede causar botulismo infantil.",
  },
};
