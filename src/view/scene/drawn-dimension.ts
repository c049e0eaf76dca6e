import type { Point } from '../../geometry/index.ts';
import type { Placed } from './dimension-layout.ts';
import type { Arrowhead, Lettering, Tone } from './dimension-request.ts';
import { type DrawingSheet, type Ground, groundAt } from './drawing-sheet.ts';
import type { Line } from './label-box.ts';
import { crossingShare, NO_CROSSING } from './lines.ts';
import type { Arc } from './placement.ts';
import { written } from './written.ts';

/** One dimension as path data and text. */
export interface DrawnDimension {
  readonly key: string;
  readonly tone: Tone;
  readonly lit: boolean;
  /** small text with no value of its own */
  readonly caption: boolean;
  readonly line: string;
  readonly heads: string;
  /** the ring at a running dimension's origin, or '' */
  readonly origin: string;
  readonly name: string;
  readonly value: string;
  /** SVG transform that brings (0, 0) to the text's baseline */
  readonly place: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly ground: Ground;
}

/** Baseline below the middle of a label's box, as a share of the type size. */
const BASELINE = 0.26;
/** Half of the paper cut where a landing crosses an extension line, px. */
const HALF_CUT = 7;
/** Radii of a leader's dot and of the ring at an origin, px. */
const LEADER_DOT = 2.2;
const ORIGIN_RING = 3.2;

export interface DrawnDimensions {
  readonly dimensions: readonly DrawnDimension[];
  /** extension lines of all dimensions that aren't lit, by tone */
  readonly extensions: Readonly<Record<Tone, string>>;
  /** those of dimensions that are lit, and a ring where what is pointed at is nothing */
  readonly litExtensions: Readonly<Record<Tone, string>>;
  readonly clearLines: string;
  readonly clearBoxes: string;
  readonly cuts: string;
}

/** The placed dimensions as they are drawn, with the paper cleared for them, and what else is lit. */
export function drawnDimensions(
  placed: readonly Placed[],
  lettering: Lettering,
  sheet: Pick<DrawingSheet, 'outline' | 'weldFrom'>,
  lit: string,
): DrawnDimensions {
  let [clearLines, clearBoxes] = ['', ''];
  const extensions = { plain: '', refer: '', reject: '' };
  const litExtensions = { plain: lit, refer: '', reject: '' };
  const dimensions = placed.map((one): DrawnDimension => {
    const { request, placement } = one;
    const { box, wording } = placement;
    const ground = groundAt(sheet, box.x, box.y);
    const line = linesPath(placement.arc === null ? placement.lines : leadersOnly(one));
    const arc = placement.arc === null ? '' : arcPath(placement.arc);
    const extension = linesPath(placement.extensions);
    clearLines += line + arc + extension;
    (request.asked.lit ? litExtensions : extensions)[request.asked.tone] += extension;
    if (ground === 'metal') clearBoxes += boxPath(one);
    const size = request.kind === 'caption' ? lettering.small : lettering.value;
    return {
      key: request.asked.key,
      tone: request.asked.tone,
      lit: request.asked.lit,
      caption: request.kind === 'caption',
      line: line + arc + request.asked.figure,
      heads: headsPath(one, lettering),
      origin:
        placement.origin === null || request.kind !== 'running'
          ? ''
          : ringPath(placement.origin, ORIGIN_RING),
      name: wording.value === '' || wording.name === '' ? wording.name : `${wording.name} `,
      value: wording.value,
      place: textPlace(one, size * BASELINE),
      anchor: placement.anchor,
      ground,
    };
  });
  // Where two share a line, as running dimensions do, the one that matters more lies on top.
  dimensions.sort((p, q) => weightOf(p) - weightOf(q));
  return {
    dimensions,
    extensions,
    litExtensions,
    clearLines,
    clearBoxes,
    cuts: landingCuts(placed),
  };
}

function weightOf({ tone, lit }: DrawnDimension): number {
  return (lit ? 4 : 0) + (tone === 'reject' ? 2 : tone === 'refer' ? 1 : 0);
}

