/** A filled shape: a path on a 64 × 64 field, and its colour. */
export type Shape = readonly [d: string, colour: Colour];
export type Colour = 'rust' | 'sand' | 'bark' | 'leaf' | 'moss' | 'sky' | 'night' | 'cream' | 'sun';

/** The path of an ellipse. */
function oval(cx: number, cy: number, rx: number, ry = rx): string {
  return `M${cx - rx} ${cy}a${rx} ${ry} 0 1 0 ${2 * rx} 0a${rx} ${ry} 0 1 0 ${-2 * rx} 0z`;
}
const eye = (x: number, y: number, r = 2.4): Shape => [oval(x, y, r), 'night'];

/** The avatars by id, drawn for this program. */
export const AVATARS = {
  otter: [
    [oval(9, 26, 5), 'bark'],
    [oval(55, 26, 5), 'bark'],
    [oval(32, 32, 26, 20), 'bark'],
    [oval(32, 41, 19, 12), 'sand'],
    eye(23, 29),
    eye(41, 29),
    [oval(32, 37, 5, 3.6), 'night'],
    ['M14 40l-9-2v1.6l9 2zM50 40l9-2v1.6l-9 2z', 'night'],
  ],
  heron: [
    ['M30 46h3v15h-3zM37 46h3v15h-3z', 'bark'],
    ['M16 42c6-14 24-16 38-6-4 12-28 18-38 6z', 'sky'],
    ['M20 44c-6-8 4-14 2-22l6-2c3 10-4 14 0 20z', 'sky'],
    [oval(24, 16, 7.5, 6), 'cream'],
    ['M18 14L2 19l16 2z', 'sun'],
    ['M26 11l12-4-10 8z', 'night'],
    eye(22, 15, 1.8),
  ],
  fish: [
    ['M6 20l14 12L6 44c-2-8-2-16 0-24z', 'moss'],
    ['M14 32c8-20 34-20 44 0-10 20-36 20-44 0z', 'moss'],
    ['M18 36c10 12 30 10 38-2-12 4-26 4-38 2z', 'cream'],
    [oval(28, 27, 2.2), 'rust'],
    [oval(36, 25, 2.2), 'rust'],
    [oval(38, 31, 2.2), 'rust'],
    eye(48, 28),
  ],
  moth: [
    ['M30 22C18 2 2 8 4 24c1 8 12 12 26 8z', 'sand'],
    ['M34 22C46 2 62 8 60 24c-1 8-12 12-26 8z', 'sand'],
    ['M30 34c-16-2-20 10-14 20 6 4 14-6 14-20zM34 34c16-2 20 10 14 20-6 4-14-6-14-20z', 'rust'],
    [oval(15, 21, 4.4), 'bark'],
    [oval(49, 21, 4.4), 'bark'],
    [oval(32, 34, 4.2, 16), 'bark'],
    ['M31 19l-7-11 1.4-.8L32 18zM33 19l7-11-1.4-.8L32 18z', 'night'],
  ],
  fern: [
    ['M31 60C26 40 30 20 46 6l2 2C34 22 31 40 34 60z', 'moss'],
    [
      'M40 16c-4-6-12-6-16-2 4 5 12 6 16 2zM35 26c-5-7-14-6-18-1 5 5 14 6 18 1zM32 37c-6-7-15-5-19 0 5 5 15 5 19 0z',
      'leaf',
    ],
    [
      'M42 14c6 0 11 4 12 9-6 1-12-3-12-9zM37 25c6-1 13 3 14 9-7 1-14-3-14-9zM33 37c7-1 14 3 15 9-7 1-15-3-15-9z',
      'leaf',
    ],
  ],
  acorn: [
    ['M16 28h32c2 16-8 26-16 31-8-5-18-15-16-31z', 'sand'],
    ['M24 30c-1 10 2 16 6 21-8-4-13-11-12-21z', 'cream'],
    ['M12 28c0-18 40-18 40 0-8 4-32 4-40 0z', 'bark'],
    ['M30 15c0-5 2-8 6-9l1 3c-2 1-3 3-3 6z', 'bark'],
  ],
  pine: [
    ['M28 48h8v13h-8z', 'bark'],
    ['M32 24L8 50h48z', 'moss'],
    ['M32 14L13 36h38z', 'leaf'],
    ['M32 3L18 22h28z', 'moss'],
  ],
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
  sunflower: [
    ['M30 36h4v24h-4zM34 52c4-8 10-9 15-8-2 7-8 10-15 8z', 'leaf'],
    [
      'M32 4l5 8 8-5 1 9 9 0-4 8 7 5-8 4 3 8-9 0-2 8-8-5-5 7-5-7-8 5-2-8-9 0 3-8-8-4 7-5-4-8 9 0 1-9 8 5z',
      'sun',
    ],
    [oval(31, 27, 10), 'bark'],
  ],
  mushroom: [
    ['M24 34h16l3 20c0 4-22 4-22 0z', 'cream'],
    ['M6 36C6 4 58 4 58 36c-8 5-44 5-52 0z', 'rust'],
    [oval(22, 24, 5, 4.5), 'cream'],
    [oval(40, 20, 6, 5), 'cream'],
    [oval(49, 31, 3.4, 3), 'cream'],
  ],
} satisfies Record<string, readonly Shape[]>;
export type AvatarId = keyof typeof AVATARS;
