// @ts-nocheck
export function bundleBrowser(folder: string): Promise<void>;
