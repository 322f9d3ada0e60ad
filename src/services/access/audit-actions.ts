/** What the audit trail calls each kind of write. */
const auditActions = [
  "CREATE_PUBLISHER",
  "UPDATE_PUBLISHER",
  "CREATE_TOKEN",
  "REVOKE_TOKEN",
  "LOAD_RULE_SET",
  "SAVE_DRAFTS",
  "DISCARD_DRAFT",
  "PUBLISH_PLAN",
  "CORRECT_PLAN",
  "WITHDRAW_PLAN",
  "SAVE_FOODS",
  "CREATE_WEBHOOK",
  "ROTATE_WEBHOOK_SECRET",
  "UPDATE_WEBHOOK",
  "DELETE_WEBHOOK",
  "REPLAY_DELIVERY",
  "IMPORT_DRAFT",
  "UNDO_IMPORT",
  "SAVE_FEED",
  "REMOVE_FEED",
  "RECEIVE_FILE",
  "START_IMPORT",
  "CANCEL_IMPORT",
  "SETTLE_ROW",
] as const;
export type AuditAction = (typeof auditActions)[number];

/** What a write is about. */
const subjectKinds = [
  "PUBLISHER",
  "TOKEN",
  "RULE_SET",
  "COMPONENT_DRAFT",
  "PLAN_DRAFT",
  "PLAN",
  "FOOD",
  "WEBHOOK",
  "DELIVERY",
  "FEED",
  "IMPORT",
] as const;
export type SubjectKind = (typeof subjectKinds)[number];
