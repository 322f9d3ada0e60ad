/** A plan in ready words, for the element that blogs set into their own pages. Fields are only ever added. */
export interface PlanCard {
  readonly title: string;
  /** BCP 47 tag and direction of the writer's words. */
  readonly language: string;
  readonly direction: "ltr" | "rtl";
  /** BCP 47 language of the words around them. */
  readonly wordsIn: string;
  readonly publisher: string;
  readonly revision: number;
  /** Absolute address of the plan's page, as asked. */
  readonly page: string;
  readonly servings: number;
  readonly servesAsWritten: number;
  /** `2 h 5 min`; null where the steps fit no order. */
  readonly session: string | null;
  readonly handsOn: string | null;
  readonly perServing: string | null;
  readonly meals: readonly {
    readonly day: string;
    readonly title: string;
    /** It comes later than something in it keeps: what to do, each in a sentence. Empty: it does not. */
    readonly late: readonly string[];
  }[];
  /** How long everything made ahead and every meal keeps, the stricter of the writer's word and the published rule. */
  readonly keeping: readonly { readonly what: string; readonly where: string; readonly keeps: string }[];
  /** What nobody gives a keeping time for. */
  readonly keepingUnknown: readonly string[];
  readonly aisles: readonly {
    readonly title: string;
    readonly lines: readonly {
      readonly id: string;
      readonly food: string;
      readonly take: string;
      readonly notes: string;
    }[];
  }[];
  /** Every value that occurs, from the one that must be said first. */
  readonly allergens: readonly { readonly presence: string; readonly names: readonly string[] }[];
  /** A picture of the plan; null: there is none. Addresses are absolute, from narrow to wide. */
  readonly image: {
    readonly alt: string;
    readonly credit: string | null;
    readonly placeholder: string;
    readonly sources: readonly {
      readonly url: string;
      readonly type: string;
      readonly width: number;
      readonly height: number;
    }[];
  } | null;
  readonly cautions: readonly { readonly text: string; readonly source: string }[];
}
