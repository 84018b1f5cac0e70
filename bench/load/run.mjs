// Fifty clients on one Ringwright: browsers, windows without a browser, tablets at the saw. All read and edit for some minutes;
// then the app is ended and started anew, and everybody's last edit must be there. Only loopback. Needs a Chromium.
// Usage: node bench/load/run.mjs [--minutes 5] [--app PATH]      (PATH: a packaged program; else the app as it was built)
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { browsers } from './browsers.mjs';
import { Circuit } from './circuit.mjs';
import { Figures } from './figures.mjs';
import { memoryOf } from './memory.mjs';
import { tablet } from './tablets.mjs';

const BROWSERS = 6, WINDOWS = 24, TABLETS = 20;
const PAGES = ['/timber', '/pieces', '/print', '/shape', '/fit'];
const WARM_UP = 60; // s; code is compiled and pools fill
const option = (name, usual) => (process.argv.includes(name) ? process.argv[process.argv.indexOf(name) + 1] : usual);
const minutes = Number(option('--minutes', '5'));
if (!(minutes > 0 && minutes <= 60)) throw new Error('--minutes: from some tenths to 60 are needed');

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const built = ['Release', 'Debug'].map(c => join(root, `src/Ringwright.Web/bin/${c}/net10.0/Ringwright.Web.dll`)).find(existsSync);
const program = option('--app', built);
if (!program) throw new Error('the app is not built; run dotnet build first');
const data = mkdtempSync(join(tmpdir(), 'ringwright-load-'));
const sleep = seconds => new Promise(done => setTimeout(done, 1000 * seconds));
const figures = new Figures();
let app;

try {
  app = await start();
  const memory = memoryOf(app.pid);
  const fields = await fieldsOf(app.address);
  const own = fields.slice(0, BROWSERS + WINDOWS);
  const until = Date.now() + 60_000 * minutes;
  const clients = [
    browsers(app.address, own.slice(0, BROWSERS), until, figures),
    ...Array.from({ length: WINDOWS }, (_, i) => circuitClient(app.address, own[BROWSERS + i], i, until)),
    ...Array.from({ length: TABLETS }, (_, i) => tablet(app.address, i, until, figures)),
  ];
  const done = await Promise.all(clients);
  const last = done.flat();
  // The last save is under way.
  await sleep(3);
  const samples = memory.end();
  const words = await app.end();
  if (words) figures.fault(`the app said: ${words}`);

  app = await start();
  await check(app.address, last);
  report(samples, last);
} finally {
  await app?.end();
  rmSync(data, { recursive: true, force: true });
}

process.exit(figures.faults.length ? 1 : 0);

async function start() {
  const env = { ...process.env, RINGWRIGHT_DATA: data };
  const args = ['--no-browser', '--port', '0'];
  const child = program.endsWith('.dll') ? spawn('dotnet', [program, ...args], { env }) : spawn(program, args, { env });
  let said = '';
  child.stdout.on('data', d => (said += d));
  child.stderr.on('data', d => (said += d));
  const ended = new Promise(done => child.once('exit', done));
  while (!/open at http:\S+/.test(said)) {
    if (child.exitCode !== null) throw new Error(`the app did not start: ${said}`);
    await sleep(0.1);
  }
  return {
    pid: child.pid,
    address: said.match(/http:\/\/[\d.:]+/)[0],
    // What it said besides its address: warnings and errors.
    async end() {
      child.kill('SIGTERM');
      await ended;
      return said.split('\n').filter(line => line && !line.startsWith('Ringwright is open')).join(' ').slice(0, 600);
    },
  };
}

// Fields that several may type into without being in each other's way: one for each client.
async function fieldsOf(address) {
  const found = [];
  for (const page of PAGES) {
    const circuit = await Circuit.open(address, page);
    await sleep(1);
    for (const field of circuit.fields.keys()) if (field.startsWith('desk-') && !found.some(f => f.field === field)) found.push({ page, field });
    circuit.close();
  }
  return found;
}

