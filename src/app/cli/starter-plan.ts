import type { MeasureSystem } from "../../domain/model/amount.js";
import { measureSystemWords } from "../../imports/documents/schemas/shared-schemas.js";

export const starterLanguages = ["en", "de", "fr", "es", "pl"] as const;
type StarterLanguage = (typeof starterLanguages)[number];

interface Words {
  readonly head: string;
  readonly lines: string;
  readonly yields: string;
  readonly keeps: string;
  readonly publisher: string;
  readonly component: string;
  readonly rest: string;
  readonly barley: (amount: string) => string;
  readonly boiled: (amount: string) => string;
  readonly carrots: (amount: string) => string;
  readonly oil: string;
  readonly salt: string;
  readonly boil: string;
  readonly chill: string;
  readonly box: string;
  readonly plan: string;
  readonly meals: readonly [string, string];
  readonly warm: string;
  readonly toss: string;
  /** Said above a translation that is commented out. */
  readonly translate: string;
}

const words: Readonly<Record<StarterLanguage, Words>> = {
  en: {
    head: "Your first plan: one component, made ahead on Sunday, and two meals from it. Check it with: prepwright check --explain plan.yaml",
    lines: "A line may be written as on paper, or with keys",
    yields: "what it weighs when you have made it: weigh it once",
    keeps: "a word of a closed list; published keeping times of it are the longest that count",
    publisher: "the short name of your publisher",
    component: "Sunday barley",
    rest: "the day of the session is day 0",
    barley: (amount) => `${amount} pearl barley, rinsed`,
    boiled: (amount) => `${amount} Sunday barley`,
    carrots: (amount) => `${amount} carrots, grated`,
    oil: "2 tbsp olive oil",
    salt: "salt, to taste",
    boil: "Boil the barley in the water until tender.",
    chill: "Drain, spread in shallow boxes and chill within two hours.",
    box: "shallow box with a lid",
    plan: "Barley, twice",
    meals: ["Warm barley with carrots", "Barley salad"],
    warm: "Warm the barley and stir in the carrots and the oil.",
    toss: "Turn everything together.",
    translate: "In a second language too? Take the # off the lines below; what you leave out is shown as written above",
  },
  de: {
    head: "Dein erster Plan: eine Komponente, am Sonntag vorgekocht, und zwei Mahlzeiten daraus. Prüfe ihn mit: prepwright check --explain plan.yaml",
    lines: "Eine Zeile darf stehen wie auf Papier, oder mit Schlüsseln",
    yields: "was es fertig wiegt: einmal wiegen",
    keeps: "ein Wort einer festen Liste; veröffentlichte Haltbarkeiten dazu gelten höchstens",
    publisher: "der Kurzname deines Herausgebers",
    component: "Sonntagsgraupen",
    rest: "der Tag des Vorkochens ist Tag 0",
    barley: (amount) => `${amount} Perlgraupen, gewaschen`,
    boiled: (amount) => `${amount} Sonntagsgraupen`,
    carrots: (amount) => `${amount} Karotten, geraspelt`,
    oil: "2 EL Olivenöl",
    salt: "Salz, nach Geschmack",
    boil: "Die Graupen im Wasser weich kochen.",
    chill: "Abgießen, in flache Dosen geben und binnen zwei Stunden kalt stellen.",
    box: "flache Dose mit Deckel",
    plan: "Graupen, zweimal",
    meals: ["Warme Graupen mit Karotten", "Graupensalat"],
    warm: "Die Graupen erwärmen, Karotten und Öl unterrühren.",
    toss: "Alles mischen.",
    translate:
      "Auch in einer zweiten Sprache? Nimm das # vor den Zeilen weg; was du auslässt, erscheint wie oben geschrieben",
  },
  fr: {
    head: "Votre premier plan : une préparation faite le dimanche, et deux repas avec. Vérifiez-le par : prepwright check --explain plan.yaml",
    lines: "Une ligne s'écrit comme sur le papier, ou avec des clés",
    yields: "ce que cela pèse une fois prêt : pesez-le une fois",
    keeps: "un mot d'une liste fermée ; les durées de conservation publiées sont le maximum",
    publisher: "le nom court de votre éditeur",
    component: "Orge du dimanche",
    rest: "le jour de la préparation est le jour 0",
    barley: (amount) => `${amount} d'orge perlé, rincé`,
    boiled: (amount) => `${amount} d'orge du dimanche`,
    carrots: (amount) => `${amount} de carottes, râpées`,
    oil: "2 c. à soupe d'huile d'olive",
    salt: "sel, au goût",
    boil: "Cuire l'orge dans l'eau jusqu'à ce qu'il soit tendre.",
    chill: "Égoutter, étaler dans des boîtes plates et mettre au froid dans les deux heures.",
    box: "boîte plate avec couvercle",
    plan: "Orge, deux fois",
    meals: ["Orge chaud aux carottes", "Salade d'orge"],
    warm: "Réchauffer l'orge, ajouter les carottes et l'huile.",
    toss: "Mélanger le tout.",
    translate:
      "Aussi dans une deuxième langue ? Enlevez le # des lignes suivantes ; ce qui manque s'affiche comme écrit plus haut",
  },
  es: {
    head: "Su primer plan: una preparación hecha el domingo y dos comidas con ella. Compruébelo con: prepwright check --explain plan.yaml",
    lines: "Una línea se escribe como en papel, o con claves",
    yields: "lo que pesa una vez hecha: péselo una vez",
    keeps: "una palabra de una lista cerrada; los tiempos de conservación publicados son el máximo",
    publisher: "el nombre corto de su editorial",
    component: "Cebada del domingo",
    rest: "el día de la sesión es el día 0",
    barley: (amount) => `${amount} de cebada perlada, enjuagada`,
    boiled: (amount) => `${amount} de cebada del domingo`,
    carrots: (amount) => `${amount} de zanahorias, ralladas`,
    oil: "2 cucharadas de aceite de oliva",
    salt: "sal, al gusto",
    boil: "Cocer la cebada en el agua hasta que esté tierna.",
    chill: "Escurrir, extender en recipientes planos y enfriar antes de dos horas.",
    box: "recipiente plano con tapa",
    plan: "Cebada, dos veces",
    meals: ["Cebada caliente con zanahorias", "Ensalada de cebada"],
    warm: "Calentar la cebada y mezclar con las zanahorias y el aceite.",
    toss: "Mezclar todo.",
    translate:
      "¿También en otro idioma? Quite el # de las líneas siguientes; lo que falte se muestra como está escrito arriba",
  },
  pl: {
    head: "Pierwszy plan: jedna rzecz ugotowana w niedzielę i dwa posiłki z niej. Sprawdź go: prepwright check --explain plan.yaml",
    lines: "Wiersz można pisać jak na kartce albo z kluczami",
    yields: "ile waży po zrobieniu: zważ raz",
    keeps: "słowo z zamkniętej listy; opublikowane czasy przechowywania są najdłuższymi",
    publisher: "krótka nazwa wydawcy",
    component: "Kasza niedzielna",
    rest: "dzień gotowania to dzień 0",
    barley: (amount) => `${amount} kasza perłowa, opłukana`,
    boiled: (amount) => `${amount} kasza niedzielna`,
    carrots: (amount) => `${amount} marchewki, starte`,
    oil: "2 łyżki oliwa z oliwek",
    salt: "sól, do smaku",
    boil: "Gotować kaszę w wodzie do miękkości.",
    chill: "Odcedzić, rozłożyć w płaskich pojemnikach i schłodzić w ciągu dwóch godzin.",
    box: "płaski pojemnik z pokrywką",
    plan: "Kasza dwa razy",
    meals: ["Ciepła kasza z marchewką", "Sałatka z kaszy"],
    warm: "Podgrzać kaszę, wmieszać marchewkę i oliwę.",
    toss: "Wymieszać wszystko.",
    translate: "Także w drugim języku? Usuń znak # z poniższych wierszy; czego brakuje, pokazuje się tak jak wyżej",
  },
};

