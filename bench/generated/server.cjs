const { createServer } = require("node:http");
const { Pool } = require("pg");
const { postgraphile } = require("postgraphile");

/** `server.cjs URL`: a server whose schema is made from the tables, as its documentation starts it in production, lists as plain lists. */
const [url] = process.argv.slice(2);
const generated = postgraphile(new Pool({ connectionString: url, max: 10 }), "public", {
  dynamicJson: true,
  disableDefaultMutations: true,
  disableQueryLog: true,
  enableQueryBatching: false,
  graphiql: false,
  simpleCollections: "only",
});
const server = createServer(generated);
server.listen(0, "127.0.0.1", () => console.log(`http://127.0.0.1:${server.address().port}`));
