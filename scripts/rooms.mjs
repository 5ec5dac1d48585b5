// The rooms of src/, ground floor first. A room may import only rooms that stand before it here.

export const ROOMS = /** @type {const} */ ([
  "base",
  "stitches",
  "notation",
  "working",
  "bodies",
  "sizing",
  "shape",
  "yarn",
  "design",
  "constructions",
  "drawing",
  "publishing",
  "filming",
  "shelf",
  "command",
  "server",
  "workbench",
]);

/** The engine is everything up to and including this room: it runs in Node, in a browser's worker and in a test. */
const LAST_ENGINE_ROOM = "filming";

export const ENGINE_ROOMS = ROOMS.slice(0, ROOMS.indexOf(LAST_ENGINE_ROOM) + 1);
