// Checks a program that cannot be started here by what it is made of.
import { readFileSync } from 'node:fs';
import { bundledFiles, nativesOf } from './bundle.mjs';
import { isSigned, kindsOf } from './kind.mjs';

// Without these no drawing, no boards, no data.
const needed = [/SkiaSharp/i, /ortools/i, /e_sqlite3/i];

/** Says what is wrong, one sentence each; nothing when all is right. */
export function problemsOf(path, rid) {
  const head = readFileSync(path).subarray(0, 1 << 16);
  const natives = nativesOf(bundledFiles(path));
  const problems = [];
  if (!kindsOf(head).includes(rid)) problems.push(`${path} is for ${kindsOf(head).join(', ') || 'no system'}, not for ${rid}`);
  if (rid.startsWith('osx-') && !isSigned(head)) problems.push(`${path} is not signed, so macOS will not start it`);
  for (const native of natives) if (!kindsOf(native.head).includes(rid)) problems.push(`${path} holds ${native.name}, which is for ${kindsOf(native.head).join(', ') || 'no system'}`);
  for (const name of needed) if (!natives.some(n => name.test(n.name))) problems.push(`${path} holds no native library like ${name.source}`);
  return { problems, natives: natives.length };
}
