// Puts the licences of everything in a program beside it: who holds what, the notices that packages bring, and the texts.
import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const ownNotice = /^(licen[cs]e|notice|third-?party-?notices?)[^/]*$/i;
// Inside OR-Tools' native library, which brings no notice of its own.
const inside = ['EPL-2.0', 'MPL-2.0'];

/** Fills a folder. Throws a sentence when a text is missing. */
export function writeNotices(packages, assets, rid, into) {
  mkdirSync(into, { recursive: true });
  for (const p of packages) copyNotices(p.folder, p.name, into);
  for (const pack of runtimePacks(assets, rid)) copyNotices(pack.folder, pack.name, into);
  const lines = packages.map(p => `${p.name} ${p.version}\n    ${p.licence}${p.holder ? `\n    ${p.holder}` : ''}`);
  writeFileSync(join(into, 'packages.txt'), `What this program is built from, and under which licence each is. Texts stand beside this file.\nThe .NET runtime and ASP.NET Core are under the MIT licence, © .NET Foundation and Contributors.\n\n${lines.join('\n\n')}\n`);
  const ids = new Set([...packages.flatMap(p => p.licence.split(/ AND | OR /)), ...inside]);
  for (const id of ids) writeFileSync(join(into, `${id}.txt`), textOf(id));
}

function copyNotices(folder, name, into) {
  for (const file of existsSync(folder) ? readdirSync(folder).filter(f => ownNotice.test(f)) : []) copyFileSync(join(folder, file), join(into, `${name.replaceAll('/', '-').replace('@', '')}-${file}`));
}

function textOf(id) {
  const lists = dirname(createRequire(import.meta.url).resolve('spdx-license-list/package.json'));
  const path = join(lists, 'licenses', `${id}.json`);
  if (!existsSync(path)) throw new Error(`there is no text of the licence ${id}`);
  return JSON.parse(readFileSync(path, 'utf8')).licenseText + '\n';
}

// The runtime inside comes as packages as well; what was restored last may have been for another system.
function runtimePacks(assets, rid) {
  const { project, packageFolders } = JSON.parse(readFileSync(assets, 'utf8'));
  return Object.values(project.frameworks).flatMap(f => f.downloadDependencies ?? []).filter(d => /\.app\.runtime\./i.test(d.name)).flatMap(d => {
    const name = d.name.replace(/\.runtime\..*$/i, `.Runtime.${rid}`);
    const version = d.version.match(/[\d.]+[^,\]]*/)[0];
    const folder = Object.keys(packageFolders).map(f => join(f, name.toLowerCase(), version)).find(existsSync);
    if (!folder) throw new Error(`${name} ${version} is not in the package folders`);
    return [{ name, folder }];
  });
}
