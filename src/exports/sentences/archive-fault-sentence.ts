import type { ArchiveFault } from "../../domain/archive-fault.js";

/** What is wrong with an archive, and what to do. Its file is in the path of the problem. */
export function archiveFaultSentence(fault: ArchiveFault): string {
  switch (fault.kind) {
    case "NOT_A_ZIP":
      return `This cannot be read as a zip file: ${withoutStop(fault.detail)}. Send the file that the export wrote, unchanged.`;
    case "NAME_NOT_KNOWN":
      return "No export writes a file of this name. Nothing was imported. Send the file that the export wrote, unchanged.";
    case "NOT_A_FILE":
      return "This is a link or a device, not a file. Nothing was imported. Send the file that the export wrote, unchanged.";
    case "ENCRYPTED":
      return "This file is encrypted. Pack the archive without a password.";
    case "TWICE":
      return "This file is in the archive twice. Nothing was imported. Send the file that the export wrote, unchanged.";
    case "TOO_MUCH":
      return `The archive has ${fault.size} ${fault.of}, and ${fault.limit} are the most. Nothing was imported.`;
    case "NO_MANIFEST":
      return "The archive has no manifest.json. The export may have been cut off: export again.";
    case "OTHER_VERSION":
      return `The archive is of version ${fault.version}, and this program reads versions up to ${fault.known}. Update this installation first.`;
    case "NOT_LISTED":
      return "This file is not listed in manifest.json. Nothing was imported. Send the file that the export wrote, unchanged.";
    case "MISSING":
      return "The archive does not have this file. The export may have been cut off: export again.";
    case "ALTERED":
      return "This file was changed since it was exported: its SHA-256 differs. Nothing was imported. Export again.";
    case "CONTENT":
      return `This file has a wrong content: ${withoutStop(fault.detail)}. Nothing was imported. Export again.`;
    case "OTHER_PUBLISHER":
      return `The archive is of the publisher "${fault.archived}". Import it into a publisher with that slug.`;
    case "NUMBER_MISSING":
      return `Revision ${fault.revision} of the plan "${fault.plan}" is missing; revisions are numbered without a gap. Export again.`;
  }
}

/** What a reader of zip files or another sentence says, to end in ours. */
const withoutStop = (text: string): string => text.replace(/[.\s]+$/, "");
