import type { Translation } from "../../message.js";
import type { general as english } from "../en/general.js";

export const general: Translation<typeof english> = {
  forServings: "Für {count, plural, one {# Portion} other {# Portionen}}",
  servings: "{count, plural, one {# Portion} other {# Portionen}}",
  days: "{count, plural, one {# Tag} other {# Tage}}",
  hours: "{count, plural, one {# Stunde} other {# Stunden}}",
  foods: "{count, plural, one {# Lebensmittel} other {# Lebensmittel}}",
  roughly: "etwa {amount}",
  dayOfPlan: "{day, plural, =0 {Kochtag} one {# Tag nach dem Kochtag} other {# Tage nach dem Kochtag}}",
  by: "Von",
  revision: "Fassung {number}, veröffentlicht: {date}",
  withdrawn: "Diese Fassung wurde vom Herausgeber zurückgezogen.",
  changed: "Was sich geändert hat",
  thisRevision: "Diese Fassung",
  newestRevision: "Die neueste Fassung",
  calendar: "Als Kalender",
  listAddress: "Nur die Einkaufsliste",
  warnings: "Gut zu wissen",
  source: "Quelle: {titles}",
  restsOn: "Beruht auf: {titles}",
  about: "Betrifft: {things}.",
  cautions: "Beim Kochen beachten",
  regionUnknown:
    "Für diesen Plan ist kein Land angegeben. Deshalb gelten die strengsten Regeln aller Regionen, und alle Allergenlisten werden berücksichtigt. Geben Sie Ihr Land an, damit dessen Regeln gelten.",
  regionNamed:
    "Es gelten die Regeln und die Allergenliste für {region}; so gibt es {by, select, PLAN {der Plan} other {der Herausgeber}} an. Geben Sie Ihr eigenes Land an, damit dessen Regeln gelten.",
  regionStandsIn:
    "Für einen Teil davon ist hier keine Regel für {region} bekannt; ersatzweise gelten dort die für {others}. Fragen Sie Ihre örtliche Behörde.",
};
