/** The reader stands in src/app, because the service itself loads the demo on its first start. */
// @ts-nocheck

export * from "../src/app/read-seeds.js";