// What is typed for the printer is read when somebody prints.
function textFor(field, client, n) {
  const forPrinter = { correction: `1.00${n % 5},0.99${5 + (n % 5)}`, grid: `3x${6 + (n % 2)}`, margins: `${8 + (n % 4)} mm,12 mm`, gaps: `${2 + (n % 3)} mm,2 mm`, skip: `${n % 9}` };
  return forPrinter[field.replace('desk-print-', '')] ?? `${client} edit ${n}`;
}

// Without a field of its own it looks on: every change of the others is drawn for it too.
async function circuitClient(address, place, number, until) {
  const last = [];
  let circuit;
  try {
    await sleep(number / 4);
    circuit = await figures.timed('opening a window', () => Circuit.open(address, place?.page ?? PAGES[number % PAGES.length]));
    for (let n = 1; Date.now() < until; n++) {
      await sleep(3 + 3 * Math.random());
      if (!place) continue;
      const text = textFor(place.field, `window ${number}`, n);
      await figures.timed('an edit in a window', () => circuit.type(place.field, text));
      last[0] = { ...place, text };
    }
  } catch (e) {
    figures.fault(`window ${number}: ${e.message}`);
  }
  if (circuit) {
    for (const fault of circuit.faults) figures.fault(`window ${number}: ${fault}`);
    figures.add('drawings sent to windows', circuit.batches);
    figures.add('bytes sent to windows', circuit.bytes);
    circuit.close();
  }
  return last;
}

async function check(address, last) {
  const pages = new Map();
  for (const page of PAGES) pages.set(page, await (await fetch(address + page)).text());
  const { floor } = JSON.parse(readFileSync(join(data, 'floor.json'), 'utf8'));
  for (const edit of last) {
    const kept = edit.field ? valueOf(pages.get(edit.page), edit.field) === edit.text : edit.marks.every(id => floor.marks[edit.job]?.some(m => m.id === id));
    figures.add('edits looked for after a new start', edit.marks?.length ?? 1);
    if (!kept) figures.fault(`lost: ${edit.field ?? edit.job}, ${edit.text ?? `${edit.marks.length} marks`}; there is “${edit.field ? valueOf(pages.get(edit.page), edit.field) : ''}”`);
  }
}

function valueOf(page, field) {
  const tag = page.match(new RegExp(`<input id="${field}"[^>]*>`))?.[0] ?? '';
  return tag.match(/ value="([^"]*)"/)?.[1].replaceAll('&quot;', '"').replaceAll('&#x27;', "'").replaceAll('&amp;', '&');
}

function report(samples, last) {
  console.log(`${BROWSERS} browser pages, ${WINDOWS} windows without a browser, ${TABLETS} tablets; ${minutes} minutes; ${last.length} clients edited.`);
  figures.print();
  const warm = samples.filter(s => s.at >= Math.min(WARM_UP, (samples.at(-1)?.at ?? 0) / 3)), sizes = warm.map(s => s.mb).sort((a, b) => a - b);
  if (warm.length > 2) {
    const third = Math.max(1, Math.floor(warm.length / 3)), mean = list => list.reduce((a, s) => a + s.mb, 0) / list.length;
    console.log(`memory of the app after warming up: ${Math.round(sizes[0])} to ${Math.round(sizes.at(-1))} MB, median ${Math.round(sizes[sizes.length >> 1])}; slope ${slope(warm).toFixed(2)} MB a minute; first third ${Math.round(mean(warm.slice(0, third)))}, last third ${Math.round(mean(warm.slice(-third)))} MB`);
  }
  console.log(figures.faults.length ? `${figures.faults.length} faults:\n  ${figures.faults.slice(0, 20).join('\n  ')}` : 'no fault, nothing lost');
}

// Least squares.
function slope(samples) {
  const n = samples.length, t = samples.map(s => s.at / 60), tm = t.reduce((a, b) => a + b) / n, mm = samples.reduce((a, s) => a + s.mb, 0) / n;
  return samples.reduce((a, s, i) => a + (t[i] - tm) * (s.mb - mm), 0) / t.reduce((a, x) => a + (x - tm) ** 2, 0);
}
