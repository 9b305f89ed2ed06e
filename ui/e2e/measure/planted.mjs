// The measures find what is planted: a page with one fault of each kind, and one
// without. A measure that finds nothing is not trusted before it has found these.
import { openPage, SIZES } from '../bridge.mjs';
import { PAGE, settled } from './look.mjs';

/** Each fault: what is put into the page, and in which words it must be told. */
const FAULTS = {
  small: [{ tag: 'button', words: 'tiny', style: { width: '20px', height: '20px' } }, /20×20/],
  close: [
    { tag: 'button', words: 'a', style: { width: '22px', height: '22px', marginLeft: '-21px' } },
    /22×22/,
  ],
  pale: [
    { tag: 'p', words: 'pale words', style: { color: '#777', background: '#fff' } },
    /text 4\.48/,
  ],
  veiled: [{ tag: 'p', words: 'veiled', style: { opacity: '0.5', color: '#000' } }, /text \d/],
  frame: [
    { tag: 'button', words: 'frame', style: { border: '1px solid #ddd', background: '#fff' } },
    /frame 1\./,
  ],
  field: [{ tag: 'input', words: '', style: { border: '0' } }, /no frame/],
  wide: [{ tag: 'p', words: 'wide', style: { width: '3000px' } }, /px too wide/],
  cut: [
    {
      tag: 'p',
      words: 'cut '.repeat(60),
      style: { height: '20px', width: '90px', overflow: 'hidden' },
    },
    /cut off/,
  ],
  upon: [
    { tag: 'p', words: 'upon it', style: { position: 'absolute', top: '8px', left: '8px' } },
    /upon/,
  ],
};

export async function plantFaults({ browser, bridge, check }) {
  const { page, context } = await openPage(browser, bridge.url, SIZES.tablet);
  await page.evaluate(PAGE);
  const measured = () =>
    page.evaluate(() => [
      ...window.measure.targets(48, false).found,
      ...window.measure.contrast(7, 7, 3).found,
      ...window.measure.reflow(),
    ]);
  const plant = (faults) =>
    page.evaluate((all) => {
      const made = all.map(({ tag, words, style }) => {
        const one = document.createElement(tag);
        one.textContent = words;
        Object.assign(one.style, style);
        return one;
      });
      const sound = document.createElement('p');
      sound.textContent = 'A sound line of words.';
      document.body.replaceChildren(sound, ...made);
    }, faults);

  await plant([]);
  await settled(page);
  check.none('a sound page has no findings', await measured());
  for (const [name, [fault, told]] of Object.entries(FAULTS)) {
    await plant(name === 'upon' ? [fault, { ...fault, words: 'what lies below' }] : [fault]);
    await settled(page);
    const found = await measured();
    check.that(
      `the planted fault “${name}” is found`,
      found.some((one) => told.test(one)),
      found,
    );
  }
  await context.close();
}
