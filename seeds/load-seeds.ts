/** The reader stands in src/app, because the service itself loads the demo on its first start. */
export * from "../src/app/setup/read-seeds.js";
