import type { Source, SourceKind } from "../../domain/model/source.js";

interface SourceColumns {
  readonly sourceKind: SourceKind;
  readonly sourceTitle: string;
  readonly sourceSection: string | null;
}

export const sourceOf = ({ sourceKind, sourceTitle, sourceSection }: SourceColumns): Source => ({
  kind: sourceKind,
  title: sourceTitle,
  section: sourceSection,
});

/** ISO date of a date column, which the driver gives as midnight UTC. */
export const dateText = (date: Date): string => date.toISOString().slice(0, 10);
