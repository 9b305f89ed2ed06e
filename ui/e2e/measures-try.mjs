import { checks, startBridge, startChromium } from './bridge.mjs';
import { makeClass, TODAY } from './own-class.mjs';
const check = checks();
const browser = await startChromium();
const bridge = await startBridge({ today: TODAY });
try {
  const { codes, pack } = await makeClass(bridge, { seats: 20 });
  const module = await import(`./measure/${process.argv[2]}.mjs`);
  await Object.values(module).find((one) => /^measure/.test(one.name))({
    browser,
    bridge,
    check,
    code: codes[0],
    codes,
    pack,
  });
} catch (error) {
  check.that('end', false, String(error.stack));
} finally {
  await browser.close();
  await bridge.stop();
  check.finish();
}
