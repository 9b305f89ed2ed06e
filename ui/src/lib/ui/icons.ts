/** Strokes on a 24 × 24 field, drawn for this program. */
export const ICONS = {
  check: 'M4 12.8 9.4 18 20 6.5',
  cross: 'M6 6l12 12M18 6 6 18',
  skip: 'M5 12h14',
  back: 'M11 5l-7 7 7 7M4.5 12H20',
  next: 'M13 5l7 7-7 7M19.5 12H4',
  down: 'M5 9l7 7 7-7',
  up: 'M5 15l7-7 7 7',
  plus: 'M12 5v14M5 12h14',
  minus: 'M5 12h14',
  erase: 'M9 6h11v12H9l-6-6zM12 9.5l5 5M17 9.5l-5 5',
  day: 'M5 6h14v14H5zM5 10h14M9 3v4M15 3v4',
  pencil: 'M4 20l1-5L16 4l4 4L9 19zM13.5 6.5l4 4',
  path: 'M4 20c6 0 4-6 9-6s3-6 7-6M7 8a2.5 1.8 0 1 0 .01 0M18 3.6a2 1.4 0 1 0 .01 0',
  send: 'M12 15V4M7.5 8.5 12 4l4.5 4.5M4 14v6h16v-6',
  gear: 'M12 8.6a3.4 3.4 0 1 0 .01 0M12 3v2.6M12 18.4V21M3 12h2.6M18.4 12H21M5.6 5.6l1.9 1.9M16.5 16.5l1.9 1.9M18.4 5.6l-1.9 1.9M7.5 16.5l-1.9 1.9',
  look: 'M12 4v10M12 18.5v.5',
  bulb: 'M9 17h6M10 20.5h4M12 3.5a6 6 0 0 0-3.5 10.9V17h7v-2.6A6 6 0 0 0 12 3.5z',
  print: 'M7 9V4h10v5M7 17H4V9h16v8h-3M7 14h10v6H7z',
  flag: 'M6 21V4M6 5h12l-3 4 3 4H6',
  leave: 'M14 5H5v14h9M10 12h10M16.5 8.5 20 12l-3.5 3.5',
  people:
    'M9 11a3.2 3.2 0 1 0-.01 0M3 20c0-4 2.7-6 6-6s6 2 6 6M16.5 11.5a2.6 2.6 0 1 0-.6-5M17.5 14.4c2.1.6 3.5 2.4 3.5 5.6',
  board: 'M4 5h16v14H4zM4 10h16M9.5 10v9',
  file: 'M6 3h8l4 4v14H6zM14 3v4h4',
  table: 'M4 6h16v12H4zM4 12h16M12 6v12',
  tools: 'M3 15h18v6H3zM7 15v3M11 15v2M15 15v3M19 15v2M6 12 12 3l6 9z',
  aloud: 'M4 9v6h4l5 4V5L8 9zM16 9a4 4 0 0 1 0 6M18.5 6.5a8 8 0 0 1 0 11',
  quiet: 'M4 9v6h4l5 4V5L8 9zM16 9.5l5 5M21 9.5l-5 5',
  half: 'M12 4a8 8 0 1 0 .01 0M12 4v16',
} as const;

export type IconName = keyof typeof ICONS;
