/** The four stone outlines, eight-cornered, in a box of 76 x 62. Chosen by position, never at random: a stone keeps its shape. */
const OUTLINES = [
  'M6 26Q7 19 12.4 14.2L18.6 8.8Q24 4 33.3 3.7L43.7 3.3Q53 3 58.8 7.5L65.2 12.5Q71 17 71.6 23.1L72.4 29.9Q73 36 67.9 41.4L62.1 47.6Q57 53 46.8 53.3L35.2 53.7Q25 54 18.3 49.8L10.7 45.2Q4 41 5 34Z',
  'M6.6 33.7Q4 27 7.5 20.9L11.5 14.1Q15 8 23 6.4L32 4.6Q40 3 48 4.6L57 6.4Q65 8 67.6 14.7L70.4 22.3Q73 29 70.4 35.4L67.6 42.6Q65 49 56.4 50.9L46.6 53.1Q38 55 29.7 52.8L20.3 50.2Q12 48 9.4 41.3Z',
  'M5 21.4Q6 15 13.7 11.2L22.3 6.8Q30 3 39.3 4L49.7 5Q59 6 63.5 12.1L68.5 18.9Q73 25 71.4 31.4L69.6 38.6Q68 45 61 47.9L53 51.1Q46 54 36.7 53.4L26.3 52.6Q17 52 12.5 46.6L7.5 40.4Q3 35 4 28.6Z',
  'M10.1 39.4Q5 33 7.6 25.6L10.4 17.4Q13 10 20.4 7.8L28.6 5.2Q36 3 44 3.6L53 4.4Q61 5 64.5 10.1L68.5 15.9Q72 21 71.4 28L70.6 36Q70 43 63.6 46.5L56.4 50.5Q50 54 40.7 53.7L30.3 53.3Q21 53 15.9 46.6Z',
] as const;

/** The order in which a path uses them: neighbors differ, also across two rows of four. */
const ORDER = [1, 0, 3, 2, 0, 2, 1, 3] as const;

export function outlineAt(index: number): string {
  return OUTLINES[ORDER[Math.abs(index) % ORDER.length] as number] as string;
}
