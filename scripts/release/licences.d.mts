export function isAllowed(expression: string | null): boolean;
export function mayShip(shipped: {
  readonly name: string;
  readonly license: string | null;
  readonly how: "installed" | "bundled";
}): boolean;
