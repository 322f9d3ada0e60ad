/** Facts first, then a sentence. */
export interface PersistenceLog {
  info(facts: object, message: string): void;
  warn(facts: object, message: string): void;
}
