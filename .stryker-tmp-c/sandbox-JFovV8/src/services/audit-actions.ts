/** What the audit trail calls each kind of write. */
// @ts-nocheck

export const auditActions = [
  "CREATE_PUBLISHER",
  "UPDATE_PUBLISHER",
  "CREATE_TOKEN",
  "REVOKE_TOKEN",
  "LOAD_RULE_SET",
] as const;
export type AuditAction = (typeof auditActions)[number];

/** What a write is about. */
export const subjectKinds = ["PUBLISHER", "TOKEN", "RULE_SET"] as const;
export type SubjectKind = (typeof subjectKinds)[number];
