export { withinRequest } from "../persistence/request-scope.js";
