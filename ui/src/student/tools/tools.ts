import type { Component } from 'svelte';
import BlocksTool from './BlocksTool.svelte';
import ChartTool from './ChartTool.svelte';
import ClockTool from './ClockTool.svelte';
import CoinsTool from './CoinsTool.svelte';
import CountersTool from './CountersTool.svelte';
import GridTool from './GridTool.svelte';
import LineTool from './LineTool.svelte';
import NotesTool from './NotesTool.svelte';
import ProtractorTool from './ProtractorTool.svelte';
import RulerTool from './RulerTool.svelte';
import StripsTool from './StripsTool.svelte';
import TimerTool from './TimerTool.svelte';
import { START as BLOCKS } from './blocks';
import { START as CHART } from './chart';
import { START as COINS } from './coins';
import { START as COUNTERS } from './counters';
import { START as GRID } from './grid';
import { History } from './history.svelte';
import { START as LINE } from './line';
import { START as NOTES } from './notes';
import { START as RULER } from './ruler';
import { START as STRIPS } from './strips';
import { START as TIMER } from './timer';

/** A tool: its first state and its screen. */
function tool<Value>(start: Value, screen: Component<{ history: History<Value> }>) {
  return {
    history: () => new History(start) as unknown as History<never>,
    screen: screen as unknown as Component<{ history: History<never> }>,
  };
}

/**
 * The tools in the order of the toolbox; their names are the messages `tool-<id>`. They are
 * in one file with the toolbox, which loads when it is first opened.
 */
export const TOOLS = {
  line: tool(LINE, LineTool),
  strips: tool(STRIPS, StripsTool),
  blocks: tool(BLOCKS, BlocksTool),
  counters: tool(COUNTERS, CountersTool),
  chart: tool(CHART, ChartTool),
  protractor: tool({ degrees: 60, fromRight: true }, ProtractorTool),
  ruler: tool(RULER, RulerTool),
  clock: tool(3 * 60, ClockTool),
  timer: tool(TIMER, TimerTool),
  coins: tool(COINS, CoinsTool),
  grid: tool(GRID, GridTool),
  notes: tool(NOTES, NotesTool),
};

export type ToolId = keyof typeof TOOLS;

export const TOOL_IDS = Object.keys(TOOLS) as ToolId[];
