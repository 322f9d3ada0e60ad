export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** SPDX expression; null: it names none. */
  readonly license: string | null;
  readonly folder: string;
  readonly how: "installed" | "bundled";
}

export const root: string;
export function packageFolderOf(path: string): string | null;
export function shippedPackages(): Promise<readonly ShippedPackage[]>;
export function licenceText(folder: string): Promise<string | null>;
