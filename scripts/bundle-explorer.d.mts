export function bundleExplorer(folder: string): Promise<void>;
