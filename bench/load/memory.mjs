import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

const EVERY = 2000; // ms

/** Watches how much memory a process holds; `end()` answers with the samples: seconds since the beginning, MB. */
export function memoryOf(pid) {
  const begin = Date.now(), samples = [], status = `/proc/${pid}/status`;
  const resident = () => (existsSync(status) ? Number(readFileSync(status, 'utf8').match(/VmRSS:\s+(\d+)/)?.[1]) : Number(execFileSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8' })));
  const timer = setInterval(() => samples.push({ at: (Date.now() - begin) / 1000, mb: resident() / 1024 }), EVERY);
  return {
    end() {
      clearInterval(timer);
      return samples;
    },
  };
}
