import type { Translation } from "../../message.js";
import type { advice as english } from "../en/advice.js";

export const advice: Translation<typeof english> = {
  quoted: "„{name}”",
  advice: {
    share: "{amount} na „{meal}” (dzień {day})",
    shareUnknown: "część na „{meal}” (dzień {day})",
    FREEZE:
      "{way, select, first {} other {Albo: }}W dniu przygotowania zamroź: {portions}. Przed posiłkiem przełóż do lodówki z wyprzedzeniem: {before}. Po rozmrożeniu trwałość: {after}.",
    laterMeal: "„{meal}” (dzień {day}) nie wcześniej niż w dniu {notBefore}",
    MAKE_LATER: "{way, select, first {} other {Albo: }}„{component}”: przygotuj później część na {meals}.",
    SWAP_DAYS: "{way, select, first {} other {Albo: }}Zamień dni: „{meal}” i „{with}”.",
    EAT_EARLIER: "{way, select, first {} other {Albo: }}„{meal}” zjedz najpóźniej w dniu {day}.",
    EAT_IT_EARLIER: "{way, select, first {} other {Albo: }}Zjedz najpóźniej w dniu {day}.",
    SHOP_TWICE: "{way, select, first {} other {Albo: }}Kup później, nie wcześniej niż w dniu {day}: {food} na {meals}.",
    EAT_BEFORE:
      "Tu liczą się godziny: po przygotowaniu trwałość wynosi {hours, plural, one {# godzinę} few {# godziny} many {# godzin} other {# godziny}}, do dnia {day}{until, select, none {} other {, do godziny {until}}}.",
    NO_PUBLISHED_RULE:
      "Nie obejmuje tego żadna opublikowana zasada; czas podaje sam plan. Stosuj się do lokalnych zaleceń bezpieczeństwa żywności.",
    WRITER_EXCEEDS_RULE: "Plan podaje {writer}, opublikowana zasada {rule}; obowiązuje krótszy czas.",
    REGION_WITHOUT_RULE: "Nie znamy tu zasad dla {asked}; użyto zasad dla {used}. Zapytaj lokalny urząd.",
    tooLate: "Za późno na {meals}: {thing}, trwałość {keeps}. {advice}",
  },
};
