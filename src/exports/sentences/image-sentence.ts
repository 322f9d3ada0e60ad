import type { ImageFault } from "../../domain/problem.js";

/** Why a picture is not taken, and what to hand in instead. */
export function imageSentence(fault: ImageFault, found: string): string {
  switch (fault) {
    case "EMPTY":
      return "The file is empty. Send the picture itself as the body of the request.";
    case "NOT_AN_IMAGE":
      return "The file is not a picture. Pictures are taken as JPEG, PNG, WebP and AVIF.";
    case "OTHER_FORMAT":
      return `The file is ${found}. Pictures are taken as JPEG, PNG, WebP and AVIF: save it as one of them.`;
    case "DAMAGED":
      return "The picture is damaged or cut short. Open it in an image editor, save it anew, and send that file.";
    case "ANIMATED":
      return `The picture has ${found}. Send one of them as a picture of its own.`;
    case "TOO_MANY_BYTES":
      return `The file has ${found}, and 15 MiB are the most. Save it smaller: 2560 pixels on the longer side are as many as are kept.`;
    case "TOO_MANY_PIXELS":
      return `The picture has ${found}, and 50 million are the most. Save it smaller: 2560 on the longer side are as many as are kept.`;
    case "TOO_SMALL":
      return `The picture has ${found}. It needs at least 64 on each side, and 1280 in width to be sharp.`;
    case "TOO_NARROW":
      return `The picture has ${found}. The longer side may be three times the shorter one: crop it.`;
    case "TOO_MANY":
      return `This publisher has ${found} already, which are the most. Remove some that no plan uses.`;
    case "REMOVED":
      return `This picture was removed on ${found} and does not come back. Use another one.`;
  }
}
