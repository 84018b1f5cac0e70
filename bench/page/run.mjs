// Measures what a person waits for at the page: node run.mjs ADDRESS-OF-THE-RUNNING-APP [ROUNDS]
// The app must be running (dotnet run -c Release --project src/Ringwright.Web -- --no-browser). Its piece is replaced; undo brings it back.
// Marks: a warm page's first picture within 1 s, an edit of 1,500 segments drawn within 100 ms; both in the middle of the rounds.
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

// The package is that of the viewer's bench beside it: npm ci there.
const { chromium } = createRequire(join(dirname(fileURLToPath(import.meta.url)), '../viewer/run.mjs'))('playwright-core');
const [address, rounds = '15'] = process.argv.slice(2);
if (!address) {
  console.error('Say where the app answers, such as: node run.mjs http://127.0.0.1:5000');
  process.exit(2);
}

const RINGS = 60, AROUND = 25, FIRST = 1000, EDIT = 100; // ms

function tower() {
  const rings = Array.from({ length: RINGS }, (_, i) => {
    const diameter = 150 + 40 * Math.sin(i / 9);
    return {
      construction: 'segment ring', name: `Ring ${i + 1}`, segments: AROUND, thickness: '5 mm', diameter: `${diameter.toFixed(2)} mm`,
      innerDiameter: `${(diameter - 40).toFixed(2)} mm`, shift: (i % 2) / 2, woods: ['maple', 'walnut', 'cherry', 'maple', 'padauk'],
    };
  });
  return JSON.stringify({ format: 'ringwright/piece', version: 1, name: 'Tower', units: 'mm', rings });
}

// In the page: when the picture is there, counted from the start of the navigation; and from a key's event to the picture's change.
// A change counts when the next frame has been drawn with it.
function watch() {
  const drawn = (then) => requestAnimationFrame(() => setTimeout(then));
  window.firstPicture = (css) => new Promise((done) => {
    const look = () => (document.querySelector(css) ? drawn(() => done(performance.now())) : requestAnimationFrame(look));
    look();
  });
  window.edit = (field, text, picture, attributes) => new Promise((done, fail) => {
    const input = document.querySelector(field), seen = new MutationObserver(() => {
      seen.disconnect();
      const changed = performance.now() - typed;
      drawn(() => done({ changed, drawn: performance.now() - typed }));
    });
    seen.observe(document.querySelector(picture), { subtree: true, childList: true, characterData: true, attributes: true, attributeFilter: attributes });
    setTimeout(() => fail(new Error('The picture does not change.')), 30_000);
    const typed = performance.now();
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
}

const executablePath = process.env.RINGWRIGHT_CHROMIUM ?? ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync);
const browser = await chromium.launch({
  executablePath,
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--enable-unsafe-swiftshader'],
});
const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
page.setDefaultTimeout(120_000);
await page.addInitScript(watch);
const go = async (path) => {
  await page.goto(new URL(path, address).href);
  await page.locator('.page:not([inert])').waitFor();
};

const order = (values) => values.toSorted((a, b) => a - b);
const share = (values, part) => order(values)[Math.min(values.length - 1, Math.ceil(part * values.length) - 1)];
let met = true;
function tell(what, values, mark) {
  const middle = share(values, 0.5), worst = share(values, 0.95);
  met &&= middle <= mark;
  console.log(`| ${what} | ${middle.toFixed(0)} | ${worst.toFixed(0)} | ${mark} | ${middle <= mark ? 'met' : 'missed'} |`);
}

await go('/pieces');
await page.locator('input[type=file]').setInputFiles({ name: 'tower.json', mimeType: 'application/json', buffer: Buffer.from(tower()) });
await page.waitForFunction(() => document.querySelector('#field-name')?.value === 'Tower');
console.log(`${RINGS * AROUND} segments, ${rounds} rounds after one that warms up, ms`);
console.log('| what | median | p95 | mark | |');
console.log('|---|---:|---:|---:|---|');

for (const [what, path, picture] of [['first picture, from above', '/saw', '.stage svg'], ['first picture, solid', '/shape/rings', '.viewer-canvas[data-calls]']]) {
  const seen = [];
  for (let round = 0; round <= Number(rounds); round++) {
    await page.goto(new URL(path, address).href);
    const at = await page.evaluate((css) => firstPicture(css), picture);
    if (round > 0) seen.push(at);
    await page.locator('.page:not([inert])').waitFor();
  }
  tell(what, seen, FIRST);
}

await go('/shape/rings');
const views = [['Side', '.view-side svg'], ['Ring', '.view-plan svg[role=group]'], ['Laid flat', '.view-flat svg'], ['Solid', '.viewer-canvas', ['data-version']]];
for (const [view, picture, attributes] of views) {
  await page.locator('.stage-views').getByRole('radio', { name: view, exact: true }).check();
  await page.locator(view === 'Solid' ? '.viewer-canvas[data-calls]' : picture).waitFor();
  await page.waitForTimeout(500);
  const changed = [], drawn = [];
  for (let round = 0; round <= Number(rounds); round++) {
    const one = await page.evaluate(([text, css, only]) => edit('#field-segments', text, css, only), [String(24 + (round % 2)), picture, attributes]);
    if (round > 0) {
      changed.push(one.changed);
      drawn.push(one.drawn);
    }
    await page.waitForTimeout(400); // what follows the picture is over by then
  }
  tell(`edit, ${view}: changed`, changed, EDIT);
  tell(`edit, ${view}: and drawn`, drawn, EDIT);
}
await browser.close();
process.exit(met ? 0 : 1);
