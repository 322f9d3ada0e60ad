// @ts-nocheck
export function bundleExplorer(folder: string): Promise<void>;
