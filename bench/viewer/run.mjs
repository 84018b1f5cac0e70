// Measures the viewer with 20,000 segments, in one page with its peer: node run.mjs ADDRESS-OF-THE-RUNNING-APP [ROUNDS]
// The app must be running (dotnet run -c Release --project src/Ringwright.Web -- --no-browser). Its piece is replaced; undo brings it back.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const here = dirname(fileURLToPath(import.meta.url)), viewer = join(here, '../../src/Ringwright.Web/viewer');
const [address, rounds = '5'] = process.argv.slice(2);
if (!address) {
  console.error('Say where the app answers, such as: node run.mjs http://127.0.0.1:5000');
  process.exit(2);
}

const RINGS = 500, AROUND = 40;

function bigPiece() {
  const rings = Array.from({ length: RINGS }, (_, i) => {
    const diameter = 300 + 120 * Math.sin(i / 120);
    return {
      construction: 'segment ring', name: `Ring ${i + 1}`, segments: AROUND, thickness: '1.5 mm', diameter: `${diameter.toFixed(2)} mm`,
      innerDiameter: `${(diameter - 24).toFixed(2)} mm`, shift: (i % 2) / 2, woods: i % 25 < 3 ? ['walnut', 'maple'] : ['cherry'],
    };
  });
  return JSON.stringify({ format: 'ringwright/piece', version: 1, name: 'Tall vessel', units: 'mm', rings });
}

function bundlePeers() {
  const folder = mkdtempSync(join(tmpdir(), 'viewer-bench-'));
  const out = join(folder, 'peers.js');
  execFileSync(process.execPath, ['-e', `
    import('${join(viewer, 'node_modules/esbuild/lib/main.js')}').then((e) => e.build({
      entryPoints: ['${join(here, 'peers.js')}'], outfile: '${out}', bundle: true, format: 'esm', nodePaths: ['${join(viewer, 'node_modules')}'] }))`]);
  const text = readFileSync(out, 'utf8');
  rmSync(folder, { recursive: true });
  return text;
}

const executablePath = process.env.RINGWRIGHT_CHROMIUM ?? ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync);
const browser = await chromium.launch({
  executablePath,
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--enable-unsafe-swiftshader'],
});
const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
page.setDefaultTimeout(300_000);
await page.route('**/bench/peers.js', (route) => route.fulfill({ contentType: 'text/javascript', body: bundlePeers() }));
await page.goto(new URL('/pieces', address).href);
await page.locator('.page:not([inert])').waitFor();
await page.locator('input[type=file]').setInputFiles({ name: 'vessel.json', mimeType: 'application/json', buffer: Buffer.from(bigPiece()) });
await page.waitForFunction(() => document.querySelector('#field-name')?.value === 'Tall vessel');
await page.goto(new URL('/shape/rings', address).href);
const opened = Date.now();
await page.waitForFunction(() => document.querySelector('.viewer-canvas')?.dataset.segments === '20000');
console.log(`first picture after ${Date.now() - opened} ms`);
await page.waitForTimeout(3000); // the fine mesh follows the coarse one
await page.evaluate(async () => {
  const { prepare } = await import('/bench/peers.js');
  window.bench = prepare(document.querySelector('.viewer').pieceView.stage);
});
const { ways, size, segments } = await page.evaluate(() => ({ ways: bench.ways, size: bench.size, segments: bench.segments }));
const seen = Object.fromEntries(ways.map((way) => [way, []]));
// The first round warms up.
for (let round = 0; round <= Number(rounds); round++)
  for (const way of ways) {
    const one = await page.evaluate((w) => bench.draw(w), way);
    if (round > 0) seen[way].push(one);
  }
const middle = (values) => values.sort((a, b) => a - b)[Math.floor(values.length / 2)];
const best = (way, what) => middle(seen[way].map((o) => o[what]));
console.log(`${segments} segments, ${size.join(' × ')} pixels, median of ${rounds} rounds`);
console.log('| way | calls | triangles | ms to hand over | ms a frame | times the viewer |');
console.log('|---|---:|---:|---:|---:|---:|');
for (const way of ways)
  console.log(`| ${way} | ${seen[way][0].calls} | ${seen[way][0].triangles} | ${best(way, 'handing').toFixed(1)} | ${best(way, 'frame').toFixed(0)} | ${(best(way, 'frame') / best(ways[0], 'frame')).toFixed(2)} |`);
const whole = [];
for (let i = 0; i < 3; i++) whole.push(await page.evaluate(() => bench.pick()));
console.log(`pick: part ${whole[0].part}, ${middle(whole.map((w) => w.ms)).toFixed(0)} ms`);
await browser.close();