interface FirstWeek {
  readonly language: StarterLanguage;
  readonly locale: string;
  readonly measures: MeasureSystem;
  /** ISO 3166 code; null: the plan names none. */
  readonly region: string | null;
  readonly publisher: string;
}

/** A plan of two meals and the component they share, as a document to start from, its remarks in the writer's language. */
export function starterPlan({ language, locale, measures, region, publisher }: FirstWeek): string {
  const say = words[language];
  const second = language === "en" ? "de" : "en";
  const isPounds = measures === "US_CUSTOMARY";
  const [barley, water, weight, portion, carrots] = isPounds
    ? ["10 oz", "2 us quart", "2 lb", "14 oz", "1/2 lb"]
    : ["300 g", "2 l", "900 g", "400 g", "200 g"];
  return `# ${say.head}
kind: component
slug: sunday-barley
title: ${say.component}
locale: ${locale}
measured-in: ${measureSystemWords[measures]}
# ${say.lines}
lines:
  - ${say.barley(barley)}
  - { food: water, amount: ${water}, rule: per batch }
yield: { amount: ${weight}, source: writer } # ${say.yields}
batches: { at-least: 1/2, at-most: 3 }
steps:
  - { do: "${say.boil}", time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley, water], drains: yes }
  - { do: "${say.chill}", time: 6 min, wait-at-most: 30 min, chills: yes }
keeps-as: cooked-grain # ${say.keeps}
keeping:
  - { place: fridge, days: 3, container: "${say.box}", source: writer }
cautions: [cool-quickly, keep-cold, reheat-until-steaming]
---
kind: plan
publisher: ${publisher} # ${say.publisher}
slug: first-plan
title: "${say.plan}"
locale: ${locale}
${region === null ? "" : `region: ${region}\n`}measured-in: ${measureSystemWords[measures]}
serves: 2
kitchen: { cooks: 1, appliances: { hob-ring: 2 } }
meals:
  - slug: first
    title: "${say.meals[0]}"
    day: 0 # ${say.rest}
    lines:
      - ${say.boiled(portion)}
      - ${say.carrots(carrots)}
      - ${say.oil}
    steps: [{ do: "${say.warm}", time: 10 min, appliance: hob-ring }]
  - slug: second
    title: "${say.meals[1]}"
    day: 1
    at: "12:30"
    lines:
      - ${say.boiled(portion)}
      - ${say.carrots(carrots)}
      - ${say.salt}
    steps: [{ do: "${say.toss}", time: 10 min }]
# ${say.translate}
# ---
# kind: translation
# plan: first-plan
# language: ${second}
# title: "${words[second].plan}"
# meals: { first: { title: "${words[second].meals[0]}" } }
`;
}
