/** What was measured, by name: times of actions, sums, faults. */
export class Figures {
  #times = new Map();
  #sums = new Map();
  faults = [];

  async timed(name, action) {
    const begin = performance.now();
    const result = await action();
    if (!this.#times.has(name)) this.#times.set(name, []);
    this.#times.get(name).push(performance.now() - begin);
    return result;
  }

  add(name, number) {
    this.#sums.set(name, (this.#sums.get(name) ?? 0) + number);
  }

  fault(sentence) {
    this.faults.push(sentence);
  }

  print() {
    for (const [name, times] of this.#times) {
      const sorted = times.toSorted((a, b) => a - b), at = part => Math.round(sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]);
      console.log(`${name}: ${times.length} times; median ${at(0.5)} ms, 95 % within ${at(0.95)} ms, longest ${at(1)} ms`);
    }
    for (const [name, sum] of this.#sums) console.log(`${name}: ${sum}`);
  }
}
