import type { Translation } from "../../message.js";
import type { session as english } from "../en/session.js";

export const session: Translation<typeof english> = {
  session: "Arbeitsplan",
  sessionOf: "Kochtag: {title}",
  eveningBefore: "am Vorabend",
  eveningTaskOf: "Am Vorabend: {title}",
  sessionTakes: "Das dauert {all}, davon {hands} aktive Arbeit.",
  longerThanPromised: "Das ist länger als die {promised}, die für den Plan in seiner Grundform angegeben sind.",
  moreThanADay:
    "Das ist mehr Arbeit, als so wenige an einem Tag schaffen. Kochen Sie mit anderen zusammen (bei {cooks} Personen sind es höchstens sechs Stunden für jede), kochen Sie weniger Portionen auf einmal oder bereiten Sie an einem anderen Tag zu, was später gegessen wird.",
  overDays:
    "Auf {sessions} Tage verteilt wird später zubereitet, was später gegessen wird. Die Haltbarkeit wird weiterhin ab dem ersten Tag gerechnet.",
  sessionOfDay: "{day, plural, =0 {Der erste Tag} one {Einen Tag später} other {# Tage später}}",
  madeThen: "Dann zubereitet: {things}.",
  buyRawThen:
    "Was für diesen Tag gebraucht wird, gekühlt aufbewahren, und nichts über das Datum auf der Packung hinaus.",
  stillMoreThanADay:
    "Das ist immer noch mehr Arbeit, als so wenige an einem Tag schaffen: Es wird an diesem Tag gegessen oder passt auf keinen späteren. Kochen Sie mit anderen zusammen (bei {cooks} Personen sind es höchstens sechs Stunden für jede), kochen Sie weniger Portionen oder nehmen Sie etwas davon fertig aus dem Vorrat.",
  lateMeal:
    "„{meal}“ soll um {at} gegessen werden und ist {ready, select, none {erst nach Mitternacht} other {frühestens um {ready}}} fertig. Beginnen Sie früher mit dem Kochen oder essen Sie später.",
  clearingUp: "Danach kommt das Aufräumen: etwa {minutes}.",
  noOrder: "Die Schritte dieses Plans lassen sich in keine Reihenfolge bringen, daher gibt es keinen Zeitplan.",
  noOneSession: "Das alles lässt sich nicht an einem einzigen Kochtag schaffen.",
  time: "Zeit",
  what: "Was",
  work: {
    HANDS_ON: "aktive Arbeit",
    UNATTENDED: "läuft von selbst",
  },
  how: "Wie",
  cook: "Person {numbers}",
  load: "{several, select, no {Durchgang {first} von {of}} other {Durchgänge {first} bis {last} von {of}}}",
  wash: "Abspülen: {machine}",
  machine: "Gerät",
};
