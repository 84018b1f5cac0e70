// Reads what a single-file program holds: the table at the end of the .NET application bundle, version 6.
import { closeSync, openSync, readSync, statSync } from 'node:fs';

// SHA-256 of ".net core bundle"; the eight bytes before it say where the table begins.
const SIGNATURE = Buffer.from('8b1202b96a612038727b930214d7a03213f5b9e6efae3318ee3b2dce24b36aae', 'hex');
const STUB = 64 * 1024 * 1024; // the host itself stands before the files, and is smaller than this
const NATIVE = 2; // type of an entry that is extracted and loaded

/** Files in a program: name, type, size and the first bytes of each. Throws a sentence when it is no such program. */
export function bundledFiles(path) {
  const file = openSync(path, 'r');
  try {
    const size = statSync(path).size;
    const bytes = (offset, length) => {
      const into = Buffer.alloc(Math.min(length, size - offset));
      readSync(file, into, 0, into.length, offset);
      return into;
    };
    const stub = bytes(0, STUB);
    const mark = stub.indexOf(SIGNATURE);
    const start = mark < 8 ? 0 : Number(stub.readBigInt64LE(mark - 8));
    if (start <= 0 || start >= size) throw new Error(`${path} is no single-file program`);
    return readTable(bytes(start, size - start)).map(entry => ({ ...entry, head: bytes(entry.offset, 4096) }));
  } finally {
    closeSync(file);
  }
}

/** Those of them that are native libraries. */
export const nativesOf = files => files.filter(f => f.type === NATIVE);

function readTable(table) {
  let at = 0;
  const u32 = () => table.readUInt32LE((at += 4) - 4);
  const i64 = () => Number(table.readBigInt64LE((at += 8) - 8));
  const text = () => {
    let length = 0;
    for (let shift = 0, byte = 0x80; byte & 0x80; shift += 7) {
      byte = table[at++];
      length |= (byte & 0x7f) << shift;
    }
    return table.toString('utf8', at, (at += length));
  };
  const major = u32();
  u32();
  if (major < 6) throw new Error(`the bundle's table is of version ${major}; 6 is needed`);
  const count = u32();
  text(); // the bundle's own name
  at += 5 * 8; // where the runtime finds its two JSON files, and flags
  return Array.from({ length: count }, () => {
    const [offset, size, compressed] = [i64(), i64(), i64()];
    return { offset, size, compressed, type: table[at++], name: text() };
  });
}
