// A class folder that may not be used any more, and one that gives files other names: what is said,
// and how it goes on. On a tablet the system can take the right away at any time.
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join as at } from 'node:path';
import { expect, test } from './fixtures';
import { LANGUAGES, messageIn } from './languages';
import { DESK, look, STUDENT } from './measure/look';
import { createClass } from './own-class';

const WAIT = { timeout: 60_000 };

for (const language of LANGUAGES) {
  test(`a right that is gone is said, and given again: ${language}`, async ({
    page,
    bridge,
    hook,
    hooks,
  }) => {
    const gone = messageIn(language, 'folder-trouble-not-allowed');
    const folder = mkdtempSync(at(tmpdir(), 'surefoot-folder-right-'));
    try {
      await bridge.changeDevice({ language, guides_read: ['all'] });
      const id = await createClass(bridge, { title: 'Sala 3' });
      const [slip] = await bridge.call('join_slips', { class: id });
      await bridge.pick(folder);
      await bridge.call('name_class_folder', {});
      await expect
        .poll(async () => {
          await bridge.call('class_folder', {});
          return readdirSync(folder).length;
        }, WAIT)
        .toBe(1);

      await test.step('while joining', async () => {
        await page.goto('/');
        await hook('start-student').tap();
        await bridge.setFolder('not_allowed');
        await bridge.pick(folder);
        await hook('join-folder').tap();
        await expect(hook('join-folder-trouble')).toBeVisible();
        await look(page, `join, no right, ${language}`, STUDENT);
        await bridge.setFolder(null);
        await bridge.pick(folder);
        await hook('join-folder').tap();
        await hook('join-next').tap();
        await hook('join-code').fill(slip?.code ?? '');
        await hook('join-next').tap();
        await hook('join-nickname').fill('Wren');
        await hook('join-avatar-heron').tap();
        await hook('join-finish').tap();
        await expect(hooks('rate-').first()).toBeVisible();
      });

      await test.step('on Hand in: the same button shows it again', async () => {
        await bridge.setFolder('not_allowed');
        await hooks('rate-', '-1').first().tap();
        await hook('tab-handin').tap();
        const line = hook('folder-line');
        await expect.poll(() => line.textContent(), WAIT).toContain(gone);
        await expect(hook('folder-show')).toHaveText(messageIn(language, 'folder-student-show'));
        await look(page, `no right, ${language}`, STUDENT);
        await bridge.setFolder(null);
        await bridge.pick(folder);
        await hook('folder-show').tap();
        const left = () => readdirSync(folder).filter((name) => name.endsWith('.sfhandin'));
        await expect.poll(() => left().length, WAIT).toBe(1);
        await expect(line).not.toContainText(gone, WAIT);
      });

      await test.step('a folder that gives files other names', async () => {
        await bridge.setFolder('changes_names');
        await hook('tab-today').tap();
        await hooks('rate-', '-2').nth(1).tap();
        await hook('tab-handin').tap();
        await expect
          .poll(() => hook('folder-line').textContent(), WAIT)
          .toContain(messageIn(language, 'folder-trouble-changes-names'));
        await look(page, `other names, ${language}`, STUDENT);
      });

      await test.step('at the desk', async () => {
        await bridge.setFolder('not_allowed');
        await page.goto('/');
        await hook('start-teacher').click();
        await hook('tab-files').click();
        await expect(hook('class-folder-line')).toContainText(gone, WAIT);
        await look(page, `no right, desk, ${language}`, DESK);
        await bridge.setFolder(null);
        await bridge.pick(folder);
        await hook('class-folder-name').click();
        await expect(hook('class-folder-line')).not.toContainText(gone, WAIT);
        await expect(hook('class-folder-name')).toHaveCount(0);
      });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
}
