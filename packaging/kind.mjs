// What kind of program some bytes begin: the system and the processor that it is for.

const ELF = { 0x3e: 'x64', 0xb7: 'arm64' };
const MACH = { 0x01000007: 'x64', 0x0100000c: 'arm64' };
const PE = { 0x8664: 'x64', 0xaa64: 'arm64', 0x14c: 'any' };
const LC_CODE_SIGNATURE = 0x1d;

/** The kinds, such as `linux-x64`; several for a library that holds more than one, none when it is no program. */
export function kindsOf(head) {
  if (head.length < 64) return [];
  if (head.readUInt32BE(0) === 0x7f454c46) return [`linux-${ELF[head.readUInt16LE(18)] ?? 'other'}`];
  if (head.readUInt32LE(0) === 0xfeedfacf) return [`osx-${MACH[head.readUInt32LE(4)] ?? 'other'}`];
  // A "fat" file holds one library for each processor.
  if (head.readUInt32BE(0) === 0xcafebabe) return Array.from({ length: Math.min(head.readUInt32BE(4), 8) }, (_, i) => `osx-${MACH[head.readUInt32BE(8 + 20 * i)] ?? 'other'}`);
  if (head.toString('latin1', 0, 2) !== 'MZ') return [];
  const pe = head.readUInt32LE(0x3c);
  return pe + 6 <= head.length && head.toString('latin1', pe, pe + 4) === 'PE\0\0' ? [`win-${PE[head.readUInt16LE(pe + 4)] ?? 'other'}`] : [];
}

/** Whether a Mach-O program carries a signature; without one an Apple processor runs nothing. */
export function isSigned(head) {
  if (head.readUInt32LE(0) !== 0xfeedfacf) return false;
  for (let i = 0, at = 32; i < head.readUInt32LE(16) && at + 8 <= head.length; i++, at += head.readUInt32LE(at + 4)) if (head.readUInt32LE(at) === LC_CODE_SIGNATURE) return true;
  return false;
}
