// One shopping list for two plans, at their own servings, from a running service:
//   node examples/list-for-two-plans.mjs http://127.0.0.1:4000
const address = process.argv[2] ?? "http://127.0.0.1:4000";

const query = `query ($plans: [PlanPortionInput!]!) {
  shopping(plans: $plans, household: { region: "XA", currency: "XTS" }) {
    list {
      lines { food { name } need { text } buy { count pack { name content { text } } } }
      cost { atTill { amount currency } }
    }
    problems { where text }
  }
}`;
const publisher = "third-gate-allotments";
const plans = [
  { publisher, slug: "roots-and-barley", servings: 4 },
  { publisher, slug: "bean-night", servings: 2 },
];

const answer = await fetch(new URL("/graphql", address), {
  method: "POST",
  headers: { "content-type": "application/json" },
  body: JSON.stringify({ query, variables: { plans } }),
});
const { data, errors } = await answer.json();
if (errors !== undefined) {
  for (const { message } of errors) console.error(message);
  process.exit(1);
}
const { list, problems } = data.shopping;
if (list === null) {
  for (const { where, text } of problems) console.error(`${where}: ${text}`);
  process.exit(1);
}
for (const { food, need, buy } of list.lines) {
  const packs = buy.map(({ count, pack }) => `${count} × ${pack.name} of ${pack.content.text}`).join(" + ");
  console.log(`${food.name}: ${need?.text ?? "to taste"}${packs === "" ? "" : ` (${packs})`}`);
}
const { atTill } = list.cost;
console.log(atTill === null ? "No price is known." : `At the till: ${atTill.amount} ${atTill.currency}`);
