/** A stroke of the pen, as places on a sheet of 600 by 400. */
export type Stroke = readonly { x: number; y: number }[];

export interface Notes {
  strokes: readonly Stroke[];
  text: string;
}

export const WIDE = 600;
export const HIGH = 400;
export const START: Notes = { strokes: [], text: '' };

/** Adds a stroke. */
export function draw(notes: Notes, stroke: Stroke): Notes {
  return stroke.length === 0 ? notes : { ...notes, strokes: [...notes.strokes, stroke] };
}

/** A stroke as an SVG path; a single place is a dot. */
export function outline(stroke: Stroke): string {
  const [first, ...rest] = stroke;
  if (!first) return '';
  const line = rest.map((p) => `L${p.x} ${p.y}`).join('');
  return `M${first.x} ${first.y}${line || 'h0.01'}`;
}
