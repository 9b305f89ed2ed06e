import type { Component } from 'svelte';
import { START as BLOCKS } from './blocks';
import { START as CHART } from './chart';
import { START as CLOCK } from './clock';
import { START as COINS } from './coins';
import { START as COUNTERS } from './counters';
import { START as GRID } from './grid';
import { History } from './history.svelte';
import { START as LINE } from './line';
import { START as NOTES } from './notes';
import { START as PROTRACTOR } from './protractor';
import { START as RULER } from './ruler';
import { START as STRIPS } from './strips';
import { START as TIMER } from './timer';

type Made = { default: Component<{ history: History<never> }> };

/** A tool: how it begins, and its screen, loaded when it is first taken. */
function tool(start: unknown, load: () => Promise<unknown>) {
  return {
    history: () => new History(start) as unknown as History<never>,
    load: load as () => Promise<Made>,
  };
}

/** The tools in the order of the box; their names are the messages `tool-<id>`. */
export const TOOLS = {
  line: tool(LINE, () => import('./LineTool.svelte')),
  strips: tool(STRIPS, () => import('./StripsTool.svelte')),
  blocks: tool(BLOCKS, () => import('./BlocksTool.svelte')),
  counters: tool(COUNTERS, () => import('./CountersTool.svelte')),
  chart: tool(CHART, () => import('./ChartTool.svelte')),
  protractor: tool(PROTRACTOR, () => import('./ProtractorTool.svelte')),
  ruler: tool(RULER, () => import('./RulerTool.svelte')),
  clock: tool(CLOCK, () => import('./ClockTool.svelte')),
  timer: tool(TIMER, () => import('./TimerTool.svelte')),
  coins: tool(COINS, () => import('./CoinsTool.svelte')),
  grid: tool(GRID, () => import('./GridTool.svelte')),
  notes: tool(NOTES, () => import('./NotesTool.svelte')),
};

export type ToolId = keyof typeof TOOLS;

export const TOOL_IDS = Object.keys(TOOLS) as ToolId[];
