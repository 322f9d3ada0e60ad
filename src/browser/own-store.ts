/** What the reader's browser keeps for pages; null where it keeps nothing. */
export function ownStore(): Storage | null {
  try {
    return localStorage;
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}
