import sharp from "sharp";

/** Something that may not come out again, wherever it stands in a file. */
export const smuggled = "<script>alert(document.domain)</script>";

const plot = (width: number, height: number) =>
  sharp({
    create: { width, height, channels: 3, background: "#6b8f3c", noise: { type: "gaussian", mean: 120, sigma: 40 } },
  });

/** Pictures of one size in every format that is taken. */
export async function sampleImages(width = 96, height = 72): Promise<Readonly<Record<string, Buffer>>> {
  return {
    JPEG: await plot(width, height).jpeg().toBuffer(),
    "progressive JPEG": await plot(width, height).jpeg({ progressive: true }).toBuffer(),
    PNG: await plot(width, height).png().toBuffer(),
    WebP: await plot(width, height).webp().toBuffer(),
    AVIF: await plot(width, height).avif({ effort: 0 }).toBuffer(),
  };
}

/** With a place, a camera and a turn in its Exif, as telephones write them. */
export const turnedPhoto = (width = 200, height = 100): Promise<Buffer> =>
  plot(width, height)
    .jpeg()
    .withExif({
      IFD0: { Make: smuggled, Copyright: smuggled },
      IFD3: { GPSLatitude: "51/1 30/1 0/1", GPSLatitudeRef: "N" },
    })
    .withMetadata({ orientation: 6 })
    .toBuffer();
