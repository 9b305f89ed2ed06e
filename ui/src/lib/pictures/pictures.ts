/** A filled shape: an outline on a 64 × 64 field and a colour of the picture's own. */
export type Shape = readonly [d: string, colour: Colour];
export type Colour = 'rust' | 'sand' | 'bark' | 'leaf' | 'moss' | 'sky' | 'night' | 'cream' | 'sun';

/** A full ellipse as an outline. */
function oval(cx: number, cy: number, rx: number, ry = rx): string {
  return `M${cx - rx} ${cy}a${rx} ${ry} 0 1 0 ${2 * rx} 0a${rx} ${ry} 0 1 0 ${-2 * rx} 0z`;
}
const eye = (x: number, y: number, r = 2.4): Shape => [oval(x, y, r), 'night'];

/** Pictures a student can pick; drawn for this program, by their ids. */
export const PICTURES: Record<string, readonly Shape[]> = {
  fox: [
    ['M10 12l14 10h16l14-10-3 26-19 18-19-18z', 'rust'],
    ['M13 38l19 18 19-18-12 2-7 6-7-6z', 'cream'],
    eye(24, 33),
    eye(40, 33),
    [oval(32, 49, 3.4, 2.6), 'night'],
  ],
  owl: [
    ['M14 12c8 4 28 4 36 0 6 18 4 42-18 42S8 30 14 12z', 'bark'],
    [oval(24, 27, 8.5), 'cream'],
    [oval(40, 27, 8.5), 'cream'],
    eye(24, 27, 4),
    eye(40, 27, 4),
    ['M28.5 33h7L32 40z', 'sun'],
    ['M20 44c6 6 18 6 24 0-4 10-20 10-24 0z', 'sand'],
  ],
  turtle: [
    [oval(50, 38, 8, 6.5), 'leaf'],
    ['M12 42h8v10h-7zM36 42h8v10h-7z', 'leaf'],
    ['M6 42c0-28 40-28 40 0z', 'moss'],
    ['M16 40l4-12h12l4 12z', 'leaf'],
    eye(52, 36, 1.8),
  ],
  fish: [
    ['M6 20l14 12L6 44c-2-8-2-16 0-24z', 'sky'],
    ['M14 32c8-20 34-20 44 0-10 20-36 20-44 0z', 'sky'],
    ['M30 20c6 8 6 16 0 24-4-8-4-16 0-24z', 'cream'],
    eye(47, 28),
  ],
  snail: [
    ['M8 50c0-8 8-6 22-6 10 0 14-4 14-14l6-12 5 2-3 14c2 14-6 20-18 20H12c-3 0-4-2-4-4z', 'sand'],
    [oval(26, 32, 16), 'rust'],
    [oval(27, 33, 9.5), 'sand'],
    [oval(27, 34, 4), 'rust'],
    eye(52, 20, 1.8),
  ],
  bee: [
    [oval(24, 20, 11, 9), 'cream'],
    [oval(42, 20, 11, 9), 'cream'],
    [oval(33, 37, 21, 15), 'sun'],
    ['M24 24c-3 8-3 18 0 26l6 2c-3-9-3-20 0-30zM38 22c3 9 3 20 0 30l6-2c3-8 3-18 0-26z', 'night'],
    eye(15.5, 35, 2),
  ],
  hedgehog: [
    ['M14 44L8 34l8-1-3-11 9 4 1-12 8 8 6-10 5 11 9-6v12l8 1-4 10 5 6-10 4z', 'bark'],
    ['M8 48c0-16 16-18 22-8l4 12H12c-3 0-4-2-4-4z', 'sand'],
    eye(19, 42, 2),
    [oval(9, 48, 3), 'night'],
  ],
  frog: [
    [oval(20, 20, 9), 'leaf'],
    [oval(44, 20, 9), 'leaf'],
    [oval(32, 36, 24, 18), 'leaf'],
    [oval(20, 19, 5), 'cream'],
    [oval(44, 19, 5), 'cream'],
    eye(20, 19),
    eye(44, 19),
    ['M18 40c8 7 20 7 28 0-6 12-22 12-28 0z', 'moss'],
  ],
  oak: [
    [
      'M30 58V44c-6 3-12 0-11-5-6 0-9-6-5-10-4-5 0-11 6-10 0-7 8-12 12-12s12 5 12 12c6-1 10 5 6 10 4 4 1 10-5 10 1 5-5 8-11 5v14z',
      'moss',
    ],
    ['M31 56V16h2v40zM32 30l9-7 1 1.5-10 8zM32 39l-9-7-1 1.5 10 8z', 'cream'],
  ],
  sunflower: [
    ['M30 36h4v24h-4zM34 52c4-8 10-9 15-8-2 7-8 10-15 8z', 'leaf'],
    [
      'M32 4l5 8 8-5 1 9 9 0-4 8 7 5-8 4 3 8-9 0-2 8-8-5-5 7-5-7-8 5-2-8-9 0 3-8-8-4 7-5-4-8 9 0 1-9 8 5z',
      'sun',
    ],
    [oval(31, 27, 10), 'bark'],
  ],
  cactus: [
    ['M26 12c0-8 12-8 12 0v36H26z', 'leaf'],
    ['M26 38H18c-4 0-7-3-7-7v-7h6v8h9zM38 32h9v-9h6v9c0 4-3 7-7 7h-8z', 'leaf'],
    ['M18 46h28l-4 14H22z', 'rust'],
    ['M29 16h2v6h-2zM33 24h2v6h-2zM29 32h2v6h-2z', 'cream'],
  ],
  mushroom: [
    ['M24 34h16l3 20c0 4-22 4-22 0z', 'cream'],
    ['M6 36C6 4 58 4 58 36c-8 5-44 5-52 0z', 'rust'],
    [oval(22, 24, 5, 4.5), 'cream'],
    [oval(40, 20, 6, 5), 'cream'],
    [oval(49, 31, 3.4, 3), 'cream'],
  ],
};
