// Installs what the tests need, builds, checks the formatting, runs every test, and ends with "N passed, N failed".
// Usage: node test.mjs
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

process.chdir(dirname(fileURLToPath(import.meta.url)));
const solution = 'Ringwright.slnx';

function run(command, args, options = {}) {
  console.log(`> ${command} ${args.join(' ')}`);
  return spawnSync(command, args, { stdio: 'inherit', ...options });
}

// Chromium without its own window: it draws the same pages with half the work, for it paints no tabs and no bar of its own.
const preferred = [process.env.RINGWRIGHT_CHROMIUM, '/usr/bin/chromium-headless-shell'];

const first = places => places.find(place => place && existsSync(place));

function findChromium() {
  return first([
    ...preferred,
    '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium',
    'C:/Program Files/Google/Chrome/Application/chrome.exe', 'C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe',
  ]);
}

// The browser tests need a Chromium; on Debian and its kin it comes by apt, where it can be had without its window.
function installChromium() {
  if (first(preferred) || !existsSync('/usr/bin/apt-get')) return;
  const isRoot = process.getuid() === 0;
  // Who has another is not asked for a password.
  if (findChromium() && !isRoot) return;
  const asRoot = isRoot ? [] : ['sudo'];
  const apt = (...args) => {
    const [command, ...rest] = [...asRoot, 'apt-get', ...args];
    return run(command, rest, { env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }).status === 0;
  };
  const install = name => apt('install', '-y', '-q', '--no-install-recommends', name);
  apt('update', '-q');
  if (!install('chromium-headless-shell') && !findChromium()) install('chromium');
}

function fail(sentence) {
  console.error(sentence);
  console.log('0 passed, 1 failed');
  process.exit(1);
}

function runTests(chromium) {
  console.log(`> dotnet test --solution ${solution}`);
  const result = spawnSync('dotnet', ['test', '--solution', solution, '--no-build', '--max-parallel-test-modules', '1'], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    env: { ...process.env, RINGWRIGHT_CHROMIUM: chromium, NO_COLOR: '1' },
  });
  process.stdout.write(result.stdout);
  process.stderr.write(result.stderr);
  // The runner's closing block has these three lines; the last ones count the whole solution.
  const count = name => {
    const found = [...result.stdout.matchAll(new RegExp(`^\\s*${name}: (\\d+)`, 'gm'))];
    return found.length ? Number(found.at(-1)[1]) : undefined;
  };
  return { passed: count('succeeded'), failed: count('failed'), skipped: count('skipped') ?? 0, code: result.status };
}

if (spawnSync('dotnet', ['--version']).status !== 0) fail('The .NET SDK 10 is needed and was not found.');
installChromium();
const chromium = findChromium();
if (!chromium) fail('A Chromium or Chrome is needed for the browser tests; install one or set RINGWRIGHT_CHROMIUM to its path.');
if (run('dotnet', ['build', solution, '--nologo', '-v', 'quiet']).status !== 0) fail('The build failed.');
// The build has checked the style; this finds what it does not: ends of lines and files.
const tidy = run('dotnet', ['format', 'whitespace', '.', '--folder', '--verify-no-changes']).status === 0;
const { passed, failed, skipped, code } = runTests(chromium);
if (passed === undefined || failed === undefined) fail('The test runner gave no count.');
if (!tidy) console.error('The formatting differs: run dotnet format.');
// Formatting counts as one test; a runner that failed without a failed test (a crash) counts as one failure.
const crashed = code !== 0 && failed === 0 ? 1 : 0;
const allFailed = failed + crashed + (tidy ? 0 : 1);
console.log(`${passed + (tidy ? 1 : 0)} passed, ${allFailed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exit(allFailed ? 1 : 0);
