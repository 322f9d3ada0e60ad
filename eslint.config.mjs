import tseslint from "typescript-eslint";
import { layersRule } from "./scripts/lint/layers-rule.mjs";
import { ringsRule } from "./scripts/lint/rings-rule.mjs";
import { unusedExportsRule } from "./scripts/lint/unused-exports-rule.mjs";

const impure = [
  {
    selector: "MemberExpression[object.name='Date'][property.name='now']",
    message: "The clock is an argument; only src/app reads it.",
  },
  {
    selector: "NewExpression[callee.name='Date'][arguments.length=0]",
    message: "The clock is an argument; only src/app reads it.",
  },
  { selector: "MemberExpression[object.name='Math'][property.name='random']", message: "Pass a seeded generator." },
  {
    selector: "MemberExpression[object.name='process'][property.name='env']",
    message: "Only src/app/setup/environment.ts reads the environment.",
  },
];

export default tseslint.config(
  {
    ignores: [
      "**/dist/",
      "data/",
      "coverage/",
      "reports/",
      ".stryker-tmp*/",
      "**/generated/",
      "**/generated.ts",
      "node_modules/",
    ],
  },
  ...tseslint.configs.recommended,
  {
    files: ["**/*.ts"],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    plugins: { prepwright: { rules: { layers: layersRule, rings: ringsRule, "unused-exports": unusedExportsRule } } },
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/only-throw-error": "error",
      eqeqeq: "error",
      "no-console": "error",
      "no-param-reassign": "error",
      "prepwright/layers": "error",
    },
  },
  {
    files: ["src/**/*.ts"],
    rules: {
      "prepwright/rings": "error",
      "prepwright/unused-exports": "error",
      "max-lines": ["error", { max: 400, skipBlankLines: true, skipComments: true }],
      "no-restricted-syntax": [
        "error",
        { selector: "ExportDefaultDeclaration", message: "Named exports only." },
        ...impure,
      ],
    },
  },
  {
    // Scripts of pages run on the reader's device: its clock is the one to go by, and its console the one place to say what went amiss.
    files: ["src/browser/**/*.ts"],
    rules: {
      "no-console": ["error", { allow: ["info"] }],
      "no-restricted-syntax": ["error", { selector: "ExportDefaultDeclaration", message: "Named exports only." }],
    },
  },
  {
    files: ["src/domain/**/*.ts"],
    rules: {
      "no-restricted-imports": [
        "error",
        {
          patterns: [
            { group: ["node:*", "@prisma/*", "graphql*", "fastify", "pg", "pino"], message: "domain is pure." },
          ],
        },
      ],
    },
  },
  {
    files: ["src/app/**/*.ts"],
    rules: {
      "no-restricted-syntax": ["error", { selector: "ExportDefaultDeclaration", message: "Named exports only." }],
    },
  },
  { files: ["tests/**/*.ts", "bench/**/*.ts"], rules: { "no-console": "off" } },
  { files: ["**/*.mjs"], languageOptions: { globals: { console: "readonly", process: "readonly", URL: "readonly" } } },
);
