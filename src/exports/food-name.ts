import type { Food } from "../domain/model/food.js";

/** The food's name for one: in that language and region, in that language, or the first. `locale`: BCP 47, or null. */
export function foodNameFor({ slug, names }: Pick<Food, "slug" | "names">, locale: string | null): string {
  const [language, region] = (locale ?? "").split("-");
  const spoken = names.filter((name) => name.language.split("-")[0] === language);
  const found =
    spoken.find((name) => name.region !== null && name.region === region) ??
    spoken.find((name) => name.region === null) ??
    spoken[0] ??
    names[0];
  return found?.one ?? slug;
}
