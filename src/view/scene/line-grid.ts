import { type LabelBox, type Line, lineMeetsBox } from './label-box.ts';

/** Side of a cell, px: a few label heights, so that a line lies in few cells and a cell holds few lines. */
const CELL = 64;

/**
 * Lines of the drawing sorted into square cells, so that a label is compared
 * with its neighbours only. A line outside the sheet lies in the nearest cell.
 */
export interface LineGrid {
  readonly columns: number;
  readonly rows: number;
  /** cell by cell, row after row; a cell without a line has no list */
  readonly cells: (Line[] | undefined)[];
}

export function lineGrid(width: number, height: number, lines: readonly Line[]): LineGrid {
  const columns = Math.max(1, Math.ceil(width / CELL));
  const rows = Math.max(1, Math.ceil(height / CELL));
  const grid: LineGrid = { columns, rows, cells: [] };
  addLines(grid, lines);
  return grid;
}

/** A grid that can be added to without changing the one it was made from. */
export function copyGrid({ columns, rows, cells }: LineGrid): LineGrid {
  return { columns, rows, cells: cells.map((cell) => (cell === undefined ? cell : [...cell])) };
}

export function addLines(grid: LineGrid, lines: readonly Line[]): void {
  for (const line of lines) {
    const top = cellOf(Math.min(line.y1, line.y2), grid.rows);
    const bottom = cellOf(Math.max(line.y1, line.y2), grid.rows);
    for (let row = top; row <= bottom; row++) addToRow(grid, line, row, top === bottom);
  }
}

/** Puts a line into the cells of a row that it runs through. */
function addToRow({ cells, columns }: LineGrid, line: Line, row: number, whole: boolean): void {
  const { x1, y1, x2, y2 } = line;
  // Where the line is between the row's upper and lower edge; all of it if it stays in the row.
  const from = whole ? 0 : share(row * CELL, y1, y2);
  const to = whole ? 1 : share((row + 1) * CELL, y1, y2);
  const [p, q] = [x1 + (x2 - x1) * from, x1 + (x2 - x1) * to];
  const left = cellOf(Math.min(p, q), columns);
  const right = cellOf(Math.max(p, q), columns);
  for (let column = left; column <= right; column++) {
    const index = row * columns + column;
    const cell = cells[index];
    if (cell === undefined) cells[index] = [line];
    else cell.push(line);
  }
}

function share(y: number, y1: number, y2: number): number {
  return Math.min(1, Math.max(0, (y - y1) / (y2 - y1)));
}

function cellOf(at: number, count: number): number {
  return Math.min(count - 1, Math.max(0, Math.floor(at / CELL)));
}

/** Whether any line meets the box grown by `clear`. */
export function anyMeets(grid: LineGrid, box: LabelBox, clear: number): boolean {
  const x = clear + box.halfWidth * Math.abs(box.cos) + box.halfHeight * Math.abs(box.sin);
  const y = clear + box.halfWidth * Math.abs(box.sin) + box.halfHeight * Math.abs(box.cos);
  const left = cellOf(box.x - x, grid.columns);
  const right = cellOf(box.x + x, grid.columns);
  const bottom = cellOf(box.y + y, grid.rows);
  for (let row = cellOf(box.y - y, grid.rows); row <= bottom; row++) {
    for (let column = left; column <= right; column++) {
      const cell = grid.cells[row * grid.columns + column];
      if (cell === undefined) continue;
      for (const line of cell) if (lineMeetsBox(box, line, clear)) return true;
    }
  }
  return false;
}

