export function isAllowed(expression: string | null): boolean;
