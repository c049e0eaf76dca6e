import {
  biasAtLimit,
  scatterAtLimit,
  type Eye,
  type EyeFigures,
  type EyeScale,
} from '../../../../quiz/index.ts';
import type { MessageValue } from '../../../../units/index.ts';
import type { Wording } from '../../../wording.svelte.ts';
import type { SkillLimit } from './skill-eye.ts';

type Told = Pick<Wording, 'say' | 'quantity'>;

/** A share of a limit with no more figures than it can bear: 3.4 %, 12 %. */
const percentText = (percent: number, wording: Told): string => {
  const size = Math.abs(percent);
  const figure = size < 10 ? Math.round(size * 10) / 10 : Math.round(size);
  return wording.say('calls_eye_percent', { amount: figure });
};

/** How far a place on the eye's scale lies off the limit: in per cent of it, else as the amount alone. */
function offLimit(
  distance: number,
  scale: EyeScale,
  limit: SkillLimit,
  wording: Told,
): { readonly percent: string; readonly amount: string } {
  const at = biasAtLimit({ value: distance, low: distance, high: distance }, scale, limit);
  const amount = wording.quantity(Math.abs(at?.amount.value ?? distance), limit.unit);
  return {
    amount,
    percent: at?.percent == null ? amount : percentText(at.percent.value, wording),
  };
}

/** The same with the side that it lies on: 4 % inside, 4 % past. */
export function sidedText(
  distance: number,
  scale: EyeScale,
  limit: SkillLimit,
  wording: Told,
): string {
  const { percent } = offLimit(distance, scale, limit, wording);
  const amount: MessageValue = percent;
  return wording.say(distance < 0 ? 'calls_eye_inside' : 'calls_eye_past', { amount });
}

/** Where the eye draws its line, in a sentence; null while the calls can't support it. */
export function biasText(
  { bias, verdict }: Pick<EyeFigures, 'bias' | 'verdict'>,
  scale: EyeScale,
  limit: SkillLimit,
  wording: Told,
): string | null {
  if (bias === null) return null;
  const said = wording.say(
    `calls_eye_bias_${verdict ?? 'open'}${scale === 'ratio' ? '' : '_plain'}`,
    {
      ...offLimit(bias.value, scale, limit, wording),
      limit: { value: limit.limit, unit: limit.unit },
    },
  );
  const range = wording.say('calls_eye_bias_range', {
    low: sidedText(bias.low, scale, limit, wording),
    high: sidedText(bias.high, scale, limit, wording),
  });
  return `${said} ${range}`;
}

/** The place where an eye rejects half, in two words; empty while the calls can't support it. */
export const biasShort = (
  eye: Pick<Eye, 'bias' | 'scale'> | null,
  limit: SkillLimit | null,
  wording: Told,
): string =>
  eye?.bias == null || limit === null ? '' : sidedText(eye.bias.value, eye.scale, limit, wording);

/** How sharp the eye is, in a sentence; null while the calls can't support it. */
export function scatterText(
  { scatter }: Pick<EyeFigures, 'scatter'>,
  scale: EyeScale,
  limit: SkillLimit,
  wording: Told,
): string | null {
  if (scatter === null) return null;
  if (scatter === 'sharperThanShown') return wording.say('calls_eye_scatter_sharper');
  const at = scatterAtLimit(scatter, scale, limit);
  if (at === null) return null;
  const figure = (name: 'value' | 'low' | 'high'): string =>
    at.percent === null
      ? wording.quantity(at.amount[name], at.unit)
      : percentText(at.percent[name], wording);
  return wording.say(at.percent === null ? 'calls_eye_scatter_plain' : 'calls_eye_scatter_is', {
    percent: figure('value'),
    low: figure('low'),
    high: figure('high'),
    amount: { value: at.amount.value, unit: at.unit },
    limit: { value: limit.limit, unit: limit.unit },
  });
}
