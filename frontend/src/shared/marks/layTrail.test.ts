import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnsFor, layTrail, ROW_PX, ROW_WITH_HEADING_PX } from './layTrail';

describe('columns', () => {
  it('are 4 on phones of 390 and 320 px, fewer with larger text, from 2 to 6', () => {
    expect([columnsFor(358, 72), columnsFor(296, 65), columnsFor(358, 108), columnsFor(100, 108), columnsFor(2000, 72)]).toEqual([4, 4, 3, 2, 6]);
  });
});

describe('rows', () => {
  it('hold every set once, in order, and turn at each row', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 6 }), fc.integer({ min: 1, max: 6 }), (sizes, columns) => {
        const legs = layTrail(sizes, columns);
        const order = legs.flatMap((leg) => leg.stones.map((_, i) => leg.index + i));
        expect(order).toEqual(Array.from({ length: order.length }, (_, i) => i));
        expect(order).toHaveLength(sizes.reduce((sum, size) => sum + size, 0));
        legs.forEach((leg, row) => {
          expect(leg.reversed).toBe(row % 2 === 1);
          expect(leg.stones.every(({ column }) => column >= 1 && column <= columns)).toBe(true);
          expect(leg.height).toBe(leg.heading ? ROW_WITH_HEADING_PX : ROW_PX);
        });
      }),
    );
  });
  it('a path leads from stone to stone, in at one edge and out at the other', () => {
    const [first, second] = layTrail([4, 4], 4);
    expect(first!.pieces.map((piece) => piece.after)).toEqual([0, 1, 2, 3]);
    expect(first!.pieces[0]!.d).toBe('M12.5 82C25 88 25 86 37.5 92');
    expect(second!.pieces[0]!.d).toMatch(/^M101 0C/);
    expect(second!.pieces.at(-1)!.d).toMatch(/50 157$/);
  });
  it('a heading keeps clear of the path that comes in', () => {
    expect(layTrail([4, 4, 4], 4).map((leg) => leg.heading)).toEqual(['left', 'left', 'right']);
  });
  it('a short last row starts where the path comes in', () => {
    expect(layTrail([6], 4)[1]!.stones.map((stone) => stone.column)).toEqual([4, 3]);
  });
});
