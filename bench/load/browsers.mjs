import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

const path = [process.env.RINGWRIGHT_CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(p => p && existsSync(p));
const args = ['--no-sandbox', '--disable-gpu', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'];
const PATIENCE = 60_000; // ms

/** Pages in one real browser, each typing letter by letter into a field of its own. Answers with what each typed last. */
export async function browsers(address, places, until, figures) {
  if (!path) throw new Error('no Chromium was found; RINGWRIGHT_CHROMIUM names one');
  const browser = await chromium.launch({ executablePath: path, args });
  const pages = await Promise.all(places.map((place, number) => one(browser, address, place, number, until, figures)));
  await browser.close();
  return pages.flat();
}

async function one(browser, address, place, number, until, figures) {
  const last = [], context = await browser.newContext(), page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  let open = true, edits = 0;
  page.on('pageerror', e => figures.fault(`browser ${number}: ${e.message}`));
  page.on('console', m => open && m.type() === 'error' && figures.fault(`browser ${number} at its edit ${edits}: ${m.text()}`));
  try {
    await figures.timed('opening a page in a browser', async () => {
      await page.goto(address + place.page, { timeout: PATIENCE });
      // Handlers are there once the circuit has drawn the page.
      await page.waitForFunction(() => performance.getEntriesByType('resource').some(e => e.name.includes('_blazor')));
      await page.waitForTimeout(3000);
    });
    // Some fields lie in a part that is folded up.
    await page.evaluate(id => { for (let e = document.getElementById(id); e; e = e.parentElement) if (e.tagName === 'DETAILS') e.open = true; }, place.field);
    for (let n = 1; Date.now() < until; n++) {
      edits = n;
      const text = `browser ${number} edit ${n}`, input = page.locator('#' + place.field);
      await figures.timed('typing a text in a browser', async () => {
        await input.fill('');
        await input.pressSequentially(text, { delay: 120 });
      });
      await page.waitForTimeout(2000 + 2000 * Math.random());
      const stands = await input.inputValue();
      if (stands !== text) figures.fault(`browser ${number}: it typed “${text}”, and “${stands}” stands there`);
      last[0] = { ...place, text };
    }
  } catch (e) {
    figures.fault(`browser ${number}: ${e.message.split('\n')[0]}`);
  }
  open = false;
  await context.close();
  return last;
}
