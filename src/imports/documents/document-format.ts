/** Whether a document's text is JSON; all else that reads is YAML. */
export function documentFormat(text: string): "YAML" | "JSON" {
  if (!text.trimStart().startsWith("{")) return "YAML";
  try {
    JSON.parse(text);
    return "JSON";
  } catch (error) {
    if (error instanceof SyntaxError) return "YAML";
    throw error;
  }
}
