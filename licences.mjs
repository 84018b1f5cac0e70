// Writes docs/licences.md: every package, the licence it is under, and whether that may be. Build the solution first.
// Usage: node licences.mjs [--check]     (--check writes nothing and fails when the list is old)
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { allowed, allowedInTools, isAllowed } from './packaging/allowed.mjs';
import { distinct, npmPackages, nugetPackages } from './packaging/packages.mjs';

process.on('uncaughtException', e => {
  console.error(`The list was not made: ${e.message}.`);
  process.exit(1);
});
process.chdir(dirname(fileURLToPath(import.meta.url)));
const list = 'docs/licences.md';
const projectsIn = folder => readdirSync(folder, { withFileTypes: true }).filter(e => e.isDirectory()).map(e => join(folder, e.name)).filter(f => readdirSync(f).some(name => name.endsWith('.csproj')));

const nuget = folder => nugetPackages(join(folder, 'obj'));

// esbuild bundles the viewer and stays behind.
const isTool = p => /^(@esbuild\/|esbuild$)/.test(p.name);
const viewer = npmPackages('src/Ringwright.Web/viewer');
const given = distinct([...projectsIn('src').flatMap(nuget), ...viewer.filter(p => !isTool(p)), ...npmPackages('src/Ringwright.Paper/fonts')]);
const isGiven = new Set(given.map(p => `${p.name} ${p.version}`));
const toolFolders = ['tests', 'bench', 'docs'].flatMap(folder => readdirSync(folder, { recursive: true }).filter(f => f.endsWith('package-lock.json') && !f.includes('node_modules')).map(f => dirname(join(folder, f))));
const tools = distinct([...['tests', 'bench', 'docs'].flatMap(projectsIn).flatMap(nuget), ...viewer.filter(isTool), ...['packaging', ...toolFolders].flatMap(npmPackages)]).filter(p => !isGiven.has(`${p.name} ${p.version}`));

const foreign = [...given.filter(p => !isAllowed(p.licence, allowed)), ...tools.filter(p => !isAllowed(p.licence, allowedInTools))];
const table = packages => ['| package | version | licence |', '|---|---|---|', ...packages.map(p => `| ${p.name} | ${p.version} | ${p.licence || 'none stated'} |`)].join('\n');
const text = `# Licences

Ringwright is under the [MIT licence](../LICENSE). It is built from the packages below; none of them is kept in this repository. This list is written by \`node licences.mjs\` from what the build resolved, and a test fails when it is old or when a licence outside these slips in: ${[...allowed].join(', ')}. Tools may also be under ${[...allowedInTools].filter(l => !allowed.has(l)).join(', ')}, for nothing of them is given away.

## In the programs
${table(given)}

The packaged programs also hold the .NET runtime and ASP.NET Core (MIT), with the notices of what these contain. Their \`licences\` folder has the text of each licence and the notices that the packages bring.

Native libraries hold more than their package's licence says, by their own notices and file names: SkiaSharp's holds Skia (BSD-3-Clause), FreeType, HarfBuzz, libpng, libjpeg-turbo, zlib and others, all listed in the notice that goes with it; SQLite is in the public domain; OR-Tools' holds Abseil, SCIP (Apache-2.0), HiGHS (MIT), Protocol Buffers, RE2 (BSD-3-Clause), Eigen (MPL-2.0) and the COIN-OR libraries Cbc, Cgl, Clp, Osi and CoinUtils (EPL-2.0), unchanged; the last is from memory, for that package brings no notice. Their source is published by these projects.

## Only to build, test and measure
${table(tools)}
`;

for (const p of foreign) console.error(`${p.name} ${p.version} is under ${p.licence || 'no stated licence'}, which is not among those allowed; see packaging/allowed.mjs.`);
if (process.argv.includes('--check')) {
  const old = !existsSync(list) || readFileSync(list, 'utf8') !== text;
  if (old) console.error(`${list} is old; run node licences.mjs and commit it.`);
  if (!old && foreign.length === 0) console.log(`${given.length + tools.length} packages, all allowed, and ${list} lists them.`);
  process.exit(old || foreign.length > 0 ? 1 : 0);
}

writeFileSync(list, text);
console.log(`${list} lists ${given.length} packages in the programs and ${tools.length} tools.`);
process.exit(foreign.length > 0 ? 1 : 0);
