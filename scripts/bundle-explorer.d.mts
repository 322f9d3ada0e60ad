export const committedExplorer: string;
export function bundleExplorer(folder: string): Promise<void>;
export function staleExplorerFiles(): Promise<readonly string[]>;
