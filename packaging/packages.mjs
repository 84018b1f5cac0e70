// The packages that a project was resolved to, with the licence each states of itself.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

// These come with the SDK and change with it; their version is the SDK's.
const ofSdk = /^Microsoft\.(AspNetCore\.App|NETCore\.App|NET\.ILLink)/i;

/** Packages of a .NET project, from what its restore wrote into its folder obj. Throws a sentence when it was not restored. */
export function nugetPackages(obj) {
  const path = join(obj, 'project.assets.json');
  if (!existsSync(path)) throw new Error(`${path} is missing; run dotnet build first`);
  const assets = JSON.parse(readFileSync(path, 'utf8'));
  return Object.entries(assets.libraries).filter(([key, library]) => library.type === 'package' && !ofSdk.test(key)).map(([key, library]) => {
    const [name, version] = key.split('/');
    const folder = Object.keys(assets.packageFolders).map(f => join(f, library.path)).find(existsSync);
    if (!folder) throw new Error(`${key} is not in the package folders; run dotnet build first`);
    const spec = readFileSync(join(folder, readdirSync(folder).find(f => f.endsWith('.nuspec'))), 'utf8');
    const tag = of => spec.match(new RegExp(`<${of}(?:\\s[^>]*)?>([^<]*)</${of}>`))?.[1].trim() ?? '';
    // Only an expression says it in words that can be compared; a file or an address is no answer.
    const licence = /<license type="expression"/.test(spec) ? tag('license') : '';
    return { name, version, licence, holder: entities(tag('copyright') || tag('authors')), folder };
  });
}

/** Packages of a folder with a lock file of npm's; `folder` of each is where it is once installed. */
export function npmPackages(lockFolder) {
  const { packages } = JSON.parse(readFileSync(join(lockFolder, 'package-lock.json'), 'utf8'));
  return Object.entries(packages).filter(([key]) => key !== '').map(([key, entry]) => {
    const folder = join(lockFolder, key), own = join(folder, 'package.json');
    const author = existsSync(own) ? JSON.parse(readFileSync(own, 'utf8')).author : '';
    return { name: key.slice(key.lastIndexOf('node_modules/') + 'node_modules/'.length), version: entry.version, licence: entry.license ?? '', holder: author?.name ?? author ?? '', folder };
  });
}

/** The same package of several projects once, by name and version. */
export function distinct(packages) {
  const all = new Map(packages.map(p => [`${p.name.toLowerCase()} ${p.version}`, p]));
  return [...all.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, p]) => p);
}

const entities = text => text.replaceAll('&#169;', '©').replaceAll('&copy;', '©').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');
