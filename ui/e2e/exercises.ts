// Exercises of every concept, from the command.
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import type { Language } from '../src/lib/backend/contract';
import type { Times } from '../test/contact/main';
import type { Shown } from '../test/contact/shown';
import { TOP } from './places';

interface Contact {
  show: (items: Shown[], language: Language, figures: boolean) => Promise<void>;
  time: (items: Shown[], runs: number) => Times[];
}

declare global {
  interface Window {
    contact: Contact;
  }
}

export function exercises(...options: string[]): Shown[] {
  const program = process.env.SUREFOOT ?? join(TOP, 'target/debug/surefoot');
  const lines = execFileSync(program, ['exercises', '--concept', 'all', ...options], {
    maxBuffer: 1 << 28,
    encoding: 'utf8',
  });
  return lines
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Shown);
}

/** At most three exercises with each kind of figure. */
export function withFigures(items: Shown[]): { kinds: number; items: Shown[] } {
  const seen = new Map<string, number>();
  const found = items.flatMap((item) => {
    const fresh = [...item.prompt, ...item.hints.flat(), ...item.steps.flat()].filter((block) => {
      if (block.kind !== 'figure') return false;
      const { kind } = block.figure.drawing;
      seen.set(kind, (seen.get(kind) ?? 0) + 1);
      return (seen.get(kind) ?? 0) <= 3;
    });
    return fresh.length > 0 ? [{ ...item, prompt: fresh, hints: [], steps: [] }] : [];
  });
  return { kinds: seen.size, items: found };
}

/** Shows exercises on the page of `test/contact`. */
export async function show(
  page: Page,
  items: Shown[],
  language: Language,
  figures = false,
): Promise<void> {
  await page.waitForFunction(() => 'contact' in window);
  await page.evaluate(([some, of, only]) => window.contact.show(some, of, only), [
    items,
    language,
    figures,
  ] as const);
}
