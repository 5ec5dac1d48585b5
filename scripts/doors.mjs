// Checks which room of src/ imports which: down the list of rooms only, and only through a front door.
//   node scripts/doors.mjs
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseSync, Visitor } from "oxc-parser";
import { ENGINE_ROOMS, ROOMS } from "./rooms.mjs";

/**
 * @typedef {{ file: string, line: number, why: string }} ShutDoor   file: from the root, with forward slashes
 * @typedef {{ modules: number, imports: number, shut: ShutDoor[] }} DoorReport
 */

/** @type {Record<string, string>} what an engine room may not name, and why */
const OUTSIDE = {
  Date: "A proof must come out the same tomorrow: hand the date in as a value.",
  performance: "A proof must come out the same on every machine: limits count steps, not time.",
  fetch: "The engine reaches no network: hand the text in as a value.",
  XMLHttpRequest: "The engine reaches no network: hand the text in as a value.",
  WebSocket: "The engine reaches no network: hand the text in as a value.",
  process: "The engine also runs in a browser, where there is no process: hand the setting in as a value.",
  require: "The engine also runs in a browser, where there is no require: use import.",
  window: "The engine also runs in Node and in a worker, where there is no window.",
  document: "The engine also runs in Node and in a worker, where there is no page.",
  localStorage: "The engine keeps nothing: hand the value in and hand it back.",
};

/**
 * Walks every .ts and .tsx file of a tree laid out as this one is (a folder `src` with the rooms in it).
 * @param {string} root  @returns {DoorReport}
 */
export function checkDoors(root) {
  /** @type {ShutDoor[]} */
  const shut = [];
  const files = listModules(path.join(root, "src"));
  let imports = 0;
  for (const absolute of files) {
    const file = path.relative(root, absolute).split(path.sep).join("/");
    const source = readFileSync(absolute, "utf8");
    const module = readModule(file, source);
    if (module.error !== undefined) {
      shut.push({
        file,
        line: 1,
        why: `The file cannot be read as TypeScript, so its imports are unknown: ${module.error}`,
      });
      continue;
    }
    imports += module.imports.length;
    for (const { at, why } of [
      ...judgeFile(file, module),
      ...module.imports.flatMap((one) => judgeImport(root, file, one)),
    ]) {
      shut.push({ file, line: source.slice(0, at).split("\n").length, why });
    }
  }
  if (files.length === 0) {
    shut.push({
      file: "src",
      line: 1,
      why: "No module was seen at all. A check that looked at nothing has proved nothing.",
    });
  }
  return { modules: files.length, imports, shut };
}

/** @param {string} folder  @returns {string[]} */
function listModules(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const inner = path.join(folder, entry.name);
      if (entry.isDirectory()) return listModules(inner);
      return /\.tsx?$/.test(entry.name) ? [inner] : [];
    });
}

/**
 * @typedef {{ at: number, from: string }} Import            at: offset in the source
 * @typedef {{ error?: string, imports: Import[], outside: { at: number, name: string }[], computed: number[] }} Module
 *
 * @param {string} file  @param {string} source  @returns {Module}
 */
function readModule(file, source) {
  const parsed = parseSync(file, source, { sourceType: "module" });
  if (parsed.errors[0] !== undefined) {
    return { error: parsed.errors[0].message, imports: [], outside: [], computed: [] };
  }
  /** @type {Import[]} */
  const imports = [];
  /** @param {{ start: number, source?: { value: unknown } | null }} node */
  const keep = (node) => {
    if (node.source) imports.push({ at: node.start, from: String(node.source.value) });
  };
  /** @type {Map<string, number>} */
  const named = new Map();
  /** @type {Set<string>} */
  const ownNames = new Set();
  /** @param {any} pattern */
  const bind = (pattern) => {
    if (!pattern) return;
    if (pattern.type === "Identifier") ownNames.add(pattern.name);
    if (pattern.type === "AssignmentPattern") bind(pattern.left);
    if (pattern.type === "RestElement") bind(pattern.argument);
    if (pattern.type === "TSParameterProperty") bind(pattern.parameter);
    for (const element of pattern.elements ?? []) bind(element);
    for (const property of pattern.properties ?? []) bind(property.value ?? property);
  };
  /** Offsets of names that are only labels: a property after a dot, a key. @type {Set<number>} */
  const labels = new Set();
  /** @param {any} node */
  const enter = (node) => {
    bind(node.id);
    for (const parameter of node.params ?? []) bind(parameter);
  };
  new Visitor({
    ImportDeclaration: (node) => {
      keep(node);
      for (const specifier of node.specifiers) ownNames.add(specifier.local.name);
    },
    ExportNamedDeclaration: keep,
    ExportAllDeclaration: keep,
    ImportExpression: (node) => {
      const target = /** @type {any} */ (node.source);
      imports.push({ at: node.start, from: typeof target.value === "string" ? target.value : "" });
    },
    TSImportType: (node) => {
      imports.push({ at: node.start, from: String(/** @type {any} */ (node).source?.value ?? "") });
    },
    VariableDeclarator: enter,
    FunctionDeclaration: enter,
    FunctionExpression: enter,
    ArrowFunctionExpression: enter,
    ClassDeclaration: enter,
    TSInterfaceDeclaration: enter,
    TSTypeAliasDeclaration: enter,
    CatchClause: (node) => bind(node.param),
    MemberExpression: (node) => {
      if (!node.computed) labels.add(node.property.start);
    },
    Property: (node) => {
      if (!node.computed && !node.shorthand) labels.add(node.key.start);
    },
    PropertyDefinition: (node) => {
      if (!node.computed) labels.add(node.key.start);
    },
    MethodDefinition: (node) => {
      if (!node.computed) labels.add(node.key.start);
    },
    TSPropertySignature: (node) => {
      if (!node.computed) labels.add(node.key.start);
    },
    TSMethodSignature: (node) => {
      if (!node.computed) labels.add(node.key.start);
      for (const parameter of node.params) bind(parameter);
    },
    TSFunctionType: (node) => {
      for (const parameter of node.params) bind(parameter);
    },
    Identifier: (node) => {
      if (Object.hasOwn(OUTSIDE, node.name) && !labels.has(node.start) && !named.has(node.name)) {
        named.set(node.name, node.start);
      }
    },
  }).visit(parsed.program);
  // A name the file declares itself (a parameter called `document`) is its own and not the world's.
  const outside = [...named].filter(([name]) => !ownNames.has(name)).map(([name, at]) => ({ name, at }));
  const computed = isFrontDoor(file)
    ? parsed.program.body.filter((node) => !isHandedOut(node)).map((node) => node.start)
    : [];
  return { imports, outside, computed };
}

