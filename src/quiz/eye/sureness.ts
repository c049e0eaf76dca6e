import { estimate, type Estimate } from './estimate.ts';
import { wilson } from './proportion.ts';

/** Calls made at one stated sureness. */
export interface SureCalls {
  /** stated chance of being right, 0 to 1 */
  readonly stated: number;
  readonly calls: number;
  readonly right: number;
}

/** How well what was said of being sure agrees with having been right. */
export interface Sureness {
  readonly calls: number;
  /** mean square of stated chance less outcome: 0 perfect, 0.25 for a half always. G. W. Brier 1950 */
  readonly brier: number;
  /** its 95 per cent interval, by the spread of the calls' own scores */
  readonly brierRange: Estimate;
  /** Brier = reliability − resolution + uncertainty. A. H. Murphy 1973 */
  readonly reliability: number;
  readonly resolution: number;
  readonly uncertainty: number;
  /** mean size of stated less observed share */
  readonly calibrationError: number;
  /** mean stated less share right: above 0 too sure */
  readonly overconfidence: number;
}

/** The Brier score of calls and its parts, by the levels of sureness as stated; null without calls. */
export function surenessOf(levels: readonly SureCalls[]): Sureness | null {
  const calls = sum(levels, (level) => level.calls);
  if (calls === 0) return null;
  const mean = (of: (level: SureCalls) => number): number =>
    sum(levels, (level) => (level.calls === 0 ? 0 : level.calls * of(level))) / calls;
  const share = ({ right, calls: made }: SureCalls): number => right / made;
  const base = mean(share);
  /** Mean over the calls of the distance of stated chance from outcome, to a power. */
  const scored = (power: number): number =>
    mean((one) => share(one) * (1 - one.stated) ** power + (1 - share(one)) * one.stated ** power);
  const brier = scored(2);
  const spread = Math.max(0, scored(4) - brier * brier);
  return {
    calls,
    brier,
    brierRange: estimate(brier, Math.sqrt(spread / calls)),
    reliability: mean((one) => (one.stated - share(one)) ** 2),
    resolution: mean((one) => (share(one) - base) ** 2),
    uncertainty: base * (1 - base),
    calibrationError: mean((one) => Math.abs(one.stated - share(one))),
    overconfidence: mean((one) => one.stated - share(one)),
  };
}

/** A point of the reliability curve: of the calls at a stated sureness, the share that was right. */
export interface SurePoint extends SureCalls {
  readonly share: Estimate;
}

/** The points of the reliability curve that enough calls stand behind, Wilson limits. */
export const reliabilityCurve = (
  levels: readonly SureCalls[],
  fewest: number,
): readonly SurePoint[] =>
  levels
    .filter(({ calls }) => calls >= fewest)
    .map((level) => ({ ...level, share: wilson(level.right, level.calls) }));

const sum = <Item>(items: readonly Item[], of: (item: Item) => number): number =>
  items.reduce((total, item) => total + of(item), 0);
