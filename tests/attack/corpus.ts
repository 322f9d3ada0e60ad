import type { AttackRequest, Target } from "./attack-request.js";
import { documentAttacks } from "./document-attacks.js";
import { findAttacks } from "./find-attacks.js";
import { foodAttacks } from "./food-attacks.js";
import { graphqlAttacks } from "./graphql-attacks.js";
import { scheduleAttacks } from "./schedule-attacks.js";
import { pageAttacks } from "./page-attacks.js";
import { previewAttacks } from "./preview-attacks.js";
import { restAttacks } from "./rest-attacks.js";
import { streamAttacks } from "./stream-attacks.js";
import { writerAttacks } from "./writer-attacks.js";

/** Every request that strangers and writers who mean harm are known to send, or that is worth trying. */
export const attackCorpus = (target: Target): readonly AttackRequest[] => [
  ...graphqlAttacks(target),
  ...restAttacks(target),
  ...documentAttacks(target),
  ...previewAttacks(target),
  ...scheduleAttacks(target),
  ...foodAttacks(target),
  ...findAttacks(target),
  ...pageAttacks(target),
  ...streamAttacks(target),
  ...writerAttacks(target),
];
