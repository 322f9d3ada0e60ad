import type { CodegenConfig } from "@graphql-codegen/cli";

/** Writes src/graphql/generated/resolver-types.ts: `npx graphql-codegen --config codegen.config.ts`. A test compares. */
const config: CodegenConfig = {
  schema: "src/graphql/schema/*.graphql",
  generates: {
    "src/graphql/generated/resolver-types.ts": {
      plugins: ["typescript", "typescript-resolvers"],
      config: {
        useTypeImports: true,
        strictScalars: true,
        defaultScalarType: "unknown",
        enumsAsTypes: true,
        immutableTypes: true,
        emitLegacyCommonJSImports: false,
        maybeValue: "T | null",
        inputMaybeValue: "T | null | undefined",
        avoidOptionals: { field: true, object: true, inputValue: false, defaultValue: true, resolvers: "all" },
        resolversNonOptionalTypename: false,
        contextType: "../context.js#Context",
        scalars: {
          ID: "string",
          DateTime: { input: "string", output: "Date | string" },
          Date: "string",
          Quantity: "string",
        },
        mappers: {
          Amount: "../parents.js#AmountParent",
          Basis: "../parents.js#BasisParent",
          Component: "../parents.js#ComponentParent",
          Food: "../parents.js#FoodParent",
          FoodPart: "../parents.js#FoodPartParent",
          Keepable: "../parents.js#KeepableParent",
          Line: "../parents.js#LineParent",
          Meal: "../parents.js#MealParent",
          Node: "../parents.js#NodeParent",
          Pack: "../parents.js#PackParent",
          PackCount: "../parents.js#PackCountParent",
          Plan: "../parents.js#PlanParent",
          Publisher: "../parents.js#PublisherParent",
          Route: "../parents.js#RouteParent",
          ScaledComponent: "../parents.js#ScaledComponentParent",
          ScaledLine: "../parents.js#ScaledLineParent",
          ScaledMeal: "../parents.js#ScaledMealParent",
          ScaledPlan: "../parents.js#ScaledPlanParent",
          ShoppingLine: "../parents.js#ShoppingLineParent",
          ShoppingList: "../parents.js#ShoppingListParent",
          Step: "../parents.js#StepParent",
          StorageGuidance: "../parents.js#StorageGuidanceParent",
          Swap: "../parents.js#SwapParent",
          Unit: "../parents.js#UnitParent",
          Use: "../parents.js#UseParent",
          Warning: "../parents.js#WarningParent",
        },
      },
    },
  },
};

export default config;
