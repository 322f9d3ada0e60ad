/** Access tokens, secrets of webhooks, passwords in addresses, before the host and among the parameters, and what stands after Bearer. */
const secrets: readonly (readonly [RegExp, string])[] = [
  [/prepwright_([0-9A-Za-z]{8})[0-9A-Za-z]+/g, "prepwright_$1…"],
  [/whsec_[0-9A-Za-z+/=]+/g, "whsec_…"],
  // Up to the last @: a password that nobody escaped may hold one.
  [/([a-z][a-z0-9+.-]*:\/\/[^\s:/"]*):[^\s"]+@/gi, "$1:…@"],
  [/([?&](?:ssl)?password=)[^&\s"]+/gi, "$1…"],
  [/(Bearer\s+)[^\s"\\]+/gi, "$1…"],
];

/** The text without secrets, wherever they came from: a message of a driver, the address of a webhook. */
export const maskSecrets = (text: string): string =>
  secrets.reduce((masked, [pattern, shown]) => masked.replace(pattern, shown), text);
