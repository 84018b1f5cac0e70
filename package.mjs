// Makes programs that run without .NET or Node, one folder for each system, in out/. Checks each, and starts this machine's own.
// Usage: node package.mjs [win-x64 osx-arm64 osx-x64 linux-x64 linux-arm64]      (all of them when none is named)
import { spawnSync } from 'node:child_process';
import { copyFileSync, cpSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { problemsOf } from './packaging/check.mjs';
import { writeNotices } from './packaging/notices.mjs';
import { distinct, npmPackages, nugetPackages } from './packaging/packages.mjs';
import { smoke } from './packaging/smoke.mjs';

const root = dirname(fileURLToPath(import.meta.url));
process.chdir(root);
const systems = ['win-x64', 'osx-arm64', 'osx-x64', 'linux-x64', 'linux-arm64'];
const asked = process.argv.slice(2);
const unknown = asked.find(rid => !systems.includes(rid));
if (unknown) fail(`There is no system “${unknown}”; these are known: ${systems.join(', ')}.`);

const version = readFileSync('Directory.Build.props', 'utf8').match(/<Version>([^<]+)</)[1];
const own = `${{ win32: 'win', darwin: 'osx', linux: 'linux' }[process.platform]}-${process.arch}`;
const work = join(root, 'out/build'); // beside the ordinary bin and obj, so that these stay as they are
const programs = [['Ringwright.Web', 'Ringwright.Web', 'ringwright-app'], ['Ringwright.Cli', 'ringwright', 'ringwright']];

const wanted = asked.length ? asked : systems;
try {
  run(process.execPath, [join(root, 'src/npm-ci.mjs')], 'packaging');
} catch (e) {
  fail(`The texts of licences were not fetched: ${e.message}.`);
}

rmSync(join(work, 'publish'), { recursive: true, force: true });
let failed = 0;
for (const rid of wanted) {
  try {
    await make(rid);
  } catch (e) {
    failed++;
    console.error(`${rid}: ${e.message}`);
  }
}

process.exit(failed ? 1 : 0);

// From what was published to a folder that can be given away.
async function make(rid) {
  const folder = join('out', `ringwright-${version}-${rid}`), end = rid.startsWith('win-') ? '.exe' : '';
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, 'licences'), { recursive: true });
  for (const [project, made, name] of programs) {
    const published = join(work, 'publish', project, rid);
    publish(project, rid, published);
    for (const entry of readdirSync(published)) {
      if (entry === made + end) renameSync(join(published, entry), join(folder, name + end));
      else if (entry !== 'web.config' && !entry.endsWith('.pdb')) cpSync(join(published, entry), join(folder, entry), { recursive: true });
    }
  }

  // For the shell; the app lists only pieces.
  for (const file of readdirSync('examples')) copyFileSync(join('examples', file), join(folder, 'examples', file));
  copyFileSync('LICENSE', join(folder, 'licences', 'Ringwright-MIT.txt'));
  const npm = [...npmPackages('src/Ringwright.Web/viewer').filter(p => !p.name.includes('esbuild')), ...npmPackages('src/Ringwright.Paper/fonts')];
  const nuget = ['Ringwright.Web', 'Ringwright.Cli'].flatMap(p => nugetPackages(join(work, 'obj', p))).filter(p => !isOfAnother(p.name, rid));
  writeNotices(distinct([...nuget, ...npm]), join(work, 'obj/Ringwright.Web/project.assets.json'), rid, join(folder, 'licences'));

  const natives = [];
  for (const [, , name] of programs) {
    const { problems, natives: count } = problemsOf(join(folder, name + end), rid);
    if (problems.length) throw new Error(problems.join('; '));
    natives.push(count);
  }

  const size = programs.map(([, , name]) => `${Math.round(statSync(join(folder, name + end)).size / 1e6)} MB`).join(' and ');
  console.log(`${folder}: app and shell program of ${size}, ${natives.join(' and ')} native libraries inside, all for ${rid}, ${readdirSync(join(folder, 'licences')).length} licence files.`);
  if (rid !== own) return console.log(`  not started: this machine is ${own}`);
  const [app, cli] = programs.map(([, , name]) => join(root, folder, name + end));
  for (const line of await smoke({ app, cli, examples: join(root, folder, 'examples'), version })) console.log(`  started: ${line}`);
}

function publish(project, rid, into) {
  run('dotnet', ['publish', `src/${project}`, '-c', 'Release', '-r', rid, '--self-contained', '--artifacts-path', work, '-o', into, '--nologo', '-v', 'quiet',
    '-p:PublishSingleFile=true', '-p:IncludeNativeLibrariesForSelfExtract=true', '-p:DebugType=none', '-p:PublishDocumentationFiles=false', '-p:PublishReferencesDocumentationFiles=false']);
}

// Natives of the other systems are among what was resolved, but not in the program.
function isOfAnother(name, rid) {
  const system = name.match(/\.runtime\.(.+)$/i)?.[1] ?? { linux: 'linux', macos: 'osx', win32: 'win' }[name.match(/\.NativeAssets\.(\w+)/)?.[1].toLowerCase()];
  return system !== undefined && !rid.startsWith(system.toLowerCase());
}

function run(command, args, cwd = '.') {
  const { status } = spawnSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'], cwd });
  if (status !== 0) throw new Error(`${command} ${args[0]} failed`);
}

function fail(sentence) {
  console.error(sentence);
  process.exit(1);
}
