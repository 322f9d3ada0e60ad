import { createGraphiQLFetcher } from "@graphiql/toolkit";
import { GraphiQL } from "graphiql";
import "graphiql/style.css";
import { createElement } from "react";
import { createRoot } from "react-dom/client";

const place = document.querySelector("#explorer");
const assets = JSON.parse(place.dataset.workers);

globalThis.MonacoEnvironment = {
  getWorker: (_id, label) => new Worker(assets[label] ?? assets.editor, { name: label }),
};

const firstQuery = `# Answers plans for any number of servings. Press the run button, or Ctrl-Enter.
# What changes the answer stands below, under Variables.
query PlanForAHousehold($servings: Int!, $household: HouseholdInput) {
  plans(first: 1) {
    edges {
      node {
        title
        scaled(servings: $servings, household: $household) {
          components { component { title } batches made { text } leftOver { text } }
          shoppingList { aisles { title lines { food { name } need { text } buy { count pack { name } } } } }
          warnings { message }
        }
      }
    }
  }
}
`;

const household = { measures: "METRIC", diets: [], swaps: [], onHand: [] };
const firstVariables = JSON.stringify({ servings: 7, household }, null, 2);

createRoot(place).render(
  createElement(
    GraphiQL,
    {
      fetcher: createGraphiQLFetcher({ url: place.dataset.endpoint }),
      defaultQuery: firstQuery,
      initialVariables: firstVariables,
    },
    createElement(GraphiQL.Logo, null, "Prepwright"),
  ),
);
