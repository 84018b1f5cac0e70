// Which licences may be in what we give away, and which besides in tools that only build, test and measure.

/** May be given away with a program under MIT, with their notices. */
export const allowed = new Set(['MIT', 'MIT-0', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'ISC', 'Zlib', 'MS-PL', 'OFL-1.1', 'Unlicense', 'CC0-1.0']);

/** Stay on the machine of whoever builds: nothing of them is given away. */
export const allowedInTools = new Set([...allowed, 'MPL-2.0', 'LGPL-3.0-or-later']);

/** Whether an SPDX expression is met: each side of AND, one side of OR. Brackets and exceptions are not read, so never allowed. */
export function isAllowed(expression, list) {
  if (expression === '' || /[()]| WITH /.test(expression)) return false;
  return expression.split(' OR ').some(side => side.split(' AND ').every(id => list.has(id.trim())));
}