function textPlace({ placement }: Placed, drop: number): string {
  const { box, anchor } = placement;
  const aside = anchor === 'start' ? -box.halfWidth : anchor === 'end' ? box.halfWidth : 0;
  const x = box.x + aside * box.cos - drop * box.sin;
  const y = box.y + aside * box.sin + drop * box.cos;
  const moved = `translate(${written(x)} ${written(y)})`;
  if (box.sin === 0 && box.cos === 1) return moved;
  return `${moved} rotate(${written((Math.atan2(box.sin, box.cos) * 180) / Math.PI)})`;
}

function boxPath({ placement }: Placed): string {
  const { x, y, halfWidth, halfHeight, cos, sin } = placement.box;
  const corner = (u: number, v: number): string =>
    `${written(x + u * cos - v * sin)} ${written(y + u * sin + v * cos)}`;
  const [w, h] = [halfWidth + 2, halfHeight];
  return `M${corner(-w, -h)}L${corner(w, -h)}L${corner(w, h)}L${corner(-w, h)}Z`;
}

function linesPath(lines: readonly Line[]): string {
  let d = '';
  for (const { x1, y1, x2, y2 } of lines) {
    d += `M${written(x1)} ${written(y1)}L${written(x2)} ${written(y2)}`;
  }
  return d;
}

/** The straight leaders of an angle; its arc is written as an arc, not as its short lines. */
function leadersOnly({ placement }: Placed): readonly Line[] {
  const [landing] = placement.landings;
  // the text stands beside the arc
  if (landing === undefined) return [];
  return placement.lines.slice(-2);
}

function arcPath({ centre, radius, start, end }: Arc): string {
  const at = (angle: number): string =>
    `${written(centre.x + radius * Math.cos(angle))} ${written(centre.y + radius * Math.sin(angle))}`;
  const large = end - start > Math.PI ? 1 : 0;
  return `M${at(start)}A${written(radius)} ${written(radius)} 0 ${large} 1 ${at(end)}`;
}

/** Arrowheads, and the dot of a leader. */
function headsPath({ request, placement }: Placed, lettering: Lettering): string {
  let d = '';
  for (const head of placement.heads) d += headPath(head, lettering, request.asked.lit);
  return request.kind === 'note' && placement.lines.length > 0 ? d + dotPath(request.at) : d;
}

/** A filled arrowhead; a lit one is a fifth longer and half as wide again. */
function headPath({ x, y, dx, dy }: Arrowhead, lettering: Lettering, lit: boolean): string {
  const length = lettering.arrowLength * (lit ? 1.2 : 1);
  const half = (lettering.arrowWidth * (lit ? 1.45 : 1)) / 2;
  const [bx, by] = [x - dx * length, y - dy * length];
  const one = `${written(bx - dy * half)} ${written(by + dx * half)}`;
  const two = `${written(bx + dy * half)} ${written(by - dx * half)}`;
  return `M${written(x)} ${written(y)}L${one}L${two}Z`;
}

/** The dot that a leader ends with inside what it speaks of (ISO 128). */
function dotPath(at: Point): string {
  return ringPath(at, LEADER_DOT);
}

/** A full circle round a point. */
export function ringPath({ x, y }: Point, r: number): string {
  const side = (at: number): string => `${written(at)} ${written(y)}`;
  return `M${side(x - r)}A${r} ${r} 0 0 1 ${side(x + r)}A${r} ${r} 0 0 1 ${side(x - r)}Z`;
}

/** Short strokes of paper along each landing where it crosses another dimension's extension line. */
function landingCuts(placed: readonly Placed[]): string {
  let d = '';
  for (const { placement } of placed) {
    for (const landing of placement.landings) {
      for (const other of placed) {
        if (other.placement === placement) continue;
        for (const extension of other.placement.extensions) {
          const share = crossingShare(landing, extension);
          if (share !== NO_CROSSING) d += cutAt(landing, share);
        }
      }
    }
  }
  return d;
}

function cutAt({ x1, y1, x2, y2 }: Line, share: number): string {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const half = Math.min(HALF_CUT / length, share, 1 - share);
  const at = (t: number): string => `${written(x1 + (x2 - x1) * t)} ${written(y1 + (y2 - y1) * t)}`;
  return `M${at(share - half)}L${at(share + half)}`;
}
