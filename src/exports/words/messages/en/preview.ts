import { message } from "../../message.js";

/** Pages that show a draft to those who have the address of a preview. */
export const preview = {
  label: "Preview",
  shown: message(
    "A preview of the draft, version {version}, for those who have this address. Nobody else sees it before it is published.",
    { version: 2 },
  ),
  works: message("The address works until {until} and always shows the newest version.", {
    until: "3 March 2026, 09:00 UTC",
  }),
  missing: "It cannot be published yet:",
  notReady: "Not ready to be shown",
  notReadyWhy: "The draft cannot be worked out before what is listed above is put right. Readers see nothing of it.",
  ended: "This preview has ended",
  endedWhy: message("It could be seen until {when}. Ask the writer for a new address.", { when: "3 March 2026" }),
  takenBack: "This preview was taken back",
  takenBackWhy: message("The writer took it back on {when}. Ask the writer for a new address.", {
    when: "3 March 2026",
  }),
  gone: "This draft is gone",
  goneWhy: "The writer threw the draft away. Ask the writer whether there is another.",
  unknown: "No preview has this address",
  unknownWhy: "It may be misspelt or cut off: copy all of it, up to its last letter, or ask the writer for a new one.",
};
