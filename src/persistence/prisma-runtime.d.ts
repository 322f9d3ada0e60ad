/** What the generated client loads, and its package brings no types for. */
declare module "@prisma/client/runtime/query_compiler_fast_bg.postgresql.mjs";
declare module "@prisma/client/runtime/query_compiler_fast_bg.postgresql.wasm-base64.mjs" {
  /** The query compiler, base64. */
  export const wasm: string;
}

/** Of the runtime: the types of Node name it, and say nothing of its values. */
declare namespace WebAssembly {
  class Module {
    constructor(bytes: Uint8Array);
  }
}
