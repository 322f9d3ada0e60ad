import type { Translation } from "../../message.js";
import type { cautionTexts as english } from "../en/caution-texts.js";

export const cautionTexts: Translation<typeof english> = {
  cautionTexts: {
    "local-rules":
      "Diese Zeiten stammen aus den genannten Quellen und sind kein Versprechen. Die örtlichen lebensmittelrechtlichen Vorschriften und Fachleute mit Zulassung gehen vor. Im Zweifel wegwerfen.",
    "allergens-on-labels":
      "Bei jeder Packung das Etikett lesen: Rezepturen ändern sich, Hinweise auf Spuren sind freiwillig, und was hier nicht bekannt ist, kann trotzdem enthalten sein.",
    "keep-cold":
      "Bei höchstens 4 °C (40 °F) aufbewahren. Insgesamt nicht länger als 2 Stunden ungekühlt stehen lassen, über 32 °C (90 °F) nicht länger als 1 Stunde.",
    "keep-cold US":
      "Bei höchstens 40 °F aufbewahren. Insgesamt nicht länger als 2 Stunden ungekühlt stehen lassen, über 90 °F nicht länger als 1 Stunde.",
    "keep-cold GB": "Bei höchstens 5 °C aufbewahren. Insgesamt nicht länger als 4 Stunden ungekühlt stehen lassen.",
    "keep-cold CA": "Bei höchstens 4 °C aufbewahren. Insgesamt nicht länger als 2 Stunden ungekühlt stehen lassen.",
    "keep-cold ANZ":
      "Bei höchstens 5 °C aufbewahren. Was insgesamt weniger als 2 Stunden ungekühlt war, darf zurück in den Kühlschrank; nach insgesamt 4 Stunden wegwerfen.",
    "keep-cold INT":
      "Bei höchstens 4 °C aufbewahren. Insgesamt nicht länger als 2 Stunden ungekühlt stehen lassen, über 32 °C nicht länger als 1 Stunde.",
    "cool-quickly":
      "Gekochtes schnell abkühlen, in flachen, höchstens 5 cm (2 Zoll) hohen Gefäßen: innerhalb von 2 Stunden auf 21 °C (70 °F) und innerhalb von insgesamt 6 Stunden auf 5 °C (41 °F). In großen, tiefen Töpfen kühlt es zu langsam ab.",
    "cool-quickly US":
      "Gekochtes schnell abkühlen, in flachen, höchstens 2 Zoll hohen Gefäßen: innerhalb von 2 Stunden auf 70 °F und innerhalb von insgesamt 6 Stunden auf 41 °F. In großen, tiefen Töpfen kühlt es zu langsam ab.",
    "cool-quickly GB":
      "Gekochtes innerhalb von 1 bis 2 Stunden in flachen Gefäßen abkühlen und dann in den Kühlschrank stellen. In großen, tiefen Töpfen kühlt es zu langsam ab.",
    "cool-quickly INT":
      "Gekochtes schnell abkühlen, in flachen, höchstens 5 cm hohen Gefäßen: innerhalb von 2 Stunden auf 21 °C und innerhalb von insgesamt 6 Stunden auf 5 °C. In großen, tiefen Töpfen kühlt es zu langsam ab.",
    "reheat-until-steaming":
      "Reste auf 74 °C (165 °F) erhitzen, bis sie durch und durch dampfend heiß sind, und nur einmal; Suppen und Soßen sprudelnd aufkochen.",
    "reheat-until-steaming US":
      "Reste auf 165 °F erhitzen, bis sie durch und durch dampfend heiß sind; Suppen und Soßen sprudelnd aufkochen.",
    "reheat-until-steaming GB": "Reste erhitzen, bis sie durch und durch dampfend heiß sind, und nur einmal.",
    "reheat-until-steaming INT":
      "Reste auf 74 °C erhitzen, bis sie durch und durch dampfend heiß sind, und nur einmal; Suppen und Soßen sprudelnd aufkochen.",
    rice: "Gekochten Reis innerhalb einer Stunde abkühlen und kalt stellen; nach dem strengsten Rat innerhalb von 24 Stunden essen. Aufwärmen macht zu langsames Abkühlen nicht ungeschehen: Das Gift übersteht es.",
    "rice US":
      "Gekochten Reis schnell abkühlen und kalt stellen. Aufwärmen macht zu langsames Abkühlen nicht ungeschehen: Das Gift übersteht es.",
    "rice GB":
      "Gekochten Reis innerhalb einer Stunde abkühlen, kalt stellen und innerhalb von 24 Stunden essen. Aufwärmen macht zu langsames Abkühlen nicht ungeschehen: Das Gift übersteht es.",
    "garlic-in-oil":
      "In rohem Knoblauch in Öl kann sich unbemerkt Botulismus-Gift bilden. Im Kühlschrank aufbewahren, nie bei Raumtemperatur, und höchstens 4 Tage, oder einfrieren.",
    "herbs-in-oil":
      "In frischen Kräutern, Knoblauch und Gemüse unter Öl kann sich unbemerkt Botulismus-Gift bilden. Im Kühlschrank aufbewahren, nie bei Raumtemperatur, höchstens 2 bis 3 Tage, oder einfrieren.",
    "kidney-beans":
      "Getrocknete Kidneybohnen sind giftig, bis sie gekocht wurden. Mindestens 5 Stunden einweichen, das Wasser wegschütten und in frischem Wasser 30 Minuten kochen. Bohnen aus der Dose sind schon gekocht.",
    "kidney-beans-slow-cooker":
      "Rohe Kidneybohnen nie im Schongarer garen: Er wird nicht heiß genug, um das Gift zu zerstören. Vorher kochen, wie oben beschrieben.",
    "soak-in-the-fridge": "Wird länger als 4 Stunden eingeweicht, gehört es in den Kühlschrank.",
    sprouts:
      "Rohe Sprossen können gefährliche Keime tragen, die Waschen nicht entfernt. Kalt stellen; gefährdete Personen sollten sie gekocht essen oder gar nicht.",
    "cut-leaves": "Geschnittenes Blattgemüse muss im Kühlschrank bleiben.",
    "cut-fruit": "Angeschnittene Melonen, Tomaten und anderes Obst müssen im Kühlschrank bleiben.",
    "raw-egg":
      "Enthält rohes Ei. Höchstens 3 bis 4 Tage im Kühlschrank aufbewahren; nicht für kleine Kinder, ältere Menschen, Schwangere oder Menschen mit schwachem Immunsystem.",
    "soaked-nuts":
      "Wie lange eingeweichte Nüsse und Cremes daraus haltbar sind, wird nirgends veröffentlicht. Ersatzweise gilt die Regel für Reste.",
    "packed-without-air":
      "Ohne Luft (vakuumiert) verpackt ist zu Hause nichts länger haltbar, und es kann Botulismus-Gift entstehen. Es gelten dieselben Tage wie in einer Vorratsdose.",
    "thaw-in-the-fridge":
      "Im Kühlschrank auftauen, in kaltem Wasser, das alle 30 Minuten gewechselt wird, oder in der Mikrowelle; was schnell aufgetaut wurde, sofort garen. Nie auf der Arbeitsplatte auftauen.",
    "cook-poultry":
      "Geflügel, ganz oder als Hackfleisch, an der dicksten Stelle auf 74 °C (165 °F) garen. Roh nicht waschen.",
    "cook-poultry US":
      "Geflügel, ganz oder als Hackfleisch, an der dicksten Stelle auf 165 °F garen. Roh nicht waschen.",
    "cook-poultry CA":
      "Geflügel in Stücken oder als Hackfleisch an der dicksten Stelle auf 74 °C garen, ganze Tiere auf 82 °C. Roh nicht waschen.",
    "cook-poultry GB":
      "Geflügel garen, bis es in der Mitte 2 Minuten lang 70 °C hatte und nichts mehr rosa ist. Roh nicht waschen.",
    "cook-poultry INT":
      "Geflügel, ganz oder als Hackfleisch, an der dicksten Stelle auf 74 °C garen. Roh nicht waschen.",
    "cook-mince": "Hackfleisch, Frikadellen und Würste in der Mitte auf 71 °C (160 °F) garen: Nichts darf roh bleiben.",
    "cook-mince US": "Hackfleisch, Frikadellen und Würste in der Mitte auf 160 °F garen: Nichts darf roh bleiben.",
    "cook-mince CA": "Hackfleisch, Frikadellen und Würste in der Mitte auf 71 °C garen: Nichts darf roh bleiben.",
    "cook-mince GB":
      "Hackfleisch, Frikadellen und Würste garen, bis die Mitte 2 Minuten lang 70 °C hatte: Nichts darf roh bleiben.",
    "cook-mince INT": "Hackfleisch, Frikadellen und Würste in der Mitte auf 71 °C garen: Nichts darf roh bleiben.",
    "cook-fish":
      "Fisch und Meeresfrüchte in der Mitte auf 70 °C (158 °F) garen, bis der Fisch sich leicht zerteilen lässt und die Schalen sich geöffnet haben.",
    "cook-fish US":
      "Fisch und Meeresfrüchte in der Mitte auf 145 °F garen, bis der Fisch sich leicht zerteilen lässt und die Schalen sich geöffnet haben.",
    "cook-fish CA":
      "Fisch in der Mitte auf 70 °C, Meeresfrüchte auf 74 °C garen, bis der Fisch sich leicht zerteilen lässt und die Schalen sich geöffnet haben.",
    "cook-fish GB":
      "Fisch und Meeresfrüchte garen, bis die Mitte 2 Minuten lang 70 °C hatte, der Fisch sich leicht zerteilen lässt und die Schalen sich geöffnet haben.",
    "cook-fish INT":
      "Fisch und Meeresfrüchte in der Mitte auf 70 °C garen, bis der Fisch sich leicht zerteilen lässt und die Schalen sich geöffnet haben.",
    "cook-eggs": "Eier garen, bis Eiweiß und Eigelb fest sind, Eierspeisen auf 71 °C (160 °F).",
    "cook-eggs US": "Eier garen, bis Eiweiß und Eigelb fest sind, Eierspeisen auf 160 °F.",
    "cook-eggs CA": "Eier garen, bis Eiweiß und Eigelb fest sind, Eierspeisen auf 74 °C.",
    "cook-eggs GB":
      "Eier garen, bis Eiweiß und Eigelb fest sind, Eierspeisen, bis die Mitte 2 Minuten lang 70 °C hatte.",
    "cook-eggs INT": "Eier garen, bis Eiweiß und Eigelb fest sind, Eierspeisen auf 71 °C.",
    "honey-under-one-year":
      "Honig ist nichts für Babys unter 12 Monaten, weder roh noch gebacken: Er kann Säuglingsbotulismus auslösen.",
  },
};
