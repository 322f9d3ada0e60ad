/**
 * JSON Feed 1.1 as a JSON Schema, written after the published text (jsonfeed.org/version/1.1, "Top-level", "Items",
 * "Authors"); unknown keys are refused, so that a misspelt one is seen.
 */
const author = {
  type: "object",
  additionalProperties: false,
  minProperties: 1,
  properties: { name: { type: "string" }, url: { type: "string", format: "uri" }, avatar: { type: "string" } },
};

export const jsonFeedSchema = {
  type: "object",
  required: ["version", "title", "items"],
  additionalProperties: false,
  properties: {
    version: { const: "https://jsonfeed.org/version/1.1" },
    title: { type: "string" },
    home_page_url: { type: "string", format: "uri" },
    feed_url: { type: "string", format: "uri" },
    description: { type: "string" },
    user_comment: { type: "string" },
    next_url: { type: "string", format: "uri" },
    icon: { type: "string", format: "uri" },
    favicon: { type: "string", format: "uri" },
    authors: { type: "array", items: author },
    language: { type: "string" },
    expired: { type: "boolean" },
    hubs: { type: "array" },
    items: {
      type: "array",
      items: {
        type: "object",
        required: ["id"],
        anyOf: [{ required: ["content_html"] }, { required: ["content_text"] }],
        additionalProperties: false,
        properties: {
          id: { type: "string", minLength: 1 },
          url: { type: "string", format: "uri" },
          external_url: { type: "string", format: "uri" },
          title: { type: "string" },
          content_html: { type: "string" },
          content_text: { type: "string" },
          summary: { type: "string" },
          image: { type: "string", format: "uri" },
          banner_image: { type: "string", format: "uri" },
          date_published: { type: "string", format: "date-time" },
          date_modified: { type: "string", format: "date-time" },
          authors: { type: "array", items: author },
          tags: { type: "array", items: { type: "string" } },
          language: { type: "string" },
          attachments: { type: "array" },
        },
      },
    },
  },
} as const;
