// Asks the registries for known weaknesses in any package that is used, also by other packages. Needs the network.
// Usage: node audit.mjs     (0: none known, 1: some are, 3: could not be asked)
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

process.chdir(dirname(fileURLToPath(import.meta.url)));
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
let found = 0, unasked = 0;

if (knowsOfWeaknesses()) nuget();
else missed('NuGet', 'the source does not know even of a package that is known to be weak');
for (const lock of ['src', 'packaging', 'tests', 'bench', 'docs'].flatMap(folder => readdirSync(folder, { recursive: true }).filter(f => f.endsWith('package-lock.json') && !f.includes('node_modules')).map(f => join(folder, f)))) npmFolder(dirname(lock));

if (found) console.log(`${found} packages have known weaknesses.`);
if (unasked) console.log(`${unasked} of the questions could not be answered, so nothing is known of those.`);
if (!found && !unasked) console.log('No package has a known weakness.');
process.exit(found ? 1 : unasked ? 3 : 0);

// A source without data answers like one that knows of nothing. So it is asked about a package of which all know (CVE-2024-21907).
function knowsOfWeaknesses() {
  const folder = mkdtempSync(join(tmpdir(), 'ringwright-audit-'));
  try {
    writeFileSync(join(folder, 'control.csproj'), '<Project Sdk="Microsoft.NET.Sdk"><PropertyGroup><TargetFramework>net10.0</TargetFramework><NuGetAudit>false</NuGetAudit></PropertyGroup><ItemGroup><PackageReference Include="Newtonsoft.Json" Version="12.0.1" /></ItemGroup></Project>');
    const { stdout } = spawnSync('dotnet', ['list', join(folder, 'control.csproj'), 'package', '--vulnerable', '--format', 'json'], { cwd: folder, encoding: 'utf8' });
    return /"vulnerabilities"/.test(stdout);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function nuget() {
  const { stdout, stderr } = spawnSync('dotnet', ['list', 'Ringwright.slnx', 'package', '--vulnerable', '--include-transitive', '--format', 'json'], { encoding: 'utf8', maxBuffer: 1 << 28 });
  const report = json(stdout);
  // The command ends well also when no source could tell; it says so in its list of problems.
  const problems = report?.problems?.filter(p => p.level !== 'information') ?? [];
  if (!report?.projects || problems.length) return missed('NuGet', problems[0]?.text ?? (stderr.trim() || stdout.trim()));
  const weak = new Map();
  for (const p of report.projects)
    for (const f of p.frameworks ?? [])
      for (const k of [...(f.topLevelPackages ?? []), ...(f.transitivePackages ?? [])])
        if (k.vulnerabilities?.length) weak.set(`${k.id} ${k.resolvedVersion}`, k.vulnerabilities);
  for (const [name, list] of weak) for (const v of list) console.log(`${name}: ${v.severity} ${v.advisoryurl}`);
  found += weak.size;
  console.log(`NuGet: ${report.projects.length} projects asked about, ${weak.size} packages with known weaknesses.`);
}

function npmFolder(folder) {
  const { stdout, stderr } = spawnSync(npm, ['audit', '--json', '--package-lock-only'], { cwd: folder, encoding: 'utf8', shell: process.platform === 'win32', maxBuffer: 1 << 28 });
  const report = json(stdout);
  if (!report?.vulnerabilities) return missed(folder, report?.message ?? stderr);
  const weak = Object.values(report.vulnerabilities);
  for (const v of weak) console.log(`${folder}: ${v.name} ${v.range}: ${v.severity}`);
  found += weak.length;
  console.log(`${folder}: ${weak.length} packages with known weaknesses.`);
}

function missed(what, why) {
  unasked++;
  console.log(`${what}: could not be asked (${String(why).trim().split('\n')[0] || 'no answer'}).`);
}

function json(text) {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
