// Draws the pictures of the guide anew. Usage, after a build: node docs/pictures.mjs
import { spawnSync } from 'node:child_process';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));
const disc = 'examples/two-wood-disc.json', bowl = 'examples/feature-bowl.json', shop = ['--shop', 'examples/small-shop.json'];
const view = (file, name) => [name, ['picture', file, '--view', name, '--colour', '--out']];
const pictures = [
  ...['ring', 'strip', 'fence', 'first-cut'].map((name) => view(disc, name)),
  ...['piece', 'unrolled', 'glue', 'lathe'].map((name) => view(bowl, name)),
  ['reach', ['reach', ...shop, '--segments', '6-48/6', '--diameters', '8-40/4', '--picture']],
  ['fit', ['fit', disc, '--measured', 'examples/measured-disc.csv', '--depth', '7 mm', '--picture']],
  ['diagnose', ['diagnose', disc, '--read', 'gathered rim closed', '--read', 'gathered centre 0.4 mm', '--picture']],
];
for (const [name, args] of pictures) {
  const run = spawnSync('dotnet', ['run', '--no-build', '--project', 'src/Ringwright.Cli', '--', ...args, `docs/pictures/guide/${name}.png`], { encoding: 'utf8' });
  if (run.status !== 0) {
    console.error(`${name}: ${run.stderr}${run.stdout}`);
    process.exit(1);
  }
}
console.log(`${pictures.length} pictures drawn.`);
