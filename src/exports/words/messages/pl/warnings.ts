import type { Translation } from "../../message.js";
import type { warnings as english } from "../en/warnings.js";

export const warnings: Translation<typeof english> = {
  missing: {
    DENSITY: "masa mililitra",
    GRAMS_OF_ONE_PIECE: "masa jednej sztuki",
    MILLILITRES_OF_ONE_PIECE: "objętość jednej sztuki",
    YIELD_OF_ONE_BATCH: "wydajność jednej partii",
    OWN_MEASURE: "wielkość jednej sztuki",
    UNIT: "jednostka",
  },
  warning: {
    NOT_COMBINED: "Ilości produktu „{food}” pozostają w osobnych wierszach, bo brakuje danych: {missing}.",
    PART_NOT_COUNTED:
      "Nie da się obliczyć, ile „{food}” potrzeba na „{part}”, bo brakuje danych: {missing}. Kup wystarczająco dużo.",
    EDIBLE_PORTION_UNKNOWN:
      "Nie wiadomo, ile „{food}”{form, select, none {} other { ({form})}} ubywa przy obieraniu. Lista podaje ilość po obraniu; kup trochę więcej.",
    PRICE_UNKNOWN: "Cena „{food}” nie jest znana, dlatego nie ma jej w żadnej sumie.",
    PACK_NOT_COMPARABLE: "Opakowania „{pack}” produktu „{food}” nie uwzględniono, bo brakuje danych: {missing}.",
    ON_HAND_NOT_COMPARABLE: "Zapasu „{item}” nie odjęto, bo brakuje danych: {missing}.",
    ON_HAND_IN_OTHER_FORM:
      "Z zapasu „{from}” można zrobić około {gives} „{item}”; na całość potrzeba około {wouldTake}. Nie policzono go; podaj, jeśli ma się liczyć.",
    ON_HAND_NOT_NEEDED: "Zapas „{item}” nie jest tu potrzebny.",
    ON_HAND_TOO_OLD: "Zapas „{item}” jest po terminie ({date}), dlatego niczego z niego nie policzono.",
    ON_HAND_NOT_IN_TIME:
      "Zapas „{item}” będzie po terminie ({date}), gdy {count, plural, one {przyjdzie pora na ten posiłek} few {przyjdzie pora na te posiłki} many {przyjdzie pora na te posiłki} other {przyjdzie pora na te posiłki}}, i tam go nie policzono: {meals}.",
    DIET_NOT_MET:
      "{how, select, unknown {Nie wiadomo, czy „{item}” pasuje do diety „{diet}”. Sprawdź etykietę.} none {„{item}” nie pasuje do diety „{diet}”, a plan nie podaje zamiennika.} other {„{item}” nie pasuje do diety „{diet}”, a nie wybrano żadnego z podanych zamienników ({offered}).}}",
    ALLERGEN_NOT_AVOIDED:
      "{how, select, unknown {Nie wiadomo, czy „{item}” zawiera ten alergen: {allergen}. Sprawdź etykietę.} may {„{item}” może zawierać śladowe ilości: {allergen}.} none {„{item}” zawiera: {allergen}. Plan nie podaje zamiennika.} other {„{item}” zawiera: {allergen}. Nie wybrano żadnego z podanych zamienników ({offered}).}}",
    DISLIKE_NOT_AVOIDED: "„{item}” zostaje (posiłki: {meals}): plan nie podaje odpowiedniego zamiennika.",
    DISLIKE_LEFT_OUT:
      "„{item}” nie jest konieczne (posiłki: {meals}), więc zostało pominięte. Kroki mogą nadal je wymieniać.",
    SWAP_NOT_OFFERED: "Żaden wiersz nie przewiduje „{to}” zamiast „{from}”, dlatego niczego nie zamieniono.",
    SWAP_NOT_CONVERTIBLE: "„{to}” nie może zastąpić „{from}”, bo brakuje danych: {missing}. Wiersz zostaje bez zmian.",
    MADE_IN_TWO_PLANS: "„{component}” powstaje w więcej niż jednym planie ({plans}), w każdym osobno.",
    LEFT_OVER: "Zostaje trochę „{component}”.",
    LEFT_OVER_FOR:
      "Zostaje trochę „{component}”: wystarczy jeszcze na {count, plural, one {# porcję} few {# porcje} many {# porcji} other {# porcji}}.",
    PART_TOO_OLD:
      "„{part}” z „{food}” po rozkrojeniu zachowuje trwałość {keeps}, więc „{meal}” w dniu {day} nie może brać z kawałka rozkrojonego w dniu {cutOn}. Rozkrój świeży; lista go uwzględnia.",
    BUY_LATER: "„{food}”, trwałość {keeps}: część na {meals} kup później, nie wcześniej niż w dniu {day}.",
    MEAL_BEFORE_SESSION:
      "„{meal}” ma być na {at} w dniu gotowania, które zaczyna się o {start}. Zacznij wcześniej, zjedz później albo przygotuj składniki dzień wcześniej i pamiętaj o ich trwałości.",
    KEEPING_UNKNOWN:
      "Dla „{item}” nie ma czasu przechowywania. Stosuj się do lokalnych zaleceń bezpieczeństwa żywności.",
    KEEPING_CLASS_UNKNOWN:
      "„{item}” ma klasę „{keepsAs}”, której opublikowane zasady nie znają. Dlatego podano najkrótszy czas ze wszystkich klas: stosuj się do niego albo do lokalnych zaleceń bezpieczeństwa żywności.",
    REGION_NOT_GIVEN: "Nie podano regionu, dlatego przyjęto najsurowszą zasadę: dla {used}.",
  },
  gathered: {
    NOT_COMBINED: "W osobnych wierszach, bo brakuje danych ({missing}): {things}.",
    EDIBLE_PORTION_UNKNOWN:
      "Nie wiadomo, ile ubywa przy obieraniu: {things}. Lista podaje ilość po obraniu; kup trochę więcej.",
    PACK_NOT_COMPARABLE: "Pominięte opakowania, bo brakuje danych ({missing}): {things}.",
    ON_HAND_NOT_COMPARABLE: "Jest w domu, ale nie odjęto, bo brakuje danych ({missing}): {things}.",
    ON_HAND_TOO_OLD: "Jest w domu, po terminie, nie policzono: {things}.",
    ON_HAND_NOT_NEEDED: "Jest w domu, tu niepotrzebne: {things}.",
    DIET_NOT_MET:
      "{how, select, unknown {Nie wiadomo, czy pasuje do diety „{diet}”: {things}. Sprawdź etykiety.} none {Nie pasuje do diety „{diet}”, brak zamiennika: {things}.} other {Nie pasuje do diety „{diet}”, a nie wybrano żadnego z zamienników: {things}.}}",
    ALLERGEN_NOT_AVOIDED:
      "{how, select, unknown {Nie wiadomo, czy zawiera ten alergen ({allergen}): {things}. Sprawdź etykiety.} may {Może zawierać śladowe ilości ({allergen}): {things}.} none {Zawiera ten alergen ({allergen}), brak zamiennika: {things}.} other {Zawiera ten alergen ({allergen}), a nie wybrano żadnego z zamienników: {things}.}}",
    SWAP_NOT_OFFERED: "Nie zamieniono, bo żaden wiersz tego nie przewiduje: {things}.",
    MADE_IN_TWO_PLANS: "Powstaje w więcej niż jednym planie, w każdym osobno: {things}.",
    LEFT_OVER: "Zostaje: {things}.",
    enoughFor:
      "{component} (wystarczy jeszcze na {count, plural, one {# porcję} few {# porcje} many {# porcji} other {# porcji}})",
    BUY_LATER: "Kup później, nie wcześniej niż w dniu {day}: {things}.",
    shareToBuy: "{food} na {meals} (trwałość: {keeps})",
    KEEPING_UNKNOWN: "Brak czasu przechowywania: {things}. Stosuj się do lokalnych zaleceń bezpieczeństwa żywności.",
  },
};
