/** What the element itself says. What is said of a plan comes with its card, in the reader's language already. */
export interface EmbedWords {
  readonly people: string;
  readonly update: string;
  /** With the number of people behind it. */
  readonly workedOut: string;
  readonly loading: string;
  readonly servings: string;
  readonly noAddress: string;
  readonly slow: string;
  readonly unreachable: string;
  readonly session: string;
  readonly busy: string;
  readonly perPerson: string;
  readonly meals: string;
  readonly list: string;
  readonly allergens: string;
  readonly keeping: string;
  readonly keepingUnknown: string;
  readonly care: string;
  readonly whole: string;
  readonly wholeElsewhere: string;
  readonly by: string;
}

const english: EmbedWords = {
  people: "How many people?",
  update: "Update amounts",
  workedOut: "People this is for:",
  loading: "Loading the plan.",
  servings: "Please enter a whole number of people, 1 or more.",
  noAddress: "This plan has no address that can be read.",
  slow: "This takes too long. Please follow the link.",
  unreachable: "The plan cannot be reached just now. Please try again, or follow the link.",
  session: "Cooking ahead",
  busy: "you are busy for",
  perPerson: "per person",
  meals: "Meals",
  list: "Shopping list",
  allergens: "Allergens",
  keeping: "How long it keeps",
  keepingUnknown: "No storage time is known for these. Follow the pack and your local food-safety advice:",
  care: "Food safety",
  whole: "Everything about this plan",
  wholeElsewhere: "Everything about this plan is on its own page",
  by: "by",
};

const german: EmbedWords = {
  people: "Für wie viele Personen?",
  update: "Mengen anpassen",
  workedOut: "Berechnet für Personen:",
  loading: "Der Plan wird geladen.",
  servings: "Bitte eine ganze Zahl von Personen eingeben, mindestens 1.",
  noAddress: "Dieser Plan hat keine lesbare Adresse.",
  slow: "Das dauert zu lange. Bitte dem Link folgen.",
  unreachable: "Der Plan ist gerade nicht erreichbar. Bitte noch einmal versuchen oder dem Link folgen.",
  session: "Vorkochen",
  busy: "davon aktive Arbeit",
  perPerson: "pro Person",
  meals: "Mahlzeiten",
  list: "Einkaufsliste",
  allergens: "Allergene",
  keeping: "Haltbarkeit",
  keepingUnknown: "Dafür ist keine Haltbarkeit bekannt. Bitte die Packung und die örtlichen Empfehlungen beachten:",
  care: "Lebensmittelsicherheit",
  whole: "Alles zu diesem Plan",
  wholeElsewhere: "Alles zu diesem Plan steht auf seiner eigenen Seite",
  by: "von",
};

const french: EmbedWords = {
  people: "Pour combien de personnes ?",
  update: "Adapter les quantités",
  workedOut: "Nombre de personnes :",
  loading: "Chargement du plan.",
  servings: "Indiquez un nombre entier de personnes, au moins 1.",
  noAddress: "Ce plan n’a pas d’adresse lisible.",
  slow: "La réponse tarde trop. Suivez le lien.",
  unreachable: "Le plan est injoignable pour le moment. Réessayez ou suivez le lien.",
  session: "Préparation à l’avance",
  busy: "dont travail actif",
  perPerson: "par personne",
  meals: "Repas",
  list: "Liste de courses",
  allergens: "Allergènes",
  keeping: "Conservation",
  keepingUnknown: "Aucune durée de conservation connue. Suivez l’emballage et les conseils sanitaires locaux :",
  care: "Sécurité des aliments",
  whole: "Tout sur ce plan",
  wholeElsewhere: "Tout sur ce plan se trouve sur sa propre page",
  by: "par",
};

const spanish: EmbedWords = {
  people: "¿Para cuántas personas?",
  update: "Ajustar cantidades",
  workedOut: "Personas:",
  loading: "Cargando el plan.",
  servings: "Escriba un número entero de personas, 1 como mínimo.",
  noAddress: "Este plan no tiene una dirección legible.",
  slow: "Tarda demasiado. Siga el enlace.",
  unreachable: "Ahora no se puede acceder al plan. Inténtelo de nuevo o siga el enlace.",
  session: "Cocinar por adelantado",
  busy: "trabajo activo",
  perPerson: "por persona",
  meals: "Comidas",
  list: "Lista de la compra",
  allergens: "Alérgenos",
  keeping: "Conservación",
  keepingUnknown: "No se conoce el tiempo de conservación. Siga el envase y los consejos sanitarios locales:",
  care: "Seguridad alimentaria",
  whole: "Todo sobre este plan",
  wholeElsewhere: "Todo sobre este plan está en su propia página",
  by: "de",
};

const polish: EmbedWords = {
  people: "Dla ilu osób?",
  update: "Przelicz ilości",
  workedOut: "Liczba osób:",
  loading: "Wczytywanie planu.",
  servings: "Podaj całkowitą liczbę osób, co najmniej 1.",
  noAddress: "Ten plan nie ma czytelnego adresu.",
  slow: "To trwa zbyt długo. Skorzystaj z łącza.",
  unreachable: "Plan jest teraz niedostępny. Spróbuj ponownie albo skorzystaj z łącza.",
  session: "Gotowanie na zapas",
  busy: "w tym aktywna praca",
  perPerson: "na osobę",
  meals: "Posiłki",
  list: "Lista zakupów",
  allergens: "Alergeny",
  keeping: "Przechowywanie",
  keepingUnknown: "Czas przechowywania nie jest znany. Kieruj się opakowaniem i lokalnymi zaleceniami:",
  care: "Bezpieczeństwo żywności",
  whole: "Wszystko o tym planie",
  wholeElsewhere: "Wszystko o tym planie jest na jego własnej stronie",
  by: "autor:",
};

const languages: Readonly<Record<string, EmbedWords>> = {
  en: english,
  de: german,
  fr: french,
  es: spanish,
  pl: polish,
};

/** A tag in one of the languages there are words in; null: it is in another. */
export const spokenTag = (tag: string | null): string | null =>
  tag !== null && Object.hasOwn(languages, languageOf(tag)) ? tag : null;

const languageOf = (tag: string): string => tag.split("-")[0]?.toLowerCase() ?? "";

/** The language of a tag among those there are words in; English where there are none. */
export const embedLanguage = (tag: string | null): string => {
  const language = languageOf(tag ?? "");
  return Object.hasOwn(languages, language) ? language : "en";
};

export const embedWords = (tag: string | null): EmbedWords => languages[embedLanguage(tag)] ?? english;
