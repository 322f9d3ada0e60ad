// @ts-nocheck
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

const firstQuery = `# Prepwright answers plans for any number of servings. Press the run button, or Ctrl-Enter.
{
  plans(first: 1) {
    edges {
      node {
        title
        scaled(servings: 7) {
          components { component { title } batches made { text } leftOver { text } }
          shoppingList { aisles { name lines { food { name } need { text } buy { count pack { name } } } } }
          warnings { message }
        }
      }
    }
  }
}
`;

createRoot(place).render(
  createElement(
    GraphiQL,
    { fetcher: createGraphiQLFetcher({ url: place.dataset.endpoint }), defaultQuery: firstQuery },
    createElement(GraphiQL.Logo, null, "Prepwright"),
  ),
);
