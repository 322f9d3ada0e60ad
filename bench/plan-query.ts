import { graphqlRequest } from "./load/load-job.js";

/** What an app asks that shows a plan: the query of the README, its servings and household as variables. */
export const planQuery = /* GraphQL */ `
  query Plan($servings: Int!, $household: HouseholdInput) {
    plan(publisher: "third-gate-allotments", slug: "bean-night") {
      title
      scaled(servings: $servings, household: $household) {
        components {
          component {
            title
          }
          batches
          made {
            text
          }
          leftOver {
            text
          }
        }
        shoppingList {
          lines {
            food {
              name
            }
            need {
              text
            }
            buy {
              count
              pack {
                name
              }
            }
            uses {
              asWritten
              amount {
                text
              }
            }
          }
          cost {
            atTill {
              amount
              currency
            }
            perServing {
              amount
            }
          }
        }
        session {
          totalMinutes
          handsOnMinutes
          tasks {
            text
            startMinute
            endMinute
          }
        }
        allergens {
          findings {
            name
            presence
          }
        }
        storage {
          subject {
            __typename
          }
          place
          days
          keepUntil
          basis {
            source {
              title
            }
          }
        }
        warnings {
          code
          message
          path
        }
      }
    }
  }
`;

const household = { region: "XA", currency: "XTS", diets: ["gluten-free"] };

const graphql = (variables: object) => graphqlRequest({ query: planQuery, variables });

/** The same each time. */
export const samePlan = graphql({ servings: 7, household });

/** A household nobody has asked for before: so much of an onion is left. */
export const anotherHousehold = graphql({
  servings: 7,
  household: { ...household, onHand: [{ food: "onion", amount: "{{n}}", unit: "g" }] },
});

/** The plan as an address of REST. */
export const samePlanByRest = {
  method: "GET" as const,
  path: "/v1/plans/third-gate-allotments/bean-night?servings=7&region=XA&currency=XTS&diet=gluten-free",
  headers: { accept: "application/json" },
  body: "",
};
