import type { StorageGuidanceResolvers } from "../generated/resolver-types.js";
import type { StorageGuidanceParent } from "../parents.js";
import type { FieldsBeyond } from "./fields-beyond.js";

export const storageGuidanceResolvers: FieldsBeyond<StorageGuidanceResolvers, StorageGuidanceParent> = {};
