import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize, sep } from "node:path";

/** What the app's pages may load: their own files, and WebAssembly for the solver. Nothing looser. */
export const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** @type {Readonly<Record<string, string>>} */
const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".svg": "image/svg+xml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".wasm": "application/wasm",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".webp": "image/webp",
  ".ico": "image/x-icon",
  ".pdf": "application/pdf",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
};
const SECURITY = {
  "Content-Security-Policy": POLICY,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
};

/**
 * Serves the files of one folder on this machine alone, each with the page's security policy.
 *
 * @param {string} folder
 * @param {{ port?: number }} [options]  port 0 or none: any free one
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export async function serve(folder, { port = 0 } = {}) {
  const server = createServer((request, response) => {
    answer(folder, request, response).catch(() => refuse(response, 500));
  });
  await new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => resolve(undefined));
  });
  const address = server.address();
  const used = typeof address === "object" && address !== null ? address.port : port;
  return {
    url: `http://127.0.0.1:${used}/`,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)));
        server.closeAllConnections();
      }),
  };
}

/**
 * The file that an address stands for, or undefined where it would leave the folder.
 *
 * @param {string} folder
 * @param {string} address  path and query of a request
 */
export function fileFor(folder, address) {
  const path = decoded(address.split(/[?#]/, 1)[0] ?? "");
  if (path === undefined || path.includes("\0")) return undefined;
  const root = normalize(folder);
  const file = normalize(join(root, path.endsWith("/") ? `${path}index.html` : path));
  return file.startsWith(root.endsWith(sep) ? root : root + sep) ? file : undefined;
}

/** @param {string} path */
function decoded(path) {
  try {
    return decodeURIComponent(path);
  } catch {
    return undefined;
  }
}

/**
 * @param {string} folder
 * @param {import("node:http").IncomingMessage} request
 * @param {import("node:http").ServerResponse} response
 */
async function answer(folder, request, response) {
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(response, 405);
  const file = fileFor(folder, request.url ?? "/");
  const found = file === undefined ? undefined : await stat(file).catch(() => undefined);
  if (file === undefined || found === undefined || !found.isFile()) return refuse(response, 404);
  response.writeHead(200, {
    ...SECURITY,
    "Content-Type": TYPES[extname(file).toLowerCase()] ?? "application/octet-stream",
    "Content-Length": found.size,
    "Cache-Control": "no-cache",
  });
  if (request.method === "HEAD") response.end();
  else
    createReadStream(file)
      .on("error", () => response.destroy())
      .pipe(response);
}

/**
 * @param {import("node:http").ServerResponse} response
 * @param {number} status
 */
function refuse(response, status) {
  if (!response.headersSent) {
    response.writeHead(status, { ...SECURITY, "Content-Type": "text/plain; charset=utf-8" });
  }
  response.end(`${status}\n`);
}
