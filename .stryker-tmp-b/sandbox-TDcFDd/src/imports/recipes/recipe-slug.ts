/** A short name for addresses out of a title: ASCII letters and digits joined by hyphens; null where nothing is left. */
// @ts-nocheck

export function slugOf(title: string): string | null {
  const words = title
    .replace(/ß/g, "ss")
    .replace(/[æÆ]/g, "ae")
    .replace(/[øØ]/g, "o")
    .replace(/[łŁ]/g, "l")
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/['’]/g, "")
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== "");
  const slug = words.join("-").slice(0, 80).replace(/-+$/, "");
  return slug === "" ? null : slug;
}
