import { checks, enterSample, openPage, SIZES, startBridge, startChromium } from './bridge.mjs';
import { makeClass, TODAY } from './own-class.mjs';
const check = checks();
const browser = await startChromium();
const fn = process.argv[3];
const bridge = await startBridge({ today: fn.startsWith('teacher') ? '2026-11-24' : TODAY });
try {
  const module = await import(`./measure/${process.argv[2]}.mjs`);
  let more = {};
  if (fn.startsWith('teacher')) {
    const { page, context } = await openPage(browser, bridge.url, SIZES.landscape);
    await enterSample(page);
    await context.close();
  } else {
    const { codes, pack } = await makeClass(bridge, { seats: 20 });
    more = { code: codes[0], codes, pack };
  }
  await module[fn]({ browser, bridge, check, ...more });
} catch (error) {
  check.that('end', false, String(error.stack));
  const p = browser.contexts().at(-1)?.pages()[0];
  if (p) {
    await p.screenshot({ path: '/tmp/measure-stopped.png' });
    console.log(await p.evaluate(() => document.activeElement.outerHTML.slice(0, 200)));
  }
} finally {
  await browser.close();
  await bridge.stop();
  check.finish();
}
