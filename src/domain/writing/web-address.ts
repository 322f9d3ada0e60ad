import { writingLimits } from "./writing.js";

/** An address that a browser may be sent to: http or https, and no name or password in it that makes it look like another. */
export function isWebAddress(address: string): boolean {
  if (
    address.length > writingLimits.address ||
    !/^https?:\/\/[^\s"<>\\^`{|}]+$/i.test(address) ||
    !URL.canParse(address)
  )
    return false;
  const { username, password } = new URL(address);
  return username === "" && password === "";
}
