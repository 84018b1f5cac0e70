const READS = ['', '/pieces/current.json', '/pieces/current/plan.json', '/pieces/current/views/ring.svg', '/pieces/current/cut-list.csv', '/sheet.pdf'];
// The first and last are the ring's own, below its page at the saw.
const OWN = new Set(['', '/sheet.pdf']);
const sleep = seconds => new Promise(done => setTimeout(done, 1000 * seconds));

/** A tablet at the saw: marks what was sawn, and looks at pages and papers now and then. Answers with all marks it made. */
export async function tablet(address, number, until, figures) {
  const marks = [];
  await sleep(number / 5);
  // All tablets are at one ring, so each comes to know the marks of the others.
  const page = new URL((await fetch(`${address}/saw/Disc`)).url).pathname, [, , piece, ring] = page.split('/');
  for (let n = 1; Date.now() < until; n++) {
    try {
      await sleep(2 + 2 * Math.random());
      const mark = { id: `tablet-${number}-${n}`, cut: '1/maple', kind: 'sawn', at: Date.now(), of: null };
      const there = await figures.timed('a mark of a tablet', () => ask(address, '/saw/marks', { piece, ring, marks: [mark] }));
      marks.push(mark.id);
      const ids = new Set(JSON.parse(there).marks.map(m => m.id));
      const missing = marks.find(id => !ids.has(id));
      if (missing) figures.fault(`tablet ${number}: the answer lacks ${missing}`);
      if (n % 4 === 0) {
        const path = READS[(n / 4 + number) % READS.length];
        await figures.timed(path.endsWith('.pdf') ? 'a job sheet' : 'a page or file', () => ask(address, OWN.has(path) ? page + path : path));
      }
    } catch (e) {
      figures.fault(`tablet ${number}: ${e.message}`);
    }
  }
  return [{ job: `${piece}/${ring}`, marks }];
}

async function ask(address, path, body) {
  const answer = await fetch(address + path, body && { method: 'POST', headers: { Origin: address, 'Content-Type': 'application/json' }, body: JSON.stringify(body) });
  const text = await answer.text();
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${text.slice(0, 200)}`);
  return text;
}
