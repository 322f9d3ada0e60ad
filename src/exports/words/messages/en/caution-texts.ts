/** Cautions in the words of the shipped rules, which a translation belongs to: by code, and by region where it has words of its own. */
export const cautionTexts = {
  cautionTexts: {
    "local-rules":
      "These times come from the sources named and are not a promise. Your local food-safety code and licensed practice come first. When in doubt, throw it out.",
    "allergens-on-labels":
      "Read the label of every pack: recipes change, warnings about traces are voluntary, and what is not known here is not absent.",
    "keep-cold":
      "Keep it at 40 °F (4 °C) or colder. Do not leave it out for more than 2 hours in all, or 1 hour above 90 °F (32 °C).",
    "keep-cold US":
      "Keep it at 40 °F or colder. Do not leave it out for more than 2 hours in all, or 1 hour above 90 °F.",
    "keep-cold GB": "Keep it at 5 °C or colder. Do not leave it out for more than 4 hours in all.",
    "keep-cold CA": "Keep it at 4 °C or colder. Do not leave it out for more than 2 hours in all.",
    "keep-cold ANZ":
      "Keep it at 5 °C or colder. What was out for less than 2 hours in all may go back; after 4 hours in all, throw it out.",
    "keep-cold INT":
      "Keep it at 4 °C or colder. Do not leave it out for more than 2 hours in all, or 1 hour above 32 °C.",
    "cool-quickly":
      "Cool cooked food fast, in shallow containers at most 2 inches (5 cm) deep: to 70 °F (21 °C) within 2 hours and to 41 °F (5 °C) within 6 hours in all. Large deep pots cool too slowly.",
    "cool-quickly US":
      "Cool cooked food fast, in shallow containers at most 2 inches deep: to 70 °F within 2 hours and to 41 °F within 6 hours in all. Large deep pots cool too slowly.",
    "cool-quickly GB":
      "Cool cooked food within 1 to 2 hours, in shallow containers, and then put it into the fridge. Large deep pots cool too slowly.",
    "cool-quickly INT":
      "Cool cooked food fast, in shallow containers at most 5 cm deep: to 21 °C within 2 hours and to 5 °C within 6 hours in all. Large deep pots cool too slowly.",
    "reheat-until-steaming":
      "Reheat leftovers to 165 °F (74 °C), steaming hot all through, and only once; bring soups and sauces to a rolling boil.",
    "reheat-until-steaming US":
      "Reheat leftovers to 165 °F, steaming hot all through; bring soups and sauces to a rolling boil.",
    "reheat-until-steaming GB": "Reheat leftovers until they are steaming hot all through, and only once.",
    "reheat-until-steaming INT":
      "Reheat leftovers to 74 °C, steaming hot all through, and only once; bring soups and sauces to a rolling boil.",
    rice: "Cool cooked rice within an hour and keep it cold; the strictest advice is to eat it within 24 hours. Reheating does not undo slow cooling: the toxin survives.",
    "rice US": "Cool cooked rice fast and keep it cold. Reheating does not undo slow cooling: the toxin survives.",
    "rice GB":
      "Cool cooked rice within an hour, keep it cold, and eat it within 24 hours. Reheating does not undo slow cooling: the toxin survives.",
    "garlic-in-oil":
      "Raw garlic in oil can grow botulism without a sign. Keep it in the refrigerator, never at room temperature, and for no more than 4 days, or freeze it.",
    "herbs-in-oil":
      "Fresh herbs, garlic and vegetables under oil can grow botulism without a sign. Keep them in the refrigerator, never at room temperature, for no more than 2 to 3 days, or freeze them.",
    "kidney-beans":
      "Dry kidney beans are poisonous until boiled. Soak them at least 5 hours, throw the water away, and boil them in fresh water for 30 minutes. Beans from a tin are boiled already.",
    "kidney-beans-slow-cooker":
      "Never cook kidney beans from raw in a slow cooker: it does not get hot enough to destroy the poison. Boil them first, as above.",
    "soak-in-the-fridge": "A soak of more than 4 hours belongs in the refrigerator.",
    sprouts:
      "Raw sprouts can carry harmful bacteria that washing does not remove. Keep them cold; people at risk should eat them cooked or not at all.",
    "cut-leaves": "Once cut, leafy greens must stay in the refrigerator.",
    "cut-fruit": "Once cut, melons, tomatoes and other fruit must stay in the refrigerator.",
    "raw-egg":
      "This has raw egg in it. Keep it cold for no more than 3 to 4 days; it is not for young children, older people, pregnant women or anyone with weak immunity.",
    "soaked-nuts":
      "Nobody publishes how long soaked nuts and creams made of them keep. The rule for leftovers stands in for it.",
    "packed-without-air":
      "Packing without air makes nothing keep longer at home, and lets botulism grow. Count the same days as in a box.",
    "thaw-in-the-fridge":
      "Thaw in the refrigerator, in cold water changed every 30 minutes, or in the microwave; what was thawed the fast way is cooked at once. Never thaw on the counter.",
    "cook-poultry": "Cook poultry, whole or minced, to 165 °F (74 °C) in the thickest part. Do not wash it raw.",
    "cook-poultry US": "Cook poultry, whole or minced, to 165 °F in the thickest part. Do not wash it raw.",
    "cook-poultry CA":
      "Cook poultry in pieces or minced to 74 °C in the thickest part, whole birds to 82 °C. Do not wash it raw.",
    "cook-poultry GB":
      "Cook poultry until its middle has been at 70 °C for 2 minutes and nothing is pink. Do not wash it raw.",
    "cook-poultry INT": "Cook poultry, whole or minced, to 74 °C in the thickest part. Do not wash it raw.",
    "cook-mince": "Cook minced meat, burgers and sausages to 160 °F (71 °C) in the middle: no part may stay raw.",
    "cook-mince US": "Cook ground meat, burgers and sausages to 160 °F in the middle: no part may stay raw.",
    "cook-mince CA": "Cook ground meat, burgers and sausages to 71 °C in the middle: no part may stay raw.",
    "cook-mince GB":
      "Cook minced meat, burgers and sausages until the middle has been at 70 °C for 2 minutes: no part may stay raw.",
    "cook-mince INT": "Cook minced meat, burgers and sausages to 71 °C in the middle: no part may stay raw.",
    "cook-fish": "Cook fish and shellfish to 158 °F (70 °C) in the middle, until fish flakes and shells have opened.",
    "cook-fish US": "Cook fish and shellfish to 145 °F in the middle, until fish flakes and shells have opened.",
    "cook-fish CA":
      "Cook fish to 70 °C and shellfish to 74 °C in the middle, until fish flakes and shells have opened.",
    "cook-fish GB":
      "Cook fish and shellfish until the middle has been at 70 °C for 2 minutes, until fish flakes and shells have opened.",
    "cook-fish INT": "Cook fish and shellfish to 70 °C in the middle, until fish flakes and shells have opened.",
    "cook-eggs": "Cook eggs until white and yolk are firm, and dishes of egg to 160 °F (71 °C).",
    "cook-eggs US": "Cook eggs until white and yolk are firm, and dishes of egg to 160 °F.",
    "cook-eggs CA": "Cook eggs until white and yolk are firm, and dishes of egg to 74 °C.",
    "cook-eggs GB":
      "Cook eggs until white and yolk are firm, and dishes of egg until the middle has been at 70 °C for 2 minutes.",
    "cook-eggs INT": "Cook eggs until white and yolk are firm, and dishes of egg to 71 °C.",
    "honey-under-one-year": "Honey is not for babies under 12 months, baked or raw: it can cause infant botulism.",
  },
};
