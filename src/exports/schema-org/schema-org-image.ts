import type { ImageObject } from "schema-dts";
import type { Image } from "../../domain/model/image.js";
import type { Addresses } from "../addresses.js";
import { imageSources } from "../image-address.js";
import { oneLine } from "../words/legible-text.js";

/** The first of several pictures that there is, at its widest: search engines cut it themselves. null: there is none. */
export function schemaOrgImage(
  images: readonly (Image | undefined)[],
  publisher: string,
  addresses: Pick<Addresses, "plan">,
): Exclude<ImageObject, string> | null {
  const image = images.find((each) => each?.stored !== undefined);
  if (image?.stored === undefined) return null;
  const { alt, credit, licence, stored } = image;
  // They read JPEG everywhere.
  const widest = imageSources(new URL(addresses.plan).origin, publisher, stored, "JPEG").at(-1);
  if (widest === undefined) return null;
  const { url, type, width, height } = widest;
  return {
    "@type": "ImageObject",
    url,
    contentUrl: url,
    encodingFormat: type,
    // UNECE Recommendation 20: E37, pixels.
    width: { "@type": "QuantitativeValue", value: width, unitCode: "E37" },
    height: { "@type": "QuantitativeValue", value: height, unitCode: "E37" },
    caption: oneLine(alt),
    ...(credit === null ? {} : { creditText: oneLine(credit) }),
    ...(licence === null ? {} : licenceOf(licence)),
  };
}

/** Terms of use: an address as it is, an SPDX identifier as the address of its text, and a sentence as a notice. */
export function licenceOf(licence: string): { readonly license: string } | { readonly copyrightNotice: string } {
  if (/^https?:\/\/\S+$/.test(licence)) return { license: licence };
  // SPDX specification, annex D.2: an idstring, as short names of licences are.
  return /^[A-Za-z0-9][A-Za-z0-9.+-]*-[A-Za-z0-9.+-]+$/.test(licence)
    ? { license: `https://spdx.org/licenses/${licence}.html` }
    : { copyrightNotice: oneLine(licence) };
}