/**
 * `export { name } from "./file.ts"` or, for a file of nothing but types, `export type * from "./file.ts"`.
 * @param {{ type: string, source?: unknown, exportKind?: string }} statement
 */
const isHandedOut = ({ type, source, exportKind }) =>
  (type === "ExportNamedDeclaration" && Boolean(source)) ||
  (type === "ExportAllDeclaration" && exportKind === "type");

/** @param {string} file */
const isFrontDoor = (file) => /^src\/[^/]+\/index\.tsx?$/.test(file);

/** @param {string} file */
const isTest = (file) => /\.test\.tsx?$/.test(file);

/** @param {string} file  @returns {string | undefined} */
const roomOf = (file) => /^src\/([^/]+)\/./.exec(file)?.[1];

/** @param {string | undefined} room */
const rank = (room) => /** @type {readonly (string | undefined)[]} */ (ROOMS).indexOf(room);

/** @param {string | undefined} room */
const isEngine = (room) => /** @type {readonly (string | undefined)[]} */ (ENGINE_ROOMS).includes(room);

/**
 * What is wrong with a file by itself, whatever it imports.
 * @param {string} file  @param {Module} module  @returns {{ at: number, why: string }[]}
 */
function judgeFile(file, module) {
  const room = roomOf(file);
  if (room === undefined)
    return [{ at: 0, why: "The file stands in no room. Everything in src/ belongs to one of the rooms." }];
  if (rank(room) < 0) {
    return [
      {
        at: 0,
        why: `The room "${room}" is not in the list of rooms (scripts/rooms.mjs), so nobody can say what stands below it.`,
      },
    ];
  }
  const found = module.computed.map((at) => ({
    at,
    why: 'A front door only names what the room hands out (export { name } from "./file.ts"): whoever reads it must see the whole list, and nothing may happen on the way in.',
  }));
  if (!isEngine(room) || isTest(file)) return found;
  return [
    ...found,
    ...module.outside.map(({ at, name }) => ({
      at,
      why: `"${name}" is shut for "${room}". ${OUTSIDE[name]}`,
    })),
  ];
}

/**
 * @param {string} root  @param {string} file  @param {Import} one  @returns {{ at: number, why: string }[]}
 */
function judgeImport(root, file, { at, from }) {
  const room = roomOf(file);
  if (room === undefined || rank(room) < 0) return [];
  /** @param {string} why */
  const no = (why) => [{ at, why }];
  if (from === "")
    return no(
      "The import's target is worked out while running, so nobody can check where it leads. Name it.",
    );

  if (!from.startsWith(".")) {
    const bare = from.replace(/^node:/, "").split("/")[0] ?? "";
    const ofNode = from.startsWith("node:") || builtinModules.includes(bare);
    if (ofNode && isEngine(room) && !isTest(file)) {
      return no(
        `"${from}" is shut for "${room}". The engine runs unchanged in a browser's worker: no file, no clock, no network. Hand the content in as a value.`,
      );
    }
    return [];
  }

  const target = path.posix.normalize(path.posix.join(path.posix.dirname(file), from));
  if (!existsSync(path.join(root, target)))
    return no(`"${from}" leads nowhere. Imports name the file in full, with its .ts ending.`);
  const other = roomOf(target);
  if (other === undefined) {
    if (isEngine(room) && !isTest(file)) {
      return no(
        `"${from}" leads out of src/. The engine stands on its own feet: what it needs lies in its rooms.`,
      );
    }
    return [];
  }
  if (other === room) return [];
  if (rank(other) < 0)
    return no(`"${other}" is not in the list of rooms, so nobody can say whether it stands below "${room}".`);
  if (rank(other) > rank(room)) {
    return no(
      `"${room}" may not import "${other}", which stands above it. Imports go down the list only, so that a lower room can be understood, tested and used without the ones above.`,
    );
  }
  if (!isFrontDoor(target)) {
    return no(
      `"${from}" goes into "${other}" through the wall. Its front door is src/${other}/index.ts: what is not handed out there may change without notice.`,
    );
  }
  return [];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const report = checkDoors(fileURLToPath(new URL("..", import.meta.url)));
  for (const { file, line, why } of report.shut) console.error(`${file}:${line}\n  ${why}`);
  console.log(
    `${report.modules} modules, ${report.imports} imports, ${report.shut.length} shut doors tried.`,
  );
  process.exitCode = report.shut.length > 0 ? 1 : 0;
}
