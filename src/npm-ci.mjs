// Runs `npm ci` here once, even when several builds ask at the same time: the first takes the lock
// folder, the others wait for it and then find the work done.
import { execSync } from 'node:child_process';
import { mkdirSync, rmdirSync, statSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';

const lock = 'installing.lock';
const staleAfter = 120_000; // ms; an install that was killed leaves its lock behind
const modified = file => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
const installed = () => modified('node_modules/.package-lock.json') >= modified('package-lock.json');

async function takeLock() {
  for (;;) {
    try {
      return mkdirSync(lock);
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
      const since = modified(lock);
      if (since > 0 && Date.now() - since > staleAfter) rmdirSync(lock);
      else await sleep(200);
    }
  }
}

await takeLock();
try {
  if (!installed()) execSync('npm ci --no-audit --no-fund', { stdio: 'inherit' });
} finally {
  rmdirSync(lock);
}
