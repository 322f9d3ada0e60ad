/**
 * Everyday foods as home cooks write them, in English and German: written down by hand before anybody looked which of them the base has.
 * No source: common knowledge of kitchens. One line each: English, German.
 */
const written = `
apples, Äpfel
pears, Birnen
bananas, Bananen
oranges, Orangen
lemons, Zitronen
limes, Limetten
grapes, Weintrauben
strawberries, Erdbeeren
raspberries, Himbeeren
blueberries, Heidelbeeren
blackberries, Brombeeren
cherries, Kirschen
plums, Pflaumen
peaches, Pfirsiche
nectarines, Nektarinen
apricots, Aprikosen
mango, Mango
pineapple, Ananas
kiwis, Kiwis
watermelon, Wassermelone
avocado, Avocado
rhubarb, Rhabarber
figs, Feigen
pomegranate, Granatapfel
cranberries, Cranberrys
redcurrants, Johannisbeeren
gooseberries, Stachelbeeren
dates, Datteln
raisins, Rosinen
prunes, Backpflaumen
dried apricots, getrocknete Aprikosen
dried cranberries, getrocknete Cranberrys
potatoes, Kartoffeln
sweet potatoes, Süßkartoffeln
carrots, Karotten
onions, Zwiebeln
red onions, rote Zwiebeln
spring onions, Frühlingszwiebeln
shallots, Schalotten
garlic, Knoblauch
ginger, Ingwer
leeks, Lauch
celery, Staudensellerie
celeriac, Knollensellerie
fennel, Fenchel
tomatoes, Tomaten
cherry tomatoes, Kirschtomaten
cucumber, Gurke
courgettes, Zucchini
aubergine, Aubergine
red pepper, rote Paprika
green pepper, grüne Paprika
yellow pepper, gelbe Paprika
chilli, Chilischote
broccoli, Brokkoli
cauliflower, Blumenkohl
white cabbage, Weißkohl
red cabbage, Rotkohl
savoy cabbage, Wirsing
Brussels sprouts, Rosenkohl
Chinese cabbage, Chinakohl
pak choi, Pak Choi
kale, Grünkohl
kohlrabi, Kohlrabi
spinach, Spinat
chard, Mangold
lettuce, Kopfsalat
iceberg lettuce, Eisbergsalat
lamb's lettuce, Feldsalat
rocket, Rucola
radishes, Radieschen
beetroot, Rote Bete
parsnips, Pastinaken
swede, Steckrübe
pumpkin, Kürbis
butternut squash, Butternusskürbis
sweetcorn, Mais
peas, Erbsen
frozen peas, TK-Erbsen
green beans, grüne Bohnen
mangetout, Zuckerschoten
asparagus, Spargel
mushrooms, Champignons
dried porcini, getrocknete Steinpilze
artichokes, Artischocken
okra, Okraschoten
bean sprouts, Mungbohnensprossen
olives, Oliven
black olives, schwarze Oliven
capers, Kapern
gherkins, Gewürzgurken
sauerkraut, Sauerkraut
sun-dried tomatoes, getrocknete Tomaten
tinned tomatoes, Dosentomaten
chopped tomatoes, gehackte Tomaten
passata, passierte Tomaten
tomato puree, Tomatenmark
parsley, Petersilie
basil, Basilikum
coriander, Koriander
dill, Dill
chives, Schnittlauch
mint, Minze
rosemary, Rosmarin
thyme, Thymian
sage, Salbei
oregano, Oregano
bay leaves, Lorbeerblätter
salt, Salz
pepper, Pfeffer
black pepper, schwarzer Pfeffer
paprika, Paprikapulver
smoked paprika, geräuchertes Paprikapulver
cumin, Kreuzkümmel
ground coriander, gemahlener Koriander
turmeric, Kurkuma
curry powder, Currypulver
garam masala, Garam Masala
cinnamon, Zimt
nutmeg, Muskatnuss
cloves, Nelken
cardamom, Kardamom
chilli flakes, Chiliflocken
cayenne pepper, Cayennepfeffer
caraway seeds, Kümmel
mustard seeds, Senfkörner
star anise, Sternanis
saffron, Safran
vanilla pod, Vanilleschote
vanilla extract, Vanilleextrakt
vanilla sugar, Vanillezucker
garlic powder, Knoblauchpulver
onion powder, Zwiebelpulver
dried oregano, getrockneter Oregano
rice, Reis
basmati rice, Basmatireis
brown rice, Naturreis
risotto rice, Risottoreis
quinoa, Quinoa
couscous, Couscous
bulgur, Bulgur
pearl barley, Perlgraupen
millet, Hirse
buckwheat, Buchweizen
polenta, Polenta
oats, Haferflocken
muesli, Müsli
pasta, Nudeln
spaghetti, Spaghetti
penne, Penne
lasagne sheets, Lasagneplatten
rice noodles, Reisnudeln
egg noodles, Eiernudeln
gnocchi, Gnocchi
flour, Mehl
wholemeal flour, Vollkornmehl
rye flour, Roggenmehl
self-raising flour, Mehl mit Backpulver
cornflour, Speisestärke
semolina, Grieß
breadcrumbs, Semmelbrösel
bread, Brot
wholemeal bread, Vollkornbrot
bread rolls, Brötchen
baguette, Baguette
toast, Toast
pitta bread, Pitabrot
tortilla wraps, Wraps
puff pastry, Blätterteig
shortcrust pastry, Mürbeteig
filo pastry, Filoteig
pizza dough, Pizzateig
sugar, Zucker
brown sugar, brauner Zucker
icing sugar, Puderzucker
honey, Honig
maple syrup, Ahornsirup
baking powder, Backpulver
bicarbonate of soda, Natron
dried yeast, Trockenhefe
fresh yeast, frische Hefe
gelatine, Gelatine
cocoa powder, Kakaopulver
dark chocolate, Zartbitterschokolade
milk chocolate, Vollmilchschokolade
white chocolate, weiße Schokolade
almonds, Mandeln
ground almonds, gemahlene Mandeln
hazelnuts, Haselnüsse
walnuts, Walnüsse
cashews, Cashewkerne
peanuts, Erdnüsse
pine nuts, Pinienkerne
pistachios, Pistazien
desiccated coconut, Kokosraspel
sunflower seeds, Sonnenblumenkerne
pumpkin seeds, Kürbiskerne
sesame seeds, Sesam
linseed, Leinsamen
chia seeds, Chiasamen
poppy seeds, Mohn
peanut butter, Erdnussbutter
tahini, Tahin
jam, Marmelade
red lentils, rote Linsen
green lentils, grüne Linsen
brown lentils, braune Linsen
chickpeas, Kichererbsen
tinned chickpeas, Kichererbsen aus der Dose
kidney beans, Kidneybohnen
black beans, schwarze Bohnen
white beans, weiße Bohnen
butter beans, dicke weiße Bohnen
split peas, Schälerbsen
baked beans, gebackene Bohnen
tofu, Tofu
smoked tofu, Räuchertofu
tempeh, Tempeh
milk, Milch
oat milk, Hafermilch
soya milk, Sojamilch
coconut milk, Kokosmilch
cream, Sahne
sour cream, saure Sahne
crème fraîche, Crème fraîche
yoghurt, Joghurt
Greek yoghurt, griechischer Joghurt
quark, Quark
buttermilk, Buttermilch
butter, Butter
margarine, Margarine
eggs, Eier
cheddar, Cheddar
gouda, Gouda
mozzarella, Mozzarella
parmesan, Parmesan
feta, Feta
cream cheese, Frischkäse
cottage cheese, Hüttenkäse
goat's cheese, Ziegenkäse
ricotta, Ricotta
mascarpone, Mascarpone
halloumi, Halloumi
grated cheese, geriebener Käse
chicken, Hähnchen
chicken breast, Hähnchenbrust
chicken thighs, Hähnchenschenkel
turkey breast, Putenbrust
minced beef, Rinderhackfleisch
minced pork, Schweinehackfleisch
mixed mince, gemischtes Hackfleisch
beef, Rindfleisch
steak, Steak
pork chops, Schweinekoteletts
pork fillet, Schweinefilet
pork belly, Schweinebauch
bacon, Speck
ham, Schinken
sausages, Würstchen
salami, Salami
chorizo, Chorizo
lamb mince, Lammhackfleisch
leg of lamb, Lammkeule
salmon, Lachs
smoked salmon, Räucherlachs
cod, Kabeljau
tuna, Thunfisch
tinned tuna, Thunfisch aus der Dose
trout, Forelle
mackerel, Makrele
herring, Hering
prawns, Garnelen
mussels, Miesmuscheln
squid, Tintenfisch
fish fingers, Fischstäbchen
anchovies, Sardellen
olive oil, Olivenöl
sunflower oil, Sonnenblumenöl
rapeseed oil, Rapsöl
vegetable oil, Pflanzenöl
sesame oil, Sesamöl
coconut oil, Kokosöl
white wine vinegar, Weißweinessig
balsamic vinegar, Balsamicoessig
cider vinegar, Apfelessig
soy sauce, Sojasauce
mustard, Senf
Dijon mustard, Dijonsenf
ketchup, Ketchup
mayonnaise, Mayonnaise
Worcestershire sauce, Worcestersauce
vegetable stock, Gemüsebrühe
chicken stock, Hühnerbrühe
stock cube, Brühwürfel
pesto, Pesto
red curry paste, rote Currypaste
harissa, Harissa
horseradish, Meerrettich
hummus, Hummus
white wine, Weißwein
red wine, Rotwein
beer, Bier
water, Wasser
orange juice, Orangensaft
apple juice, Apfelsaft
coffee, Kaffee
tea, Tee
ice cubes, Eiswürfel
frozen spinach, TK-Spinat
frozen berries, TK-Beeren
ice cream, Eiscreme
chips, Pommes frites
crisps, Kartoffelchips
biscuits, Kekse
digestive biscuits, Butterkekse
crackers, Cracker
tortilla chips, Tortillachips
popcorn, Popcorn
marzipan, Marzipan
nougat, Nougat
lard, Schweineschmalz
ghee, Butterschmalz
custard powder, Vanillepuddingpulver
jelly, Götterspeise
cornflakes, Cornflakes
croutons, Croûtons
miso paste, Misopaste
fish sauce, Fischsauce
oyster sauce, Austernsauce
sriracha, Sriracha
nori sheets, Noriblätter
tapioca, Tapioka
agave syrup, Agavendicksaft
treacle, Zuckerrübensirup
lemon juice, Zitronensaft
lime juice, Limettensaft
orange zest, Orangenschale
lemon zest, Zitronenabrieb
egg white, Eiweiß
egg yolk, Eigelb
garlic clove, Knoblauchzehe
`;

/** English and German words for the same food. */
export const commonFoods: readonly (readonly [en: string, de: string])[] = written
  .trim()
  .split("\n")
  .map((line): readonly [string, string] => {
    const [en = "", de = ""] = line.split(", ");
    return [en, de];
  });
