/** What was read, or null: Intl and Temporal answer a text that they cannot read with a RangeError. */
export function readOrNull<Value>(read: () => Value): Value | null {
  try {
    return read();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
