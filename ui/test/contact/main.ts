import { flushSync, mount, unmount } from 'svelte';
import '../../src/lib/theme/base.css';
import type { Block } from '../../src/lib/backend/contract';
import Blocks from '../../src/lib/figures/Blocks.svelte';
import { loadExerciseWords, loadWords, setLanguage } from '../../src/lib/words';
import { exercisesFromFiles } from '../exercise-files';
import Sheet from './Sheet.svelte';
import type { Shown } from './shown';

export interface Times {
  concept: string;
  level: number;
  milliseconds: number;
}

/** Shows cards of exercises. */
async function show(items: Shown[], language: 'en' | 'es', figures: boolean): Promise<void> {
  const target = document.getElementById('app');
  if (!target) return;
  await Promise.all([loadWords(language), loadExerciseWords(language)]);
  setLanguage(language);
  target.replaceChildren();
  mount(Sheet, { target, props: { items, figures } });
  flushSync();
}

/** The time until prompt and figure are laid out; the best of some runs. */
function time(items: Shown[], runs: number): Times[] {
  const target = document.getElementById('app');
  if (!target) return [];
  target.replaceChildren();
  const once = (blocks: Block[]): number => {
    const start = performance.now();
    const drawn = mount(Blocks, { target, props: { blocks } });
    flushSync();
    // Forces the layout, so that it is part of the time.
    target.getBoundingClientRect();
    const end = performance.now();
    void unmount(drawn);
    flushSync();
    return end - start;
  };
  for (const item of items) once(item.prompt);
  return items.map((item) => ({
    concept: item.concept,
    level: item.level,
    milliseconds: Math.min(...Array.from({ length: runs }, () => once(item.prompt))),
  }));
}

Object.assign(window, { contact: { show, time } });
exercisesFromFiles();
await Promise.all([loadWords('en'), loadExerciseWords('en')]);
