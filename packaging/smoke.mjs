// Starts what was packaged, as somebody would who has no .NET: from another folder, with nothing saved yet.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';

const patience = 120_000; // ms

/** Runs app and shell program; answers with what was seen, throws a sentence at the first thing that is wrong. */
export async function smoke({ app, cli, examples, version }) {
  const folder = mkdtempSync(join(tmpdir(), 'ringwright-smoke-'));
  const seen = [];
  try {
    const elsewhere = join(folder, 'elsewhere'), data = join(folder, 'data');
    mkdirSync(elsewhere);
    // Nothing of this machine's .NET, and native libraries unpacked afresh.
    const env = { PATH: '/usr/bin:/bin', HOME: folder, RINGWRIGHT_DATA: data, DOTNET_BUNDLE_EXTRACT_BASE_DIR: join(folder, 'unpacked'), SystemRoot: process.env.SystemRoot, TEMP: folder };
    for (const program of [app, cli]) expect(run(program, ['--version'], elsewhere, env).includes(version), `${program} --version does not say ${version}`);
    seen.push(`both say version ${version}`);
    await smokeApp(app, elsewhere, env, data, seen);
    smokeCli(cli, elsewhere, env, examples, seen);
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }

  return seen;
}

async function smokeApp(app, elsewhere, env, data, seen) {
  const child = spawn(app, ['--no-browser', '--port', '0'], { cwd: elsewhere, env, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  child.stdout.on('data', d => (said += d));
  child.stderr.on('data', d => (said += d));
  try {
    const begin = Date.now();
    while (!/open at http:\S+/.test(said)) {
      expect(child.exitCode === null && Date.now() - begin < patience, `${app} did not open: ${said}`);
      await new Promise(next => setTimeout(next, 50));
    }

    const address = said.match(/http:\/\/[\d.:]+/)[0];
    seen.push(`the app is open at loopback ${Date.now() - begin} ms after its start`);
    const page = await get(address, '/', 'text/html');
    expect(page.includes('Ringwright'), 'the page is empty');
    const files = [...page.toString().matchAll(/(?:href|src)="([^"]+\.(?:css|js|svg))"/g)].map(m => m[1]);
    expect(files.length > 5, 'the page names no files');
    for (const file of files) await get(address, '/' + file.replace(/^\//, ''));
    const bundle = await get(address, '/js/dist/viewer.js', 'text/javascript');
    expect(bundle.length > 100_000, 'the viewer bundle is too short');
    seen.push(`its page, ${files.length} files of it and the viewer bundle come`);
    // The typeface is in the program and goes into its papers.
    const pdf = await get(address, '/pieces/current/job-sheet.pdf', 'application/pdf');
    expect(pdf.subarray(0, 4).toString() === '%PDF' && pdf.includes('Inter') && pdf.includes('/FontFile2'), 'the job sheet has no typeface');
    expect((await get(address, '/pieces/current/views/ring.png', 'image/png')).length > 1000, 'the picture is empty');
    seen.push(`it draws job sheets (${Math.round(pdf.length / 1000)} kB, typeface embedded) and pictures`);
    expect(existsSync(join(data, 'ringwright.db')), 'the data folder has no ringwright.db');
    const port = Number(new URL(address).port);
    const others = Object.values(networkInterfaces()).flat().filter(a => !a.internal && a.family === 'IPv4').map(a => a.address);
    for (const other of others) expect(!(await answers(other, port)), `it can be reached at ${other}`);
    seen.push(`of this machine's ${others.length} other addresses none answers`);
  } finally {
    child.kill();
    await new Promise(done => (child.exitCode === null && child.signalCode === null ? child.once('exit', done) : done()));
  }
}

function smokeCli(cli, elsewhere, env, examples, seen) {
  const shell = (...args) => run(cli, args, elsewhere, env);
  const piece = join(examples, 'two-wood-disc.json'), out = join(elsewhere, 'out');
  shell('plan', piece, '--out', out);
  const sheet = readdirSync(out).find(f => f.endsWith('.pdf'));
  expect(sheet && readFileSync(join(out, sheet)).subarray(0, 4).toString() === '%PDF', 'plan wrote no PDF');
  seen.push('plan writes an example\'s papers (Skia)');
  shell('pieces', 'take', piece);
  expect(shell('pieces', 'list').includes('disc'), 'the piece that was taken in is not in the list');
  seen.push('pieces are kept and listed (SQLite)');
  for (const [label, wood] of [['A1', 'maple'], ['B1', 'padauk']]) shell('rack', 'add', label, '--wood', wood, '--length', '900 mm', '--width', '120 mm', '--thickness', '40 mm');
  const boards = JSON.parse(shell('boards', piece, '--kept', '--json'));
  expect(JSON.stringify(boards).includes('A1'), 'boards takes none of the rack');
  seen.push('boards are planned (OR-Tools)');
  shell('picture', piece, '--view', 'ring', '--out', join(out, 'ring.png'));
  expect(readFileSync(join(out, 'ring.png')).subarray(1, 4).toString() === 'PNG', 'picture wrote no PNG');
}

function run(program, args, cwd, env) {
  const { status, stdout, stderr, error } = spawnSync(program, args, { cwd, env, encoding: 'utf8', timeout: patience });
  expect(status === 0, `${program} ${args.join(' ')} ended with ${status ?? error}: ${stderr}`);
  return stdout;
}

async function get(address, path, type) {
  const answer = await fetch(address + path, { signal: AbortSignal.timeout(patience) });
  expect(answer.ok && (!type || answer.headers.get('content-type')?.startsWith(type)), `${path} came as ${answer.status} ${answer.headers.get('content-type')}`);
  return Buffer.from(await answer.arrayBuffer());
}

const answers = (host, port) => new Promise(done => {
  const socket = connect({ host, port, timeout: 2000 }, () => { socket.destroy(); done(true); });
  socket.on('error', () => done(false)).on('timeout', () => { socket.destroy(); done(false); });
});

function expect(condition, sentence) {
  if (!condition) throw new Error(sentence);
}