/** How many of the grid's lines the line properly crosses; counted no further than `enough`. */
export function countCrossings(grid: LineGrid, line: Line, enough = Infinity): number {
  const left = cellOf(Math.min(line.x1, line.x2), grid.columns);
  const right = cellOf(Math.max(line.x1, line.x2), grid.columns);
  const bottom = cellOf(Math.max(line.y1, line.y2), grid.rows);
  let found: Line[] | null = null;
  for (let row = cellOf(Math.min(line.y1, line.y2), grid.rows); row <= bottom; row++) {
    for (let column = left; column <= right; column++) {
      const cell = grid.cells[row * grid.columns + column];
      if (cell === undefined) continue;
      for (const other of cell) {
        if (crossingShare(line, other) === NO_CROSSING) continue;
        // A line that runs through several cells is met in each of them.
        if (found === null) found = [other];
        else if (!found.includes(other)) found.push(other);
        if (found.length >= enough) return found.length;
      }
    }
  }
  return found === null ? 0 : found.length;
}

/** Two lines nearer than this that run the same way are hard to tell apart, px; nearer than the least they are one. */
const CROWDED = { least: 1.5, most: 12, overlap: 6 } as const;

/** Whether a line of the grid runs alongside the line, too near to be told from it. */
export function runsBeside(grid: LineGrid, line: Line): boolean {
  const left = cellOf(Math.min(line.x1, line.x2) - CROWDED.most, grid.columns);
  const right = cellOf(Math.max(line.x1, line.x2) + CROWDED.most, grid.columns);
  const bottom = cellOf(Math.max(line.y1, line.y2) + CROWDED.most, grid.rows);
  const top = cellOf(Math.min(line.y1, line.y2) - CROWDED.most, grid.rows);
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) {
      const cell = grid.cells[row * grid.columns + column];
      if (cell?.some((other) => isBeside(line, other)) === true) return true;
    }
  }
  return false;
}

function isBeside(line: Line, other: Line): boolean {
  const dx = line.x2 - line.x1;
  const dy = line.y2 - line.y1;
  const length = Math.hypot(dx, dy);
  const size = Math.hypot(other.x2 - other.x1, other.y2 - other.y1);
  // a line of no length runs nowhere
  if (length < CROWDED.overlap || size < CROWDED.overlap) return false;
  const turn = dx * (other.y2 - other.y1) - dy * (other.x2 - other.x1);
  if (Math.abs(turn) > 0.05 * length * size) return false;
  const aside = Math.abs(dx * (other.y1 - line.y1) - dy * (other.x1 - line.x1)) / length;
  if (aside < CROWDED.least || aside > CROWDED.most) return false;
  const p = (dx * (other.x1 - line.x1) + dy * (other.y1 - line.y1)) / length;
  const q = (dx * (other.x2 - line.x1) + dy * (other.y2 - line.y1)) / length;
  return Math.min(length, Math.max(p, q)) - Math.max(0, Math.min(p, q)) > CROWDED.overlap;
}

const TOUCH = 3;

/** What `crossingShare` gives when there is no crossing; a number, for it is asked thousands of times. */
export const NO_CROSSING = -1;

/**
 * Where `crossing` crosses `line`, as a share of `line`; `NO_CROSSING` when it
 * doesn't, or only touches within 3 px of `line`'s ends.
 */
export function crossingShare(line: Line, crossing: Line): number {
  const { x1, y1, x2, y2 } = line;
  const { x1: x3, y1: y3, x2: x4, y2: y4 } = crossing;
  if (Math.max(x1, x2) < Math.min(x3, x4) || Math.max(x3, x4) < Math.min(x1, x2))
    return NO_CROSSING;
  if (Math.max(y1, y2) < Math.min(y3, y4) || Math.max(y3, y4) < Math.min(y1, y2))
    return NO_CROSSING;
  const dx = x2 - x1;
  const dy = y2 - y1;
  const ex = x4 - x3;
  const ey = y4 - y3;
  const turn = dx * ey - dy * ex;
  // parallel lines don't cross
  if (Math.abs(turn) < 1e-9) return NO_CROSSING;
  const along = ((x3 - x1) * ey - (y3 - y1) * ex) / turn;
  const other = ((x3 - x1) * dy - (y3 - y1) * dx) / turn;
  if (other < 0 || other > 1) return NO_CROSSING;
  const margin = TOUCH / Math.hypot(dx, dy);
  return along > margin && along < 1 - margin ? along : NO_CROSSING;
}
