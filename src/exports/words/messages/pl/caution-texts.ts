import type { Translation } from "../../message.js";
import type { cautionTexts as english } from "../en/caution-texts.js";

export const cautionTexts: Translation<typeof english> = {
  cautionTexts: {
    "local-rules":
      "Te czasy pochodzą z podanych źródeł i nie są obietnicą. Pierwszeństwo mają lokalne przepisy o bezpieczeństwie żywności i uprawnieni specjaliści. W razie wątpliwości wyrzuć.",
    "allergens-on-labels":
      "Czytaj etykietę każdego opakowania: receptury się zmieniają, ostrzeżenia o śladowych ilościach są dobrowolne, a brak danych nie oznacza, że czegoś nie ma w produkcie.",
    "keep-cold":
      "Przechowuj w temperaturze najwyżej 4 °C (40 °F). Nie zostawiaj poza lodówką łącznie dłużej niż 2 godziny, a powyżej 32 °C (90 °F) dłużej niż 1 godzinę.",
    "keep-cold US":
      "Przechowuj w temperaturze najwyżej 40 °F. Nie zostawiaj poza lodówką łącznie dłużej niż 2 godziny, a powyżej 90 °F dłużej niż 1 godzinę.",
    "keep-cold GB": "Przechowuj w temperaturze najwyżej 5 °C. Nie zostawiaj poza lodówką łącznie dłużej niż 4 godziny.",
    "keep-cold CA": "Przechowuj w temperaturze najwyżej 4 °C. Nie zostawiaj poza lodówką łącznie dłużej niż 2 godziny.",
    "keep-cold ANZ":
      "Przechowuj w temperaturze najwyżej 5 °C. To, co było poza lodówką łącznie krócej niż 2 godziny, może do niej wrócić; po łącznie 4 godzinach wyrzuć.",
    "keep-cold INT":
      "Przechowuj w temperaturze najwyżej 4 °C. Nie zostawiaj poza lodówką łącznie dłużej niż 2 godziny, a powyżej 32 °C dłużej niż 1 godzinę.",
    "cool-quickly":
      "Ugotowane jedzenie szybko schłódź w płytkich pojemnikach, głębokich najwyżej na 5 cm (2 cale): do 21 °C (70 °F) w ciągu 2 godzin i do 5 °C (41 °F) w ciągu łącznie 6 godzin. W dużych, głębokich garnkach stygnie za wolno.",
    "cool-quickly US":
      "Ugotowane jedzenie szybko schłódź w płytkich pojemnikach, głębokich najwyżej na 2 cale: do 70 °F w ciągu 2 godzin i do 41 °F w ciągu łącznie 6 godzin. W dużych, głębokich garnkach stygnie za wolno.",
    "cool-quickly GB":
      "Ugotowane jedzenie schłódź w ciągu 1 do 2 godzin w płytkich pojemnikach, a potem włóż do lodówki. W dużych, głębokich garnkach stygnie za wolno.",
    "cool-quickly INT":
      "Ugotowane jedzenie szybko schłódź w płytkich pojemnikach, głębokich najwyżej na 5 cm: do 21 °C w ciągu 2 godzin i do 5 °C w ciągu łącznie 6 godzin. W dużych, głębokich garnkach stygnie za wolno.",
    "reheat-until-steaming":
      "Resztki podgrzewaj do 74 °C (165 °F), aż będą gorące i parujące także w środku, i tylko raz; zupy i sosy doprowadź do silnego wrzenia.",
    "reheat-until-steaming US":
      "Resztki podgrzewaj do 165 °F, aż będą gorące i parujące także w środku; zupy i sosy doprowadź do silnego wrzenia.",
    "reheat-until-steaming GB": "Resztki podgrzewaj, aż będą gorące i parujące także w środku, i tylko raz.",
    "reheat-until-steaming INT":
      "Resztki podgrzewaj do 74 °C, aż będą gorące i parujące także w środku, i tylko raz; zupy i sosy doprowadź do silnego wrzenia.",
    rice: "Ugotowany ryż schłódź w ciągu godziny i trzymaj w lodówce; najsurowsza rada to zjeść go w ciągu 24 godzin. Podgrzanie nie naprawia zbyt wolnego studzenia: toksyna przetrwa.",
    "rice US":
      "Ugotowany ryż szybko schłódź i trzymaj w lodówce. Podgrzanie nie naprawia zbyt wolnego studzenia: toksyna przetrwa.",
    "rice GB":
      "Ugotowany ryż schłódź w ciągu godziny, trzymaj w lodówce i zjedz w ciągu 24 godzin. Podgrzanie nie naprawia zbyt wolnego studzenia: toksyna przetrwa.",
    "garlic-in-oil":
      "W surowym czosnku w oleju lub oliwie może bez żadnych oznak powstać toksyna botulinowa. Przechowuj w lodówce, nigdy w temperaturze pokojowej, najwyżej 4 dni, albo zamroź.",
    "herbs-in-oil":
      "W świeżych ziołach, czosnku i warzywach zalanych olejem lub oliwą może bez żadnych oznak powstać toksyna botulinowa. Przechowuj w lodówce, nigdy w temperaturze pokojowej, najwyżej 2 do 3 dni, albo zamroź.",
    "kidney-beans":
      "Sucha czerwona fasola jest trująca, dopóki się jej nie ugotuje we wrzątku. Mocz ją co najmniej 5 godzin, wylej wodę i gotuj we wrzącej świeżej wodzie przez 30 minut. Fasola z puszki jest już ugotowana.",
    "kidney-beans-slow-cooker":
      "Nigdy nie gotuj surowej czerwonej fasoli w wolnowarze: nie nagrzewa się na tyle, by zniszczyć truciznę. Najpierw ugotuj ją we wrzątku, jak podano wyżej.",
    "soak-in-the-fridge": "Moczenie dłuższe niż 4 godziny powinno odbywać się w lodówce.",
    sprouts:
      "Surowe kiełki mogą zawierać groźne bakterie, których mycie nie usuwa. Trzymaj je w lodówce; osoby z grup ryzyka powinny jeść je ugotowane albo wcale.",
    "cut-leaves": "Pokrojone warzywa liściaste muszą pozostać w lodówce.",
    "cut-fruit": "Pokrojone melony, pomidory i inne owoce muszą pozostać w lodówce.",
    "raw-egg":
      "Zawiera surowe jajko. Trzymaj w lodówce najwyżej 3 do 4 dni; nie dla małych dzieci, osób starszych, kobiet w ciąży ani osób z osłabioną odpornością.",
    "soaked-nuts":
      "Nikt nie publikuje, jak długo można przechowywać namoczone orzechy i kremy z nich. Zastępuje to zasada dla resztek.",
    "packed-without-air":
      "Pakowanie bez powietrza (próżniowe) w domu niczego nie przedłuża, a sprzyja powstawaniu toksyny botulinowej. Licz te same dni co w pojemniku.",
    "thaw-in-the-fridge":
      "Rozmrażaj w lodówce, w zimnej wodzie zmienianej co 30 minut albo w kuchence mikrofalowej; co rozmrożono szybko, od razu ugotuj. Nigdy nie rozmrażaj na blacie.",
    "cook-poultry":
      "Drób, w całości lub mielony, piecz, smaż lub gotuj do 74 °C (165 °F) w najgrubszym miejscu. Surowego nie myj.",
    "cook-poultry US":
      "Drób, w całości lub mielony, piecz, smaż lub gotuj do 165 °F w najgrubszym miejscu. Surowego nie myj.",
    "cook-poultry CA":
      "Drób w kawałkach lub mielony piecz, smaż lub gotuj do 74 °C w najgrubszym miejscu, w całości do 82 °C. Surowego nie myj.",
    "cook-poultry GB":
      "Drób piecz, smaż lub gotuj, aż środek przez 2 minuty będzie miał 70 °C i nic nie będzie różowe. Surowego nie myj.",
    "cook-poultry INT":
      "Drób, w całości lub mielony, piecz, smaż lub gotuj do 74 °C w najgrubszym miejscu. Surowego nie myj.",
    "cook-mince":
      "Mięso mielone, kotlety mielone i kiełbaski piecz, smaż lub gotuj do 71 °C (160 °F) w środku: nic nie może zostać surowe.",
    "cook-mince US":
      "Mięso mielone, kotlety mielone i kiełbaski piecz, smaż lub gotuj do 160 °F w środku: nic nie może zostać surowe.",
    "cook-mince CA":
      "Mięso mielone, kotlety mielone i kiełbaski piecz, smaż lub gotuj do 71 °C w środku: nic nie może zostać surowe.",
    "cook-mince GB":
      "Mięso mielone, kotlety mielone i kiełbaski piecz, smaż lub gotuj, aż środek przez 2 minuty będzie miał 70 °C: nic nie może zostać surowe.",
    "cook-mince INT":
      "Mięso mielone, kotlety mielone i kiełbaski piecz, smaż lub gotuj do 71 °C w środku: nic nie może zostać surowe.",
    "cook-fish":
      "Ryby i owoce morza piecz, smaż lub gotuj do 70 °C (158 °F) w środku, aż ryba będzie się rozdzielać na płatki, a muszle się otworzą.",
    "cook-fish US":
      "Ryby i owoce morza piecz, smaż lub gotuj do 145 °F w środku, aż ryba będzie się rozdzielać na płatki, a muszle się otworzą.",
    "cook-fish CA":
      "Ryby piecz, smaż lub gotuj do 70 °C, a owoce morza do 74 °C w środku, aż ryba będzie się rozdzielać na płatki, a muszle się otworzą.",
    "cook-fish GB":
      "Ryby i owoce morza piecz, smaż lub gotuj, aż środek przez 2 minuty będzie miał 70 °C, ryba będzie się rozdzielać na płatki, a muszle się otworzą.",
    "cook-fish INT":
      "Ryby i owoce morza piecz, smaż lub gotuj do 70 °C w środku, aż ryba będzie się rozdzielać na płatki, a muszle się otworzą.",
    "cook-eggs": "Jajka gotuj lub smaż, aż białko i żółtko się zetną, a potrawy z jaj do 71 °C (160 °F).",
    "cook-eggs US": "Jajka gotuj lub smaż, aż białko i żółtko się zetną, a potrawy z jaj do 160 °F.",
    "cook-eggs CA": "Jajka gotuj lub smaż, aż białko i żółtko się zetną, a potrawy z jaj do 74 °C.",
    "cook-eggs GB":
      "Jajka gotuj lub smaż, aż białko i żółtko się zetną, a potrawy z jaj, aż środek przez 2 minuty będzie miał 70 °C.",
    "cook-eggs INT": "Jajka gotuj lub smaż, aż białko i żółtko się zetną, a potrawy z jaj do 71 °C.",
    "honey-under-one-year":
      "Miód nie jest dla niemowląt poniżej 12. miesiąca życia, ani surowy, ani pieczony: może wywołać botulizm niemowlęcy.",
  },
};
