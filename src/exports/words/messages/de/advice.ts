import type { Translation } from "../../message.js";
import type { advice as english } from "../en/advice.js";

export const advice: Translation<typeof english> = {
  quoted: "„{name}“",
  advice: {
    share: "{amount} für „{meal}“ (Tag {day})",
    shareUnknown: "den Anteil für „{meal}“ (Tag {day})",
    FREEZE:
      "{way, select, first {} other {Oder: }}Am Tag der Zubereitung einfrieren: {portions}. Zum Auftauen in den Kühlschrank legen: {before} vor der Mahlzeit. Aufgetaut noch haltbar: {after}.",
    laterMeal: "„{meal}“ (Tag {day}) frühestens an Tag {notBefore}",
    MAKE_LATER: "{way, select, first {} other {Oder: }}{component} später zubereiten, den Anteil für {meals}.",
    SWAP_DAYS: "{way, select, first {} other {Oder: }}Die Tage von „{meal}“ und „{with}“ tauschen.",
    EAT_EARLIER: "{way, select, first {} other {Oder: }}„{meal}“ spätestens an Tag {day} essen.",
    EAT_IT_EARLIER: "{way, select, first {} other {Oder: }}Spätestens an Tag {day} essen.",
    SHOP_TWICE: "{way, select, first {} other {Oder: }}{food} für {meals} später kaufen, frühestens an Tag {day}.",
    EAT_BEFORE:
      "Hier zählen Stunden: Nach der Zubereitung ist es {hours, plural, one {# Stunde} other {# Stunden}} haltbar; diese Zeit endet an Tag {day}{until, select, none {} other {, um {until}}}.",
    NO_PUBLISHED_RULE:
      "Dafür gibt es keine veröffentlichte Regel; die Dauer ist eine Angabe des Plans. Beachten Sie die örtlichen Empfehlungen zur Lebensmittelsicherheit.",
    WRITER_EXCEEDS_RULE: "Der Plan gibt {writer} an, eine veröffentlichte Regel {rule}; die kürzere Dauer gilt.",
    REGION_WITHOUT_RULE:
      "Für {asked} ist hier keine Regel bekannt; verwendet wurden die für {used}. Fragen Sie Ihre örtliche Behörde.",
    tooLate: "Zu spät für {meals}: {thing} ist {keeps} haltbar. {advice}",
  },
};
