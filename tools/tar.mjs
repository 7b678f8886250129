const BLOCK = 512;

/**
 * The files of an uncompressed tar archive (ustar, plain files only).
 *
 * @param {Buffer} archive
 * @returns {{ name: string, content: Buffer }[]}
 */
export function readTar(archive) {
  const files = [];
  let at = 0;
  while (at + BLOCK <= archive.length && archive[at] !== 0) {
    const name = field(archive, at, 0, 100);
    const size = parseInt(field(archive, at, 124, 12), 8) || 0;
    const kind = field(archive, at, 156, 1);
    if (name.split("/").includes("..") || name.startsWith("/")) throw new Error(`tar: unsafe name ${name}`);
    const start = at + BLOCK;
    if (start + size > archive.length) throw new Error(`tar: ${name} is cut short`);
    if (kind === "0" || kind === "") files.push({ name, content: archive.subarray(start, start + size) });
    at = start + Math.ceil(size / BLOCK) * BLOCK;
  }
  return files;
}

/**
 * @param {Buffer} archive
 * @param {number} header
 * @param {number} offset
 * @param {number} length
 */
function field(archive, header, offset, length) {
  const text = archive.toString("latin1", header + offset, header + offset + length);
  return text.split("\0", 1)[0] ?? "";
}
