declare module "parse-prometheus-text-format" {
  export interface Family {
    readonly name: string;
    readonly help: string;
    readonly type: string;
    readonly metrics: readonly { readonly labels?: Readonly<Record<string, string>>; readonly value?: string }[];
  }
  export default function parse(text: string): readonly Family[];
}
