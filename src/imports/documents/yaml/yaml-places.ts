import { isAlias, isMap, isScalar, isSeq } from "yaml";
import type { Document, Node, Pair, YAMLMap } from "yaml";
import type { Path } from "../../../domain/problem.js";

type DocumentMap = YAMLMap<Node, Node | null>;
type Entries = ReadonlyMap<unknown, Pair<Node, Node | null>>;

/** Offsets of a document's parts. Each map is gone through once, however many of its keys are asked for. */
export class YamlPlaces {
  private readonly known = new Map<DocumentMap, Entries>();

  constructor(private readonly document: Document.Parsed) {}

  /** Of the value at `path`, or of its key; the nearest part above it when that is missing. */
  offsetOf(path: Path, at: "VALUE" | "KEY"): number {
    let node: Node | null = this.document.contents;
    let offset = node?.range?.[0] ?? 0;
    for (const [index, segment] of path.entries()) {
      const inside: Node | null | undefined = isAlias(node) ? node.resolve(this.document) : node;
      const last = index === path.length - 1;
      if (isMap<Node, Node | null>(inside)) {
        const pair = this.entriesOf(inside).get(segment);
        if (pair === undefined) return offset;
        node = pair.value;
        offset = (last && at === "KEY" ? pair.key.range?.[0] : node?.range?.[0]) ?? pair.key.range?.[0] ?? offset;
      } else if (isSeq<Node>(inside) && typeof segment === "number") {
        const item = inside.items[segment];
        if (item === undefined) return offset;
        node = item;
        offset = node.range?.[0] ?? offset;
      } else return offset;
    }
    return offset;
  }

  private entriesOf(map: DocumentMap): Entries {
    const known = this.known.get(map);
    if (known !== undefined) return known;
    const found = new Map<unknown, Pair<Node, Node | null>>();
    for (const pair of map.items) if (isScalar(pair.key) && !found.has(pair.key.value)) found.set(pair.key.value, pair);
    this.known.set(map, found);
    return found;
  }
}
